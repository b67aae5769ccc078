/* The scene card: what a reader states of the own camera, object, place and aim, field by field, as
   people write it. What cannot be used stays in its field with a word on how to mend it, and all other
   fields hold all the same. RingbookCard.open(key) opens it, at a field if one is named. */
(function () {
  "use strict";
  var live = window.RingbookLive;
  var entries = window.RingbookEntries;
  var SECTIONS = [
    ["kit", "Camera", "the camera"],
    ["subject", "Object", "the object"],
    ["place", "Place", "the place"],
    ["aim", "Aim", "the aim"]
  ];
  var ALWAYS = ["kit.equivalent", "subject.depth"];
  var OBSTACLES = "place.obstacles";
  /* Milliseconds after the last letter until what stands in a field is taken. */
  var PAUSE = 600;
  var NOTES = {
    "subject.name": "Under another name the object counts as a plain cylinder or block, without the form of the course’s own.",
    "kit.equivalent": "For a phone it does in place of the sensor size. Without the true focal length a small sensor is " +
      "assumed: distances are right, sharpness may be off.",
    "subject.depth": "Of something that is not round: the shorter side, seen from above."
  };
  var dialog = null;
  var status = null;
  var rows = {};           /* by key: what stands on the card for a field */
  var kitInputs = [];
  var furnitureInputs = [];
  var unitInputs = [];
  var own = false;         /* whether a change of the scene comes from the card */
  var turn = 0;            /* of changes that come from the card */
  var told = "";           /* what was said last of entries that cannot be used */

  var part = window.RingbookPage.part;
  var button = window.RingbookPage.button;

  function capital(text) {
    return text.charAt(0).toUpperCase() + text.slice(1);
  }

  function say(text) {
    window.RingbookOwnScene.say(text);
  }

  /* ---- taking over what was written ---- */

  /* Changes the scene and brings the card up to it, a frame after the numbers of the page; quiet leaves the
     field of that key to its typist. */
  function take(change, quiet) {
    own = true;
    change();
    own = false;
    var mine = ++turn;
    window.RingbookParts.afterFrame(function () {
      if (mine === turn) {
        fill(quiet);
      }
    });
    var open = Object.keys(entries.faults).filter(function (key) { return key !== quiet; });
    if (open.length > 0) {
      told = (open.length === 1 ? "One entry cannot be used yet: " : open.length + " entries cannot be used yet: ") +
        open.map(nameOf).join(", ") + ". Everything else holds.";
      say(told);
    } else if (status.textContent === told) {
      say("");
    }
  }

  function nameOf(key) {
    var field = entries.own(key);
    return field ? field.name : key;
  }

  /* What the reader states, but for the camera, and with these entries. */
  function withKit(kit) {
    var all = {};
    Object.keys(entries.written).filter(function (key) { return key.indexOf("kit") !== 0; })
      .forEach(function (key) { all[key] = entries.written[key]; });
    return Object.assign(all, kit);
  }

  function putBack(key) {
    var all = Object.assign({}, entries.written);
    delete all[key];
    take(function () { entries.put(all, key); });
    rows[key].input.focus();
  }

  /* ---- laying it out ---- */

  function lay() {
    dialog = part(document.body, "dialog", "scene-card");
    dialog.setAttribute("aria-labelledby", "scene-card-title");
    var head = part(dialog, "div", "card-head");
    var title = part(head, "h2", "", "Your scene card");
    title.id = "scene-card-title";
    title.tabIndex = -1;
    button(head, "plain close", "Close", close);
    part(dialog, "p", "lead", "Write down what you have. All numbers of the course follow" +
      (live.keeps() ? ", and the card stays in this browser. " : ". This browser keeps nothing: the card holds until you leave the page, so take it along as a file or a link. ") +
      "Write measures as you like: 42 cm, 16 1/2 in, f/8, 12°.");
    units();
    SECTIONS.forEach(function (section, i) { sheet(section, i === 0); });
    window.RingbookSceneFile.lay(part(dialog, "section", "sheet keep"), {
      fields: entries.fields,
      own: entries.all,
      written: function () { return entries.written; },
      take: function (all) { take(function () { entries.put(all, ""); }); },
      say: say
    });
    foot();
    dialog.addEventListener("keydown", function (event) {
      if (event.key === "Escape") {
        event.preventDefault();
        close();
      }
    });
    dialog.addEventListener("cancel", function (event) {
      event.preventDefault();
      close();
    });
  }

  function foot() {
    var box = part(dialog, "div", "card-foot");
    status = part(box, "p", "state");
    button(box, "plain", "Back to the course’s own", function () {
      take(entries.clear);
      say("The page shows the course’s own numbers again.");
    });
  }

  function units() {
    var group = part(dialog, "fieldset", "choice units");
    part(group, "legend", "", "Tell lengths in");
    [["centimetres and metres", false], ["inches and feet", true]].forEach(function (choice) {
      unitInputs.push([radio(group, "scene-units", choice[0], function () {
        take(function () { entries.inches(choice[1]); });
      }), choice[1]]);
    });
    part(group, "p", "note", "Small ones, and those of the camera, stay in millimetres, as is usual. Workings show both.");
  }

  function radio(group, name, text, chosen) {
    var label = part(group, "label");
    var input = part(label, "input");
    input.type = "radio";
    input.name = name;
    label.append(" " + text);
    input.addEventListener("change", chosen);
    return input;
  }

  function sheet(section, open) {
    var box = part(dialog, "details", "sheet");
    box.open = open;
    part(part(box, "summary"), "h3", "", section[1]);
    if (section[0] === "kit") {
      kits(box);
    }
    var more = null;
    entries.all().filter(function (field) { return field.section === section[0] && field.key !== live.scene.UNITS; }).forEach(function (field) {
      var main = !field.optional || field.text !== "" || ALWAYS.indexOf(field.key) >= 0;
      if (!main && !more) {
        more = document.createElement("details");
        more.className = "more";
        part(more, "summary", "", "More about " + section[2]);
      }
      row(main ? box : more, field);
    });
    if (section[0] === "place") {
      furniture(box);
    }
    if (more) {
      box.appendChild(more);
    }
  }

  function kits(box) {
    var group = part(box, "fieldset", "choice");
    part(group, "legend", "", "Begin with the numbers of");
    [["", entries.own("kit.name").text]].concat(live.calc.kits().map(function (name) { return [name, name]; }))
      .forEach(function (name) {
        var input = radio(group, "scene-kit", name[1], function () {
          take(function () { entries.put(withKit(name[0] ? { kit: name[0] } : {}), "kit"); });
        });
        input.value = name[0];
        kitInputs.push(input);
      });
    part(group, "p", "note", "Your own camera: change the numbers below, or let a photograph tell them.");
    window.RingbookTestPhoto.lay(box, function (kit) {
      take(function () { entries.put(withKit(kit), "kit.name"); });
    });
  }

  function furniture(box) {
    var group = part(box, "fieldset", "choice");
    part(group, "legend", "", "Walls and furniture");
    [["as in the course", undefined], ["none near the object", "none"]].forEach(function (choice) {
      furnitureInputs.push([radio(group, "scene-furniture", choice[0], function () {
        var all = Object.assign({}, entries.written);
        all[OBSTACLES] = choice[1];
        if (!choice[1]) {
          delete all[OBSTACLES];
        }
        take(function () { entries.put(all, OBSTACLES); });
      }), choice[1]]);
    });
  }

  function row(box, field) {
    var made = part(box, "div", field.number || field.words.length > 0 ? "blank" : "blank wide");
    var id = "scene-" + field.key.replace(".", "-");
    part(made, "label", "", capital(field.name)).htmlFor = id;
    var place = part(made, "div", "place");
    var input = part(place, field.words.length > 0 ? "select" : "input");
    input.id = id;
    if (field.words.length > 0) {
      field.words.forEach(function (word) { input.add(new Option(word, word)); });
    } else {
      input.type = "text";
      input.autocomplete = "off";
      input.spellcheck = false;
    }
    var unit = part(place, "span", "unit");
    var note = part(made, "p", "note", NOTES[field.key] || "");
    note.id = id + "-note";
    note.hidden = !NOTES[field.key];
    var wrong = part(made, "p", "wrong");
    wrong.id = id + "-wrong";
    var before = part(made, "p", "before");
    var course = part(before, "span");
    /* It stays when the field is left for it. */
    var back = button(before, "plain small", "Put back", function () { putBack(field.key); });
    back.setAttribute("aria-label", "Put back: " + field.name);
    rows[field.key] = { box: made, input: input, unit: unit, note: note, wrong: wrong, before: before, course: course, back: back };
    attend(field, input);
  }

  /* A field is taken when it is left, and already while the reader pauses, if it can be used. */
  function attend(field, input) {
    var pause = 0;
    input.addEventListener("input", function () {
      window.clearTimeout(pause);
      pause = window.setTimeout(function () {
        take(function () { entries.write(field, input.value); }, field.key);
      }, PAUSE);
    });
    input.addEventListener("change", function () {
      window.clearTimeout(pause);
      take(function () { entries.write(field, input.value); });
    });
  }

  /* ---- keeping it true ---- */

  function fill(quiet) {
    var fields = entries.fields();
    var otherwise = usual(fields);
    fields.forEach(function (field) {
      if (field.key !== quiet && rows[field.key]) {
        fillRow(field, otherwise[field.key] || "");
      }
    });
    kitInputs.forEach(function (input) { input.checked = input.value === (entries.written.kit || ""); });
    unitInputs.forEach(function (pair) { pair[0].checked = entries.inches() === pair[1]; });
    furnitureInputs.forEach(function (pair) { pair[0].checked = entries.written[OBSTACLES] === pair[1]; });
  }

  function fillRow(field, otherwise) {
    var row = rows[field.key];
    var mine = entries.written[field.key];
    var value = mine === undefined ? entries.shown(field, field.text) : mine;
    if (row.input.value !== value) {
      row.input.value = value;
    }
    var course = entries.own(field.key).text;
    var differs = mine !== undefined || field.text !== course;
    var before = differs ? "In the course: " + (entries.shown(field, course) || "not stated") + " " : "";
    var fault = entries.faults[field.key];
    /* A row that says what it said is left alone, with the focus that may be in it. */
    var says = JSON.stringify([value, otherwise, before, mine !== undefined, fault, entries.inches()]);
    if (row.says === says) {
      return;
    }
    row.says = says;
    if (row.input.localName === "input") {
      row.input.placeholder = field.optional && field.text === "" ? otherwise : "";
    }
    row.unit.textContent = row.input.value + (row.input.placeholder || "") === "" ? entries.unitOf(field) : "";
    showFault(row, fault);
    row.box.classList.toggle("is-mine", differs);
    row.before.hidden = !before && mine === undefined;
    row.course.textContent = before;
    row.back.hidden = mine === undefined;
  }

  function showFault(row, fault) {
    row.wrong.textContent = "";
    if (fault) {
      part(row.wrong, "b", "", capital(fault.message) + ".");
      row.wrong.append(fault.help ? " " + capital(fault.help) + "." : "");
      row.box.closest("details").open = true;
    }
    row.input.setAttribute("aria-invalid", String(Boolean(fault)));
    var described = [fault ? row.wrong.id : "", row.note.hidden ? "" : row.note.id].filter(Boolean).join(" ");
    if (described) {
      row.input.setAttribute("aria-describedby", described);
    } else {
      row.input.removeAttribute("aria-describedby");
    }
  }

  /* What counts where nothing is stated, by key. */
  function usual(fields) {
    var open = fields.filter(function (field) { return field.optional && field.text === ""; })
      .map(function (field) { return field.key; });
    var all = {};
    JSON.parse(live.calc.evaluate(open)).forEach(function (value, i) {
      if (value.kind === "quantity") {
        all[open[i]] = "usually " + value.text;
      }
    });
    return all;
  }

  /* ---- open and close ---- */

  function open(key) {
    live.ready(function () {
      entries.recall();
      if (!dialog) {
        lay();
        live.scene.onChange(follow);
      }
      fill();
      if (!dialog.open) {
        live.warm();
        if (window.requestIdleCallback) {
          window.requestIdleCallback(window.RingbookNumbers.rehearse);
        }
        /* Beside the text where there is room, over it where there is none. */
        if (window.matchMedia("(min-width: 62rem)").matches) {
          dialog.show();
        } else {
          dialog.showModal();
          window.RingbookPage.hearIn(dialog);
        }
      }
      status.textContent = "";
      goTo(rows[key]);
    }, function (message) { say("The card cannot be opened: " + message); });
  }

  function goTo(wanted) {
    if (!wanted) {
      document.getElementById("scene-card-title").focus();
      return;
    }
    for (var box = wanted.box.closest("details"); box; box = box.parentElement.closest("details")) {
      box.open = true;
    }
    wanted.input.focus();
  }

  /* The scene was changed elsewhere: by the button beside the dial, or in another window. */
  function follow() {
    if (!own && dialog.open) {
      entries.recall();
      fill();
    }
  }

  function close() {
    dialog.close();
    window.RingbookPage.hearIn(null);
    window.RingbookOwnScene.rest();
    document.querySelector(".mine .take").focus();
  }

  window.RingbookCard = {
    open: open,
    isOpen: function () { return dialog !== null && dialog.open; },
    status: function () { return status; }
  };
})();
