/* How a number comes about, on demand: every number of the text opens a slip of squared paper with its
   working; what it was worked out from can be opened in turn. RingbookPanel.attend() makes the numbers
   of the page open it, RingbookPanel.dress() marks those that can
   be asked now, RingbookPanel.show(item) opens it. */
(function () {
  "use strict";
  var live = window.RingbookLive;
  var dialog = null;
  var trail = [];

  var part = window.RingbookPage.part;
  var button = window.RingbookPage.button;

  /* ---- the numbers of the page ---- */

  function canAsk(item) {
    if (item.canAsk === undefined) {
      item.canAsk = !item.element.closest("a, button, summary") &&
        (!item.element.classList.contains("value") || keysOf(item).length > 0);
    }
    return item.canAsk;
  }

  /* Words that come to nothing in a scene cannot be asked. */
  function dress() {
    window.RingbookNumbers.find().filter(canAsk).forEach(function (item) {
      var element = item.element;
      var isAsked = item.shown !== "";
      if (item.isAsked === isAsked) {
        return;
      }
      item.isAsked = isAsked;
      if (!isAsked) {
        ["role", "tabindex", "aria-haspopup"].forEach(function (name) { element.removeAttribute(name); });
      } else {
        element.setAttribute("role", "button");
        element.setAttribute("tabindex", "0");
        element.setAttribute("aria-haspopup", "dialog");
      }
    });
  }

  function attend() {
    dress();
    window.RingbookNumbers.find().filter(canAsk).forEach(function (item) {
      var element = item.element;
      element.addEventListener("click", function () { begin(item); });
      element.addEventListener("keydown", function (event) {
        if (event.key === "Enter" || event.key === " ") {
          event.preventDefault();
          begin(item);
        }
      });
    });
    document.addEventListener("click", function (event) {
      var link = event.target.closest(".working .inputs a");
      if (link && !link.closest(".exercise") && !event.ctrlKey && !event.metaKey && !event.shiftKey) {
        event.preventDefault();
        begin({ key: link.getAttribute("href").split("#")[1], given: "", expression: "" });
      }
    });
  }

  /* The keys an expression names. */
  function keysOf(item) {
    var names = (item.expression.replace(/"[^"]*"/g, "").match(/[a-z]+\.[a-zA-Z]+/g) || []);
    return names.filter(function (name, i) { return names.indexOf(name) === i; });
  }

  function begin(item) {
    trail = [];
    live.ready(function () { show(item); }, function (message) { window.RingbookOwnScene.say(message); });
  }

  /* ---- the slip ---- */

  function lay() {
    dialog = part(document.body, "dialog", "slip");
    dialog.setAttribute("aria-labelledby", "slip-title");
    dialog.addEventListener("click", function (event) {
      if (event.target === dialog) {
        dialog.close();
      }
    });
  }

  /* The same where a scene with changes is meant: they hold while one question is asked. */
  function over(given, ask) {
    if (!given) {
      return ask();
    }
    var mine = live.scene.changes();
    var keys = mine.keys.slice();
    var written = mine.written.slice();
    given.split(",").forEach(function (change) {
      var sign = change.indexOf("=");
      keys.push(change.slice(0, sign).trim());
      written.push(change.slice(sign + 1).trim());
    });
    live.calc.change(keys, written);
    try {
      return ask();
    } finally {
      live.calc.change(mine.keys, mine.written);
    }
  }

  function fields() {
    return JSON.parse(live.calc.fields());
  }

  function show(item) {
    if (!dialog) {
      lay();
    }
    trail.push(item);
    dialog.textContent = "";
    var head = part(dialog, "div", "slip-head");
    if (trail.length > 1) {
      button(head, "plain back", "Back", function () {
        trail.pop();
        show(trail.pop());
      });
    }
    button(head, "plain close", "Close", function () { dialog.close(); });
    var title = part(dialog, "h2", "");
    title.id = "slip-title";
    title.tabIndex = -1;
    var field = fields().find(function (one) { return one.key === item.key; });
    if (live.calc.keys().indexOf(item.key) >= 0) {
      quantity(item, title, field);
    } else if (field) {
      stated(item, title, field);
    } else {
      compound(item, title);
    }
    if (!dialog.open) {
      dialog.showModal();
    }
    dialog.scrollTop = 0;
    title.focus();
  }

  function capital(text) {
    return text.charAt(0).toUpperCase() + text.slice(1);
  }

  function ownText(item) {
    return item.own && item.own !== "none" && item.element.textContent !== item.own ? item.own : "";
  }

  function quantity(item, title, field) {
    var working = over(item.given, function () { return JSON.parse(live.calc.working(item.key)); });
    title.textContent = capital(working.name);
    var about = window.RingbookCourse.about[item.key];
    part(dialog, "p", "meaning", about[0]);
    if (item.given) {
      part(dialog, "p", "with", "Here for a scene with " + item.given + ".");
    }
    var paper = part(dialog, "div", "working");
    window.RingbookParts.steps(working).forEach(function (step) {
      if (!step.matches(".inputs")) {
        paper.appendChild(step);
      }
    });
    if (working.help) {
      part(dialog, "p", "help", capital(working.help));
    }
    if (ownText(item)) {
      part(dialog, "p", "own-value", "In the course: " + ownText(item));
    }
    if (working.inputs.length > 0) {
      part(dialog, "h3", "", "Worked out from");
      inputs(working.inputs.map(function (input) {
        return { key: input.key, given: item.given, symbol: input.symbol, name: input.name, text: input.text };
      }));
    }
    if (about[1]) {
      part(dialog, "p", "source", "Source: " + about[1]);
    }
    var entry = part(part(dialog, "p", "entry-link"), "a", "", "Its entry in all quantities");
    entry.href = "quantities.html#" + item.key;
    if (field) {
      change(item.key);
    }
  }

  function inputs(list) {
    var ul = part(dialog, "ul", "chain-list");
    list.forEach(function (input) {
      var one = button(part(ul, "li"), "input", "", function () {
        show({ key: input.key, given: input.given || "", expression: input.key });
      });
      one.appendChild(window.RingbookParts.letter(input.symbol));
      part(one, "span", "name-of", input.name);
      part(one, "b", "", input.text);
    });
  }

  function change(key) {
    button(dialog, "take", "Change it on your scene card", function () {
      dialog.close();
      window.RingbookCard.open(key);
    });
  }

  /* A word that the scene states. */
  function stated(item, title, field) {
    title.textContent = capital(field.name);
    part(dialog, "p", "meaning", "Stated for the scene: " + field.text + ".");
    if (ownText(item)) {
      part(dialog, "p", "own-value", "In the course: " + ownText(item));
    }
    change(item.key);
  }

  /* Something worked out from several quantities. */
  function compound(item, title) {
    title.textContent = item.element ? item.element.textContent : "";
    part(dialog, "p", "meaning", "Put together from other numbers of the course.");
    if (ownText(item)) {
      part(dialog, "p", "own-value", "In the course: " + ownText(item));
    }
    var given = (/given\("([^"]*)"\)/.exec(item.expression) || ["", ""])[1];
    var all = live.calc.keys();
    part(dialog, "h3", "", "Worked out from");
    over(given, function () {
      var keys = keysOf(item).filter(function (key) { return all.indexOf(key) >= 0; });
      var values = JSON.parse(live.calc.evaluate(keys));
      inputs(keys.map(function (key, i) {
        var working = JSON.parse(live.calc.working(key));
        return { key: key, given: given, symbol: "", name: working.name,
          text: window.RingbookNumbers.reason(values[i].text) };
      }));
    });
  }

  window.RingbookPanel = { attend: attend, dress: dress, show: show };
})();
