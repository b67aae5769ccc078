/* Parts of a page that hang on the scene and are more than a number: what lessons say for some scenes
   only, workings, figures. RingbookParts.branches() brings the first up to the scene that is open at
   once; .follow() asks for figures at once and writes them after the next frame, workings after the one
   behind it, so that the numbers are not held up. What the course's own scene had is put back as it came.
   .afterFrame(then) is for others that can wait for that. */
(function () {
  "use strict";
  var STEPS = ".rule, .formula, .numbers, .result, .inputs";

  function isOwn() {
    return window.RingbookLive.scene.changes().keys.length === 0;
  }

  function outside(selector) {
    return Array.from(document.querySelectorAll(selector)).filter(function (element) {
      return !element.closest(".exercise");
    });
  }

  function made(name, style, text) {
    var element = document.createElement(name);
    if (style) {
      element.className = style;
    }
    if (text) {
      element.textContent = text;
    }
    return element;
  }

  /* ---- branches ---- */

  var branchList = null;

  function branches() {
    branchList = branchList || outside(".branch").map(function (element) {
      return { element: element, own: !element.hidden };
    });
    var holds = JSON.parse(window.RingbookLive.calc.holds(branchList.map(function (branch) {
      return branch.element.dataset.when || branch.element.dataset.unless;
    })));
    var own = isOwn();
    branchList.forEach(function (branch, i) {
      var shown = own ? branch.own : holds[i] === Boolean(branch.element.dataset.when);
      if (branch.element.hidden === shown) {
        branch.element.hidden = !shown;
        branch.element.classList.toggle("is-new", shown && !branch.own);
      }
    });
  }

  /* ---- workings ---- */

  var workingList = null;

  function line(style, told) {
    var p = made("p", style);
    p.appendChild(told.tex ? window.RingbookMath.line(told.tex, told.speech) : document.createTextNode(told.text));
    return p;
  }

  /* A plain symbol such as u_f, its index set low. */
  function letter(symbol) {
    var names = symbol.split("_");
    var element = made("i", "letter-of", names[0]);
    if (names[1]) {
      element.appendChild(made("sub", "", names[1]));
    }
    return element;
  }

  function inputs(list) {
    var ul = made("ul", "inputs");
    list.forEach(function (input) {
      var li = made("li");
      var link = made("a", "", input.name);
      link.href = "quantities.html#" + input.key;
      li.append(letter(input.symbol), " ", link, ": " + input.text);
      ul.appendChild(li);
    });
    return ul;
  }

  /* The steps of a working as elements. */
  function steps(working) {
    var all = [];
    if (working.rule) {
      all.push(made("p", "rule", working.rule));
    }
    if (working.formula) {
      all.push(line("formula", working.formula));
    }
    if (working.numbers) {
      all.push(line("numbers", working.numbers));
    }
    all.push(line("result", working.result));
    if (working.inputs.length > 0) {
      all.push(inputs(working.inputs));
    }
    return all;
  }

  function childrenOf(element, selector) {
    return Array.from(element.children).filter(function (child) { return child.matches(selector); });
  }

  function findWorkings() {
    workingList = workingList || outside(".working[data-key]").map(function (element) {
      var own = childrenOf(element, STEPS);
      return { element: element, own: own, now: own, answer: "" };
    });
    return workingList;
  }

  function work(working) {
    var answer = isOwn() ? "" : window.RingbookLive.calc.working(working.element.dataset.key);
    if (answer === working.answer) {
      return;
    }
    working.answer = answer;
    var fresh = answer ? steps(JSON.parse(answer)) : working.own;
    working.now.forEach(function (old) { old.remove(); });
    working.element.append.apply(working.element, fresh);
    working.now = fresh;
    var same = fresh === working.own || isAlike(told(fresh), told(working.own));
    working.element.classList.toggle("is-changed", working.own.length > 0 && !same);
  }

  /* Makes the first working for nobody, and learns which figures are in view. */
  function rehearse() {
    findFigures();
    findWorkings().slice(0, 1).forEach(function (working) {
      steps(JSON.parse(window.RingbookLive.calc.working(working.element.dataset.key)));
    });
  }

  /* One that has come into sight with nothing in it would open with a jump. */
  function emptyWorkings() {
    findWorkings().filter(function (working) {
      return working.now.length === 0 && !working.element.closest("[hidden]");
    }).forEach(work);
  }

  /* What steps say when read out. */
  function told(all) {
    return all.filter(function (step) { return step.matches(".numbers, .result"); }).map(function (step) {
      var label = step.querySelector("[aria-label]");
      return label ? label.getAttribute("aria-label") : step.textContent;
    });
  }

  /* Told in other measures as well, a result is still the same. */
  function isAlike(lines, own) {
    return lines.length === own.length && lines.every(function (line, i) { return line.indexOf(own[i]) === 0; });
  }

  /* ---- figures ---- */

  var figureList = null;

  function optionsOf(plate) {
    var all = [];
    Array.from(plate.attributes).forEach(function (attribute) {
      if (attribute.name.indexOf("data-option-") === 0) {
        all.push(attribute.name.slice("data-option-".length), attribute.value);
      }
    });
    return all;
  }

  function findFigures() {
    figureList = figureList || outside(".plate[data-figure]").map(function (plate) {
      var drawing = plate.querySelector(".drawing");
      var words = plate.querySelector(".told");
      return {
        plate: plate,
        drawing: drawing,
        words: words,
        own: [Array.from(drawing.childNodes), Array.from(words.childNodes)],
        answer: ""
      };
    });
    watch(figureList);
    return figureList;
  }

  /* Calls what brings parts up to the scene of this turn once its numbers are on the way to the
     screen; what an older scene still waits with is dropped. */
  var turn = 0;
  var waiting = [];
  var isFramed = true;

  function follow() {
    turn++;
    isFramed = false;
    waiting = [];
    emptyWorkings();
    inOrder(findFigures()).forEach(draw);
    var mine = turn;
    afterFrame(function () {
      if (mine === turn) {
        isFramed = true;
        waiting.splice(0).forEach(function (write) { write(); });
        afterFrame(function () {
          if (mine === turn) {
            findWorkings().forEach(work);
          }
        });
      }
    });
  }

  /* Pages that are not shown have no frames. */
  function afterFrame(then) {
    if (document.hidden) {
      window.setTimeout(then, 0);
    } else {
      window.requestAnimationFrame(function () { window.setTimeout(then, 0); });
    }
  }

  /* Out of sight, a figure is put where it belongs when nothing else is to do. */
  function inTurn(figure, write) {
    var mine = turn;
    function due() {
      if (mine === turn) {
        write();
      }
    }
    function soon() {
      if (figure.inView || !window.requestIdleCallback) {
        due();
      } else {
        window.requestIdleCallback(due, { timeout: 500 });
      }
    }
    if (isFramed) {
      soon();
    } else {
      waiting.push(soon);
    }
  }

  var watching = null;

  /* Asked for in the middle of a change, places would be worked out once more for each change. */
  function watch(figures) {
    if (watching || !window.IntersectionObserver) {
      return;
    }
    watching = new window.IntersectionObserver(function (seen) {
      seen.forEach(function (one) {
        figures.forEach(function (figure) {
          if (figure.plate === one.target) {
            figure.inView = one.isIntersecting;
          }
        });
      });
    });
    figures.forEach(function (figure) { watching.observe(figure.plate); });
  }

  /* Those in view first. */
  function inOrder(figures) {
    function isInView(figure) {
      if (figure.inView === undefined) {
        var box = figure.plate.getBoundingClientRect();
        figure.inView = box.height > 0 && box.bottom > 0 && box.top < window.innerHeight;
      }
      return figure.inView;
    }
    return figures.filter(isInView).concat(figures.filter(function (figure) { return !isInView(figure); }));
  }

  function working(figure, on) {
    window.clearTimeout(figure.slow);
    figure.plate.classList.remove("is-working");
    figure.plate.setAttribute("aria-busy", String(on));
    if (on) {
      figure.slow = window.setTimeout(function () { figure.plate.classList.add("is-working"); }, 400);
    }
  }

  /* Puts an answer of the calculations in place; "" stands for what the course's own scene had. */
  function put(figure, answer) {
    if (figure.answer === answer) {
      return;
    }
    figure.answer = answer;
    if (answer === "") {
      figure.drawing.replaceChildren.apply(figure.drawing, figure.own[0]);
      figure.words.replaceChildren.apply(figure.words, figure.own[1]);
      return;
    }
    var drawn = JSON.parse(answer);
    /* The nodes of the course's own must leave whole. */
    figure.drawing.replaceChildren();
    figure.drawing.innerHTML = drawn.svg;
    figure.words.replaceChildren.apply(figure.words, inWords(figure, drawn));
  }

  /* Stops at the first difference, where texts of both would have to be made. */
  function isLikeOwn(figure) {
    var now = figure.drawing.childNodes;
    return now.length === figure.own[0].length &&
      figure.own[0].every(function (node, i) { return node.isEqualNode(now[i]); });
  }

  function finish(figure, answer) {
    working(figure, false);
    put(figure, answer);
    figure.plate.classList.toggle("is-changed",
      !window.RingbookLive.scene.isOwn() && figure.own[0].length > 0 && !isLikeOwn(figure));
    if (answer !== "") {
      figure.plate.dispatchEvent(new CustomEvent("drawn", { bubbles: true }));
    }
  }

  function draw(figure) {
    var plate = figure.plate;
    working(figure, true);
    if (isOwn()) {
      inTurn(figure, function () { finish(figure, ""); });
      return;
    }
    var mine = turn;
    window.RingbookLive.ask(
      "figure", [plate.dataset.figure, optionsOf(plate), plate.id + "-"],
      function (answer, fault) {
        if (mine === turn) {
          inTurn(figure, function () { finish(figure, answer === null ? failed(fault) : answer); });
        }
      },
      "figure " + plate.id);
  }

  function failed(fault) {
    var description = "This figure could not be drawn for your scene: " + fault;
    return JSON.stringify({ svg: "", description: description, head: [], rows: [] });
  }

  function inWords(figure, drawn) {
    var summary = made("summary", "", figure.plate.querySelector(".tab").textContent + " in words and numbers");
    var parts = [summary, made("p", "", drawn.description)];
    if (drawn.rows.length > 0) {
      var box = made("div", "table");
      var table = made("table");
      var head = table.createTHead().insertRow();
      drawn.head.forEach(function (text) {
        var th = made("th", "", text);
        th.scope = "col";
        head.appendChild(th);
      });
      var body = table.createTBody();
      drawn.rows.forEach(function (texts) {
        var row = body.insertRow();
        texts.forEach(function (text) { row.insertCell().textContent = text; });
      });
      box.appendChild(table);
      parts.push(box);
    }
    return parts;
  }

  window.RingbookParts = { branches: branches, follow: follow, rehearse: rehearse, afterFrame: afterFrame, steps: steps, letter: letter };
})();
