/* Parts of a page that hang on the scene and are more than a number: what lessons say for some scenes
   only, workings, figures. RingbookParts.branches(), .workings() and .figures() bring them up to the
   scene that is open; what the course's own scene had is put back as it came. */
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
    branchList.forEach(function (branch, i) {
      var shown = isOwn() ? branch.own : holds[i] === Boolean(branch.element.dataset.when);
      branch.element.hidden = !shown;
      branch.element.classList.toggle("is-new", shown && !branch.own);
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

  function workings() {
    workingList = workingList || outside(".working[data-key]").map(function (element) {
      return { element: element, own: childrenOf(element, STEPS) };
    });
    workingList.forEach(function (working) {
      var fresh = isOwn()
        ? working.own
        : steps(JSON.parse(window.RingbookLive.calc.working(working.element.dataset.key)));
      childrenOf(working.element, STEPS).forEach(function (old) { old.remove(); });
      fresh.forEach(function (step) { working.element.appendChild(step); });
      var same = isAlike(told(fresh), told(working.own));
      working.element.classList.toggle("is-changed", !isOwn() && working.own.length > 0 && !same);
    });
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

  function figures() {
    figureList = figureList || outside(".plate[data-figure]").map(function (plate) {
      var drawing = plate.querySelector(".drawing");
      var words = plate.querySelector(".told");
      return { plate: plate, drawing: drawing, words: words, own: [drawing.innerHTML, words.innerHTML] };
    });
    watch(figureList);
    inOrder(figureList).forEach(function (figure) {
      if (isOwn()) {
        working(figure, false);
        put(figure, figure.own[0], figure.own[1]);
        figure.plate.classList.remove("is-changed");
      } else {
        draw(figure);
      }
    });
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

  function put(figure, drawing, words) {
    if (figure.drawing.innerHTML !== drawing) {
      figure.drawing.innerHTML = drawing;
    }
    if (figure.words.innerHTML !== words) {
      figure.words.innerHTML = words;
    }
  }

  function draw(figure) {
    working(figure, true);
    var plate = figure.plate;
    var state = JSON.stringify(window.RingbookLive.scene.changes());
    window.RingbookLive.ask(
      "figure", [plate.dataset.figure, optionsOf(plate), plate.id + "-"],
      function (answer, fault) {
        if (state !== JSON.stringify(window.RingbookLive.scene.changes())) {
          return;
        }
        working(figure, false);
        var drawn = answer === null ? failed(fault) : JSON.parse(answer);
        put(figure, drawn.svg, "");
        figure.words.replaceChildren.apply(figure.words, inWords(figure, drawn));
        plate.classList.toggle("is-changed", !window.RingbookLive.scene.isOwn() && figure.own[0] !== "" && figure.drawing.innerHTML !== figure.own[0]);
        plate.dispatchEvent(new CustomEvent("drawn", { bubbles: true }));
      },
      "figure " + plate.id);
  }

  function failed(fault) {
    return { svg: "", description: "This figure could not be drawn for your scene: " + fault, head: [], rows: [] };
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

  window.RingbookParts = { branches: branches, workings: workings, figures: figures, steps: steps, letter: letter };
})();
