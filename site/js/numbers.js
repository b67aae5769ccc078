/* The numbers and words of a page that hang on the scene: finds them, works them out for the scene
   that is open, and marks those that differ from the course's own. Those of exercises are left alone.

   RingbookNumbers.find()     all of them, once: a list of {element, expression, key, given, own}
   RingbookNumbers.rehearse() works them out for nobody, so that the first change finds all in place
   RingbookNumbers.update()   after the scene has changed: how many that can be seen read otherwise now */
(function () {
  "use strict";
  var WHERE = "data.quantity, span.word, span.value, p.value[data-key]";
  var found = null;
  var ownIn = {};

  function expressionOf(element) {
    var data = element.dataset;
    if (data.value) {
      return data.value;
    }
    var scene = data.given ? "given(\"" + data.given + "\")." : "";
    var form = !data.form ? "" : data.form === "number" ? ".number" : ".in(\"" + data.form + "\")";
    return scene + data.key + form;
  }

  function itemOf(element) {
    return {
      element: element,
      expression: expressionOf(element),
      key: element.dataset.key || "",
      given: element.dataset.given || "",
      own: element.textContent,
      title: element.getAttribute("title") || "",
      /* What stands there now, so that nothing need be read from the page. */
      shown: element.textContent,
      titled: element.getAttribute("title") || "",
      "is-changed": false,
      "is-refused": false
    };
  }

  function find() {
    if (!found) {
      found = Array.from(document.querySelectorAll(WHERE))
        .filter(function (element) { return !element.closest(".exercise"); })
        .map(itemOf);
    }
    return found;
  }

  function isNone(value) {
    return value.kind === "refused" || value.kind === "fault";
  }

  /* Why there is no value, without the words that are for authors. */
  function reason(text) {
    var sign = " has no value here: ";
    var at = text.indexOf(sign);
    return at < 0 ? text : text.slice(at + sign.length);
  }

  function textOf(item, value) {
    if (isNone(value)) {
      return item.element.dataset.none || "no value here: " + reason(value.text).replace(/\.$/, "");
    }
    return value.kind === "flag" ? (value.yes ? "yes" : "no") : value.text;
  }

  /* What each comes to. Only what is asked for here is worked out, not the whole ledger. */
  function worked() {
    return JSON.parse(window.RingbookLive.calc.evaluate(find().map(function (item) { return item.expression; })));
  }

  /* The first change is then no slower than others: the calculations are read once they are used. */
  function rehearse() {
    if (!isRehearsed) {
      isRehearsed = true;
      worked();
      window.RingbookParts.rehearse();
    }
  }

  var isRehearsed = false;

  /* The course's own numbers, told in the measures that the reader likes. */
  function ownTexts() {
    var scene = window.RingbookLive.scene.changes();
    var at = scene.keys.indexOf(window.RingbookLive.scene.UNITS);
    if (at < 0) {
      return find().map(function (item) { return item.own; });
    }
    if (ownIn[scene.written[at]] === undefined) {
      window.RingbookLive.calc.change([scene.keys[at]], [scene.written[at]]);
      var values = worked();
      window.RingbookLive.calc.change(scene.keys, scene.written);
      ownIn[scene.written[at]] = find().map(function (item, i) { return textOf(item, values[i]); });
    }
    return ownIn[scene.written[at]];
  }

  /* Writes only what is not there yet: whatever is written is laid out and painted again. */
  function show(item, value, ownText, own) {
    var element = item.element;
    var text = own ? item.own : textOf(item, value);
    var refused = !own && isNone(value);
    var differs = text !== ownText;
    var told = differs && ownText !== "none" ? "in the course: " + ownText : "";
    var why = refused && element.dataset.none ? reason(value.text) : "";
    var title = [item.title, why, told].filter(Boolean).join(" – ");
    var before = item.shown;
    if (before !== text) {
      write(element, text);
      item.shown = text;
    }
    mark(item, "is-changed", differs);
    mark(item, "is-refused", refused);
    if (title !== item.titled) {
      item.titled = title;
      if (title) {
        element.setAttribute("title", title);
      } else {
        element.removeAttribute("title");
      }
    }
    return before !== text && !element.closest("[hidden]");
  }

  function write(element, text) {
    var only = element.firstChild;
    if (only && only.nodeType === 3 && !only.nextSibling) {
      only.data = text;
    } else {
      element.textContent = text;
    }
  }

  function mark(item, name, on) {
    if (item[name] !== on) {
      item[name] = on;
      item.element.classList.toggle(name, on);
    }
  }

  /* The row of a table of steps that holds the scene's own stands where it belongs by its size. */
  function sortRows(table) {
    var body = table.tBodies[0];
    var own = body.querySelector("tr.own");
    var others = Array.from(body.rows).filter(function (row) { return row !== own; });
    function size(row) {
      var read = /^(?:1\/)?([0-9.]+)/.exec(row.cells[0].textContent);
      var number = read ? Number(read[1]) : NaN;
      return read && read[0].indexOf("1/") === 0 ? 1 / number : number;
    }
    if (!own || others.length < 2) {
      return;
    }
    var rising = size(others[0]) < size(others[others.length - 1]);
    others.forEach(function (row) { row.hidden = row.cells[0].textContent === own.cells[0].textContent; });
    var next = others.find(function (row) {
      return rising ? size(row) > size(own) : size(row) < size(own);
    }) || null;
    if (own.nextElementSibling !== next) {
      body.insertBefore(own, next);
    }
  }

  function update() {
    var values = worked();
    var texts = ownTexts();
    var own = window.RingbookLive.scene.changes().keys.length === 0;
    var changed = find().filter(function (item, i) { return show(item, values[i], texts[i], own); }).length;
    document.querySelectorAll("table[data-runs]").forEach(sortRows);
    return changed;
  }

  window.RingbookNumbers = { find: find, rehearse: rehearse, update: update, reason: reason };
})();
