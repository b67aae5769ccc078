/* What an exercise is answered with, by kind. RingbookControls.make(kind, place, question, changed) puts
   the controls into a place and gives {read, write}: read() is the answer as it stands on a sheet, such
   as "b, d" or "1c 2a 3b"; write(answer) shows one. A question is {id, title, wanted, options, numbered}:
   wanted says in plain words what an answer looks like, options and numbered are XHTML; changed() is called whenever the reader changes something. */
(function () {
  "use strict";
  var part = window.RingbookPage.part;

  function letter(i) {
    return String.fromCharCode(97 + i);
  }

  /* Words as they stand in the page, without ids and links: a label is one thing to press. */
  function fill(place, xhtml) {
    place.innerHTML = xhtml;
    place.querySelectorAll("a").forEach(function (link) {
      link.replaceWith.apply(link, Array.from(link.childNodes));
    });
    place.querySelectorAll("[id]").forEach(function (one) { one.removeAttribute("id"); });
    return place;
  }

  function plain(xhtml) {
    return fill(document.createElement("span"), xhtml).textContent;
  }

  function textField(place, id, words) {
    var label = part(place, "label", "", words);
    var field = part(place, "input");
    field.type = "text";
    field.id = id;
    field.autocomplete = "off";
    field.spellcheck = false;
    field.maxLength = 2000;
    label.htmlFor = id;
    return field;
  }

  function number(place, question, changed) {
    var field = textField(place, "answer-" + question.id, "Your answer: " + question.wanted);
    /* A phone shows its keys for numbers where no unit is wanted. */
    if (/^a (whole|plain) number$/.test(question.wanted)) {
      field.inputMode = "decimal";
    }
    field.addEventListener("input", changed);
    return {
      read: function () { return field.value.trim(); },
      write: function (answer) { field.value = answer; }
    };
  }

  /* A list to tick: radio buttons or check boxes. */
  function ticks(place, question, type, words, changed) {
    var set = part(place, "fieldset", "ticks");
    part(set, "legend", "", words);
    question.options.forEach(function (xhtml, i) {
      var label = part(set, "label");
      var input = part(label, "input");
      input.type = type;
      input.name = "answer-" + question.id;
      input.value = letter(i);
      part(label, "b", "letter", letter(i));
      fill(part(label, "span"), xhtml);
      input.addEventListener("change", changed);
    });
    return {
      read: function () {
        return Array.from(set.querySelectorAll("input:checked")).map(function (input) { return input.value; }).join(", ");
      },
      write: function (answer) {
        var letters = answer.toLowerCase().match(/\b[a-z]\b/g) || [];
        set.querySelectorAll("input").forEach(function (input) { input.checked = letters.indexOf(input.value) >= 0; });
      }
    };
  }

  function fault(place, question, mends, changed) {
    var items = ticks(place, question, "radio", "Which one is wrong?", changed);
    if (!mends) {
      return items;
    }
    var field = textField(place, "answer-" + question.id, "What it must be, with its unit if it has one");
    field.addEventListener("input", changed);
    return {
      read: function () { return (items.read() + " " + field.value.trim()).trim(); },
      write: function (answer) {
        var first = /^\s*([a-zA-Z])(?=$|[\s,;:)])[\s,;:)]*/.exec(answer);
        items.write(first ? first[1] : "");
        field.value = first ? answer.slice(first[0].length) : answer;
      }
    };
  }

  function pairs(place, question, changed) {
    var set = part(place, "fieldset", "pairs");
    part(set, "legend", "", "What belongs to each?");
    var selects = question.numbered.map(function (left, i) {
      var row = part(set, "div", "pair");
      var label = part(row, "label");
      part(label, "b", "", (i + 1) + ". ");
      fill(part(label, "span"), left);
      var select = part(row, "select");
      select.id = "answer-" + question.id + "-" + (i + 1);
      label.htmlFor = select.id;
      part(select, "option", "", "choose …").value = "";
      question.options.forEach(function (right, k) {
        part(select, "option", "", letter(k) + ") " + plain(right)).value = letter(k);
      });
      select.addEventListener("change", changed);
      return select;
    });
    return {
      read: function () {
        return selects.map(function (select, i) { return select.value ? (i + 1) + select.value : ""; }).filter(Boolean).join(" ");
      },
      write: function (answer) {
        var found = {};
        (answer.toLowerCase().match(/\d+\s*[-:.)=]?\s*[a-z]\b/g) || []).forEach(function (pair) {
          found[parseInt(pair, 10)] = pair.slice(-1);
        });
        selects.forEach(function (select, i) { select.value = found[i + 1] || ""; });
      }
    };
  }

  function make(kind, place, question, changed) {
    place.textContent = "";
    switch (kind) {
      case "choice": return ticks(place, question, "radio", "Your answer", changed);
      case "several": return ticks(place, question, "checkbox", "Your answer: all that are right", changed);
      case "order": return window.RingbookRank.make(place, question, fill, changed);
      case "pairs": return pairs(place, question, changed);
      case "fault": return fault(place, question, false, changed);
      case "mend": return fault(place, question, true, changed);
      case "plan": return window.RingbookPlanRows.make(place, question, changed);
      default: return number(place, question, changed);
    }
  }

  window.RingbookControls = { make: make };
})();
