/* A plan as an answer, in two ways that follow each other: a line of text in the short notation, and a row
   of controls for each run of photographs. RingbookPlanRows.make gives {read, write} as
   RingbookControls has them. Both the reading of the text and what the plan would show are worked out as it
   changes, in workers; an answer to what has been written over since is left unheard. */
(function () {
  "use strict";
  var live = window.RingbookLive;
  var part = window.RingbookPage.part;
  var KINDS = { "rings": "ring", "low ring": "low ring", "top": "over the top", "strip": "strip" };
  var ARCS = { "": "all round", "from": "over an arc", "without": "without an arc" };
  var PAUSE = 300;
  var count = 0;

  function withUnit(text, unit) {
    return text === "" ? "" : " at " + text + unit;
  }

  function clause(row, unit) {
    var text = row.photos || "1";
    text += row.kind === "rings" || row.kind === "strip" ? withUnit(row.elevation || "0", "°") : "";
    if (row.kind === "strip") {
      text += row.sort === "facing" ? " facing " + (row.from || "0") + "°" : "";
    } else if (row.sort === "from" || row.sort === "without") {
      text += " " + row.sort + " " + (row.from || "0") + "° to " + (row.to || "0") + "°";
    }
    return text + withUnit(row.standoff, " " + unit);
  }

  /* All runs in the notation, in the usual form of plans.WrittenPlan. */
  function inShort(rows, unit) {
    var text = "";
    rows.forEach(function (row, i) {
      var before = rows[i - 1];
      var turns = row.turned !== Boolean(before && before.turned);
      if (before && !turns && before.kind === row.kind) {
        text += ", ";
      } else {
        text += (before ? "; " : "") + (!turns ? "" : row.turned ? "turned over: " : "standing: ");
        text += turns && row.kind === "rings" ? "" : row.kind + ": ";
      }
      text += clause(row, unit);
    });
    return text;
  }

  function Plan(place, question, changed) {
    this.question = question;
    /* The example of a distance is in the unit that the question tells lengths in. */
    this.unit = / at [0-9]+ in /.test(question.wanted) ? "in" : "m";
    this.changed = changed;
    this.rows = [];
    this.timer = 0;
    this.heard = true;    /* false from a change by the reader until what the plan shows has been told */
    this.asked = 0;
    this.prefix = "plan-" + (++count) + "-";
    var label = part(place, "label", "", "Your plan, in short");
    this.field = part(place, "textarea");
    this.field.id = label.htmlFor = "answer-" + question.id;
    this.field.rows = 2;
    this.field.maxLength = 2000;
    this.field.spellcheck = false;
    this.unread = part(place, "p", "unread");
    this.unread.id = this.field.id + "-unread";
    this.field.setAttribute("aria-describedby", this.unread.id);
    this.runs = part(place, "div", "runs");
    var self = this;
    window.RingbookPage.button(part(place, "p", "row"), "plain", "Add a run", function () { self.add(); });
    this.look = part(place, "div", "look");
    this.field.addEventListener("input", function () {
      changed();
      self.wait(function () { self.fromText(); });
    });
    /* Not while it is written: half a plan is read out for nothing. */
    this.field.addEventListener("change", function () { self.speak(); });
  }

  Plan.prototype.read = function () {
    return this.field.value.trim().replace(/\s+/g, " ");
  };

  Plan.prototype.write = function (answer) {
    window.clearTimeout(this.timer);
    this.asked++;
    this.heard = true;
    this.field.value = answer;
    this.rows = [];
    this.runs.textContent = "";
    this.look.textContent = "";
    this.unread.textContent = "";
    if (answer) {
      this.fromText();
    }
  };

  Plan.prototype.wait = function (then) {
    window.clearTimeout(this.timer);
    this.asked++;
    this.timer = window.setTimeout(then, PAUSE);
  };

  /* What the text says, unless it has changed when that is known. */
  Plan.prototype.understand = function (then) {
    var self = this;
    var text = this.read();
    if (!text) {
      then({ rows: [] });
      return;
    }
    var asked = ++this.asked;
    live.ask("plan", [text], function (told, fault) {
      if (self.asked !== asked) {
        return;
      }
      if (told === null) {
        self.unread.textContent = "Plans cannot be looked at here: " + fault + ".";
        return;
      }
      then(JSON.parse(told));
    }, "plan " + this.question.id);
  };

  Plan.prototype.say = function (plan) {
    this.unread.textContent = plan.message ? "Cannot be read: " + plan.message + "; " + plan.help + "." : "";
    this.field.setAttribute("aria-invalid", String(Boolean(plan.message)));
  };

  /* Tells screen readers what the plan of the reader comes to, now or when it is known. */
  Plan.prototype.speak = function () {
    var share = this.look.querySelector(".share");
    this.heard = false;
    if (this.unread.textContent) {
      this.heard = true;
      window.RingbookPage.hear(this.unread.textContent);
    } else if (share && this.look.getAttribute("data-plan") === this.read()) {
      this.heard = true;
      window.RingbookPage.hear(this.question.title + ": " + share.textContent + (this.passes ? " The plan passes." : ""));
    }
  };

  /* The rows that the text says; where it cannot be read they stay as they were. */
  Plan.prototype.fromText = function () {
    var self = this;
    this.understand(function (plan) {
      self.say(plan);
      if (!plan.message) {
        self.rows = plan.rows;
        self.show();
        self.judge();
      } else if (!self.heard) {
        self.speak();
      }
    });
  };

  /* The text stands at once, so that nothing is lost that is checked at once. */
  Plan.prototype.fromRows = function () {
    var self = this;
    this.field.value = inShort(this.rows, this.unit);
    this.changed();
    this.heard = false;
    this.wait(function () {
      self.understand(function (plan) {
        self.say(plan);
        if (plan.message) {
          self.speak();
        }
        self.judge();
      });
    });
  };

  Plan.prototype.add = function () {
    var last = this.rows[this.rows.length - 1];
    var elevation = last && last.elevation !== "" ? Math.min(80, Number(last.elevation) + 15) : 15;
    this.rows.push({ kind: "rings", photos: "24", turned: Boolean(last && last.turned), elevation: String(elevation), standoff: "", sort: "", from: "0", to: "0" });
    this.show();
    this.runs.lastElementChild.querySelector("select").focus();
    this.fromRows();
  };

  Plan.prototype.remove = function (i) {
    this.rows.splice(i, 1);
    this.show();
    (this.runs.querySelector("select") || this.field).focus();
    this.fromRows();
  };

  Plan.prototype.show = function () {
    var self = this;
    this.runs.textContent = "";
    this.rows.forEach(function (row, i) { self.lay(row, i); });
  };

  Plan.prototype.lay = function (row, i) {
    var self = this;
    var set = part(this.runs, "fieldset", "run");
    part(set, "legend", "", "Run " + (i + 1));
    var id = this.field.id + "-" + i + "-";
    choose(set, id + "kind", "What it is", KINDS, row.kind, function (kind) {
      row.kind = kind;
      row.elevation = kind === "rings" || kind === "strip" ? row.elevation || "0" : "";
      row.sort = kind === "strip" ? "facing" : row.sort === "facing" ? "" : row.sort;
      self.show();
      document.getElementById(id + "kind").focus();
      self.fromRows();
    });
    function number(name, words, unit, low, high, step, usual) {
      slide(set, id + name, words, unit, [low, high, step, usual], row[name], function (text) {
        row[name] = text;
        self.fromRows();
      });
    }
    number("photos", "Photographs", "", 1, 60, 1, 24);
    if (row.kind === "rings" || row.kind === "strip") {
      number("elevation", "Height above level", "°", -30, 85, 1, 0);
    }
    var inches = this.unit === "in";
    number("standoff", "Distance (empty: the usual one)", this.unit, inches ? 8 : 0.2, inches ? 120 : 3, inches ? 1 : 0.05, inches ? 40 : 1);
    if (row.kind === "strip") {
      number("from", "Facing, as in the ring plan", "°", -180, 180, 5, 0);
    } else {
      choose(set, id + "sort", "Directions", ARCS, row.sort, function (sort) {
        row.sort = sort;
        if (sort && row.from === row.to) {
          row.from = "0";
          row.to = "90";
        }
        self.show();
        document.getElementById(id + "sort").focus();
        self.fromRows();
      });
      if (row.sort) {
        number("from", "From", "°", -180, 180, 5, 0);
        number("to", "To", "°", -180, 180, 5, 90);
      }
    }
    var over = part(set, "label", "over");
    var box = part(over, "input");
    box.type = "checkbox";
    box.checked = row.turned;
    over.appendChild(document.createTextNode(" turned over"));
    box.addEventListener("change", function () {
      row.turned = box.checked;
      self.fromRows();
    });
    var away = window.RingbookPage.button(set, "plain", "Remove", function () { self.remove(i); });
    away.setAttribute("aria-label", "Remove run " + (i + 1));
  };

  function choose(set, id, words, all, chosen, done) {
    var line = part(set, "div", "dial-line");
    part(line, "label", "", words).htmlFor = id;
    var select = part(line, "select");
    select.id = id;
    Object.keys(all).forEach(function (value) { part(select, "option", "", all[value]).value = value; });
    select.value = chosen;
    select.addEventListener("change", function () { done(select.value); });
  }

  /* A number to write, and the same to slide. */
  function slide(set, id, words, unit, range, value, done) {
    var line = part(set, "div", "dial-line");
    part(line, "label", "", words + (unit ? ", " + unit : "")).htmlFor = id;
    var field = part(line, "input", "short");
    field.type = "number";
    field.id = id;
    field.step = "any";
    field.value = value;
    var slider = part(line, "input");
    slider.type = "range";
    slider.min = range[0];
    slider.max = range[1];
    slider.step = range[2];
    slider.value = value === "" ? range[3] : value;
    slider.setAttribute("aria-label", words);
    function tell() {
      slider.setAttribute("aria-valuetext", field.value === "" ? "not stated" : field.value + (unit === "m" || unit === "in" ? " " : "") + unit);
    }
    function take(text) {
      field.value = text;
      tell();
      done(text);
    }
    tell();
    field.addEventListener("input", function () {
      slider.value = field.value === "" ? range[3] : field.value;
      tell();
      done(field.value);
    });
    slider.addEventListener("input", function () { take(slider.value); });
    /* A finger that comes down on a slider to scroll the page has moved it already. */
    var before = null;
    slider.addEventListener("pointerdown", function () { before = field.value; });
    slider.addEventListener("pointercancel", function () {
      if (before !== null && before !== field.value) {
        slider.value = before === "" ? range[3] : before;
        take(before);
      }
    });
  }

  /* What it would show, worked out aside; only the latest plan is told. */
  Plan.prototype.judge = function () {
    var self = this;
    var text = this.read();
    if (!text) {
      this.look.textContent = "";
      return;
    }
    this.look.setAttribute("aria-busy", "true");
    live.ask("judge", [this.question.id, window.RingbookAnswers.name(), text, this.prefix], function (told, fault) {
      if (self.read() !== text) {
        return;
      }
      self.look.removeAttribute("aria-busy");
      self.look.setAttribute("data-plan", text);
      self.tell(told === null ? { message: fault } : JSON.parse(told));
      if (!self.heard) {
        self.speak();
      }
    }, "judge " + this.question.id);
  };

  Plan.prototype.tell = function (judged) {
    var look = this.look;
    look.textContent = "";
    this.passes = Boolean(judged.passes);
    if (judged.message) {
      return;
    }
    var share = part(look, "p", "share");
    part(share, "b", "", judged.shown + " %");
    share.appendChild(document.createTextNode(" of what can be seen is shown well; " + judged.covered + " % are asked for. " +
      window.RingbookPage.count(judged.photos, "photograph") + (judged.most ? "; up to " + judged.most + " earn full marks." : ".")));
    var meter = part(look, "meter");
    meter.min = 0;
    meter.max = 100;
    meter.value = Number(judged.shown);
    meter.setAttribute("aria-label", "Share shown well, in percent");
    judged.lacks.forEach(function (words) { part(look, "p", "lack", words); });
    if (judged.passes) {
      part(look, "p", "lack", "The plan passes." + (judged.focus ? " " + judged.focus : ""));
    }
    if (judged.figure) {
      var drawing = part(look, "div", "drawing");
      drawing.innerHTML = judged.figure.svg;
      drawing.setAttribute("data-scrolls", "What the plan sees");
      window.RingbookPage.markScrolling();
      var box = part(look, "details");
      part(box, "summary", "", "The figure in words");
      part(box, "p", "", judged.figure.description);
    }
  };

  window.RingbookPlanRows = {
    make: function (place, question, changed) {
      var plan = new Plan(place, question, changed);
      return {
        read: function () { return plan.read(); },
        write: function (answer) { plan.write(answer); }
      };
    }
  };
})();
