/* Lets a reader answer the exercises of a page and have answers marked there. The calculations are
   large, so they are fetched when the first answer is begun, or at once for a reader with numbers of
   their own; where a plan is asked for, when its reader comes near. How an answer is marked is asked of
   RingbookLive, which may take its time. */
(function () {
  "use strict";
  var answers = window.RingbookAnswers;
  var live = window.RingbookLive;
  var part = window.RingbookPage.part;

  function points(credit) {
    return credit + " of 1 point";
  }

  /* The measures that the reader likes, where they are not those of the course. */
  function units() {
    var scene = live.scene.changes();
    return scene.written[scene.keys.indexOf(live.scene.UNITS)] || "";
  }

  /* Links between lessons are written for pages of any kind. */
  function linked(xhtml) {
    return xhtml.replace(/ href="course:([^"#]*)/g, function (all, page) {
      return " href=\"" + page + (page ? ".html" : "");
    });
  }

  /* A line whose symbols, such as u_f, have their index set low; names of files have none. */
  function lower(place, line) {
    line.split(/(^|[^\p{L}\d_-])(\p{L}{1,2})_(\p{L}+)(?![\p{L}\d_.])/u).forEach(function (piece, i) {
      if (i % 4 === 3) {
        part(place, "sub", "", piece);
      } else {
        place.append(piece);
      }
    });
  }

  function Exercise(box) {
    this.box = box;
    this.section = box.closest(".exercise");
    this.id = box.getAttribute("data-exercise");
    this.title = box.getAttribute("data-title");
    this.kind = box.getAttribute("data-kind");
    this.wanted = box.getAttribute("data-answer");
    this.options = Array.from(this.section.querySelectorAll(":scope > .options > li > span"));
    this.posed = this.gatherQuestion();
    this.own = { posed: this.posed.innerHTML, options: this.options.map(function (one) { return one.innerHTML; }) };
    this.lay();
    this.pose();
  }

  /* The question as the page has it, between the heading and what it is answered with. */
  Exercise.prototype.gatherQuestion = function () {
    var posed = document.createElement("div");
    posed.className = "posed";
    var end = this.section.querySelector(":scope > .options, :scope > .answer-form");
    Array.from(this.section.childNodes).some(function (node) {
      if (node === end) {
        return true;
      }
      if (!(node.nodeType === 1 && node.matches("h3, .stays"))) {
        posed.appendChild(node);
      }
      return false;
    });
    this.section.insertBefore(posed, end);
    return posed;
  };

  Exercise.prototype.lay = function () {
    var self = this;
    this.whose = part(this.box, "p", "whose");
    this.place = part(this.box, "div", "place");
    var foot = part(this.box, "p", "row");
    this.button = window.RingbookPage.button(foot, "go", "Check", function () { self.check(); });
    this.button.setAttribute("aria-label", "Check: " + this.title);
    this.before = part(foot, "span", "before");
    this.said = part(this.box, "div", "said");
    this.written = part(this.box, "p", "written");
    this.box.addEventListener("focusin", function () {
      if (self.kind === "plan") {
        live.warm(self.id, answers.name());
      } else {
        live.ready(function () {});
      }
    });
    this.place.addEventListener("keydown", function (event) {
      if (event.key === "Enter" && event.target.matches("input")) {
        event.preventDefault();
        self.check();
      }
    });
    this.section.classList.add("is-" + this.kind);
    this.box.hidden = false;
  };

  /* Puts the question for the reader's name. */
  Exercise.prototype.pose = function () {
    var self = this;
    var name = answers.name();
    this.units = units();
    if (!name && !this.units) {
      this.posed.innerHTML = this.own.posed;
      this.show(this.own.options, this.lefts(), this.wanted);
      return;
    }
    var asked = this.units;
    this.box.setAttribute("aria-busy", "true");
    live.ask("question", [this.id, name], function (text, fault) {
      if (answers.name() !== name || self.units !== asked) {
        return;
      }
      self.box.removeAttribute("aria-busy");
      if (text === null) {
        self.said.textContent = (name ? "Your own numbers" : "Other measures") + " cannot be worked out here: " + fault + ".";
        self.show(self.own.options, self.lefts(), self.wanted);
        return;
      }
      var question = JSON.parse(text);
      self.posed.innerHTML = linked(question.ask);
      if (question.numbered.length > 0) {
        var list = part(self.posed, "ol", "lefts");
        question.numbered.forEach(function (left) { part(list, "li").innerHTML = linked(left); });
      }
      if (question.conditions) {
        part(self.posed, "p", "conditions", question.conditions);
      }
      if (question.hint) {
        var hint = part(self.posed, "details", "hint");
        part(hint, "summary", "", "A hint");
        hint.insertAdjacentHTML("beforeend", linked(question.hint));
      }
      self.show(question.options.map(linked), question.numbered, question.answerHint);
    }, "question " + this.id);
  };

  Exercise.prototype.lefts = function () {
    return Array.from(this.posed.querySelectorAll(".lefts > li")).map(function (li) { return li.innerHTML; });
  };

  Exercise.prototype.show = function (options, numbered, wanted) {
    var self = this;
    var name = answers.name();
    this.options.forEach(function (span, i) { span.innerHTML = options[i]; });
    this.whose.textContent = name ? "With the numbers of " + name + ". The worked solution below has the course’s." : "";
    this.controls = window.RingbookControls.make(this.kind, this.place,
      { id: this.id, title: this.title, wanted: wanted, options: options, numbered: numbered },
      function () { self.changed(); });
    this.controls.write(answers.of(this.id).answer);
    this.said.textContent = "";
    this.state();
  };

  Exercise.prototype.changed = function () {
    this.said.textContent = "";
    answers.write(this.id, this.controls.read());
    this.state();
  };

  /* What is known of the answer, in a few words, and what a print shows of it. */
  Exercise.prototype.state = function () {
    var kept = answers.of(this.id);
    var tries = kept.tries === 1 ? "1 try" : kept.tries + " tries";
    var same = kept.tries > 0 && kept.marked === kept.answer;
    this.before.textContent = kept.tries === 0 ? "" : (same ? points(kept.credit) + ", " : "Changed since it was marked, ") + tries;
    this.written.textContent = kept.answer ? "Your answer: " + kept.answer + (same ? " – " + points(kept.credit) : "") : "";
    this.section.classList.toggle("is-right", answers.isRight(this.id));
  };

  Exercise.prototype.check = function () {
    var self = this;
    var name = answers.name();
    var answer = this.controls.read();
    if (!answer) {
      this.said.textContent = "Give an answer first.";
      window.RingbookPage.hear("Give an answer first.");
      return;
    }
    this.box.setAttribute("aria-busy", "true");
    this.said.textContent = this.kind === "plan" ? "Looking at the object from all places of the plan …" : "";
    live.ask("mark", [this.id, name, answer], function (text, fault) {
      self.box.removeAttribute("aria-busy");
      if (name !== answers.name() || answer !== self.controls.read()) {
        return;
      }
      if (text === null) {
        self.said.textContent = "This answer cannot be checked here: " + fault + ".";
        window.RingbookPage.hear(self.said.textContent);
        return;
      }
      var mark = JSON.parse(text);
      answers.mark(self.id, answer, mark.credit);
      self.state();
      self.tell(mark);
    }, "check " + this.id);
  };

  Exercise.prototype.tell = function (mark) {
    this.said.textContent = "";
    var first = part(this.said, "p");
    part(first, "b", "credit", points(mark.credit));
    first.appendChild(document.createTextNode(" " + mark.happened));
    if (mark.next) {
      part(this.said, "p", "", mark.next);
    }
    if (mark.working.length > 0) {
      var box = part(this.said, "details");
      part(box, "summary", "", "How it comes about");
      mark.working.forEach(function (line) { lower(part(box, "p"), line); });
    }
    window.RingbookPage.hear(this.title + ": " + points(mark.credit) + ". " + mark.happened);
  };

  /* Whoever comes near an exercise that asks for a plan will have one judged, and the first takes a
     worker as long as ten others: it is made ready while the question is read. */
  function makeReadyFor(plans) {
    var saves = navigator.connection && navigator.connection.saveData;
    if (plans.length === 0 || saves || !window.IntersectionObserver || !window.requestIdleCallback) {
      return;
    }
    var near = new window.IntersectionObserver(function (seen) {
      var first = seen.filter(function (one) { return one.isIntersecting; })[0];
      if (first) {
        near.disconnect();
        window.requestIdleCallback(function () { live.warm(first.target.dataset.exercise, answers.name()); });
      }
    }, { rootMargin: "50% 0px" });
    plans.forEach(function (one) { near.observe(one.box); });
  }

  document.addEventListener("DOMContentLoaded", function () {
    var all = Array.from(document.querySelectorAll(".check")).map(function (box) { return new Exercise(box); });
    makeReadyFor(all.filter(function (one) { return one.kind === "plan"; }));
    answers.onChange(function (what) {
      if (what !== "answer") {
        all.forEach(function (one) { one.pose(); });
      }
    });
    live.scene.onChange(function () {
      all.filter(function (one) { return one.units !== units(); }).forEach(function (one) { one.pose(); });
    });
  });
})();
