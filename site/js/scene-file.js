/* A scene as a small file and as a link. The file is the scene part of a course file, so that a trainer
   can paste it into one: sections, and in them "what it is: value", a line each.

   RingbookSceneFile.text(fields, written)   the file; written says whether the room is cleared
   RingbookSceneFile.read(text, own)         {written, unread}: what differs from the course's own fields,
                                             and the lines that say nothing
   RingbookSceneFile.lay(box, card)          the buttons on the card */
(function () {
  "use strict";
  var live = window.RingbookLive;
  var LARGEST = 100000;

  function quoted(text) {
    return /^[A-Za-z0-9][^:#"'{}[\],]*$/.test(text) ? text : "\"" + text.replace(/["\\]/g, "\\$&") + "\"";
  }

  function unquoted(text) {
    var sign = text.charAt(0);
    if (sign === "\"" && text.length > 1 && text.charAt(text.length - 1) === sign) {
      return text.slice(1, -1).replace(/\\(.)/g, "$1");
    }
    return sign === "'" && text.charAt(text.length - 1) === sign ? text.slice(1, -1).replace(/''/g, "'") : text.replace(/\s+#.*$/, "");
  }

  function text(fields, written) {
    var lines = ["# A scene for the course \"" + document.title.replace(/^.*– /, "") + "\".",
      "# It can stand in a course file."];
    var section = "";
    fields.forEach(function (field) {
      if (field.section !== section) {
        section = field.section;
        lines.push("", section + ":");
        if (section === "place" && written["place.obstacles"]) {
          lines.push("  obstacles: []");
        }
      }
      if (field.text !== "") {
        lines.push("  " + field.label + ": " + quoted(field.text));
      }
    });
    return lines.join("\n") + "\n";
  }

  function read(file, own) {
    var stated = {};
    var unread = [];
    var section = "";
    var sections = [];
    file.replace(/^\ufeff/, "").split(/\r\n|\r|\n/).forEach(function (line, i) {
      var plain = line.trim();
      if (plain === "" || plain.charAt(0) === "#") {
        return;
      }
      var sign = plain.indexOf(":");
      var label = plain.slice(0, Math.max(0, sign)).trim();
      var value = sign < 0 ? "" : unquoted(plain.slice(sign + 1).trim());
      if (sign > 0 && line.charAt(0) !== " " && line.charAt(0) !== "\t" && value === "") {
        section = label;
        sections.push(section);
        return;
      }
      var field = own.find(function (one) { return one.section === section && one.label === label; });
      if (field) {
        stated[field.key] = value;
      } else if (section === "place" && label === "obstacles" && value === "[]") {
        stated["place.obstacles"] = "none";
      } else {
        unread.push("line " + (i + 1) + ": " + plain.slice(0, 60));
      }
    });
    return { written: differing(stated, sections, own), unread: unread };
  }

  /* What a section of the file leaves out is not stated; what equals the course's own is no change. */
  function differing(stated, sections, own) {
    var written = {};
    own.forEach(function (field) {
      var value = stated[field.key];
      if (value === undefined) {
        if (sections.indexOf(field.section) >= 0 && field.optional && field.text !== "") {
          written[field.key] = "";
        }
      } else if (value !== field.text) {
        written[field.key] = value;
      }
    });
    if (stated["place.obstacles"]) {
      written["place.obstacles"] = stated["place.obstacles"];
    }
    return written;
  }

  function part(parent, name, style, words) {
    var element = document.createElement(name);
    if (style) {
      element.className = style;
    }
    if (words) {
      element.textContent = words;
    }
    parent.appendChild(element);
    return element;
  }

  function button(parent, words, pressed) {
    var made = part(parent, "button", "plain", words);
    made.type = "button";
    made.addEventListener("click", pressed);
    return made;
  }

  function save(card) {
    var blob = new Blob([text(card.fields(), card.written())], { type: "text/plain" });
    var link = document.createElement("a");
    link.href = URL.createObjectURL(blob);
    link.download = "my-scene.yaml";
    link.click();
    window.setTimeout(function () { URL.revokeObjectURL(link.href); }, 10000);
    card.say("The scene was saved as my-scene.yaml.");
  }

  function load(file, card) {
    if (file.size > LARGEST) {
      card.say("‘" + file.name + "’ is too large to be a scene.");
      return;
    }
    file.text().then(function (words) {
      var found = read(words, card.own());
      if (Object.keys(found.written).length === 0 && found.unread.length > 0) {
        card.say("‘" + file.name + "’ is no scene: nothing in it could be read.");
        return;
      }
      card.take(found.written);
      if (found.unread.length > 0) {
        card.say("Taken over, but for what the card has no field for: " + found.unread.slice(0, 3).join("; ") +
          (found.unread.length > 3 ? "; and " + (found.unread.length - 3) + " more lines." : "."));
      }
    });
  }

  function share(box, card) {
    var line = part(box, "div", "blank link");
    var label = part(line, "label", "", "A link to this page with your scene");
    var field = part(line, "input");
    field.id = "scene-link";
    field.readOnly = true;
    label.htmlFor = field.id;
    function refresh() { field.value = live.scene.link(); }
    field.addEventListener("focus", function () {
      refresh();
      field.select();
    });
    live.scene.onChange(refresh);
    refresh();
    button(line, "Copy the link", function () {
      field.focus();
      var done = document.execCommand("copy");
      card.say(done ? "The link was copied. It holds your scene, nothing else of you." : "Copy the link from its field.");
    });
  }

  function lay(box, card) {
    part(box, "h3", "", "Keep and share");
    part(box, "p", "note", "Nothing is sent anywhere: link and file go where you take them.");
    share(box, card);
    var files = part(box, "div", "files");
    button(files, "Save as a file", function () { save(card); });
    var label = part(files, "label", "file", "Open a file ");
    var input = part(label, "input");
    input.type = "file";
    input.accept = ".yaml,.yml,.txt";
    input.addEventListener("change", function () {
      if (input.files[0]) {
        load(input.files[0], card);
        input.value = "";
      }
    });
  }

  window.RingbookSceneFile = { text: text, read: read, lay: lay };
})();
