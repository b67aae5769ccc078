/* The part of a page where readers see how far they are, write their names, and save, bring back or
   clear their answers. */
(function () {
  "use strict";
  var answers = window.RingbookAnswers;
  var part = window.RingbookPage.part;
  var button = window.RingbookPage.button;
  var hear = window.RingbookPage.hear;
  var count = window.RingbookPage.count;
  var told = null;
  var total = null;
  var field = null;

  function tell(text) {
    told.textContent = text;
    hear(text);
  }

  /* ---- how far ---- */

  function ids(box) {
    if (box.hasAttribute("data-exercises")) {
      return box.getAttribute("data-exercises").split(" ");
    }
    return Array.prototype.map.call(document.querySelectorAll(".check"), function (check) {
      return check.getAttribute("data-exercise");
    });
  }

  function words(tally) {
    return tally.right === tally.all
      ? "All " + count(tally.all, "exercise") + " right"
      : tally.right + " of " + count(tally.all, "exercise") + " right" +
        (tally.written > tally.right ? ", " + (tally.written - tally.right) + " begun" : "");
  }

  function showTallies() {
    document.querySelectorAll(".tally").forEach(function (box) {
      var all = ids(box);
      var tally = answers.tally(all);
      box.hidden = all.length === 0 || (box.hasAttribute("data-exercises") && tally.written === 0);
      box.textContent = words(tally);
      if (!box.hasAttribute("data-exercises")) {
        box.appendChild(document.createTextNode(". "));
        part(box, "a", "", "Your name and answer sheet").href = "#your-answers";
      }
    });
    var written = Object.keys(answers.all()).length;
    total.textContent = (written === 0 ? "No answers are written yet" : count(written, "answer") + " written in the whole course") +
      (answers.name() ? ", with the numbers of " + answers.name() + "." : ", with the course’s numbers.");
  }

  /* ---- the file ---- */

  function save(text, ending, type) {
    var link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: type + ";charset=utf-8" }));
    link.download = "answers" + (answers.name() ? "-" + answers.name().replace(/[^\p{L}\p{N}]+/gu, "-") : "") + "." + ending;
    link.click();
    window.setTimeout(function () { URL.revokeObjectURL(link.href); }, 10000);
    tell(link.download + " goes to your downloads.");
  }

  function bringBack(file) {
    file.text().then(function (text) {
      var sheet = window.RingbookSheet.read(text, answers.name());
      if (sheet.fault) {
        tell("Nothing was taken from " + file.name + ": " + sheet.fault + ".");
        return;
      }
      answers.take(sheet.name, sheet.answers);
      tell(count(Object.keys(sheet.answers).length, "answer") + " taken from " + file.name + "." +
        (sheet.left ? " Left out: " + count(sheet.left, "line") + "." : ""));
    });
  }

  /* ---- clear ---- */

  function ask() {
    var dialog = part(document.body, "dialog", "slip sure");
    var title = part(dialog, "h2", "", "Clear all answers?");
    title.id = "sure-title";
    dialog.setAttribute("aria-labelledby", title.id);
    var what = part(dialog, "p", "", "What you wrote in all lessons, what was right, and your name go from this browser. It cannot be undone; save the answer sheet first if you want it.");
    what.id = "sure-what";
    dialog.setAttribute("aria-describedby", what.id);
    var foot = part(dialog, "p", "sure-foot");
    button(foot, "plain", "Keep them", function () { dialog.close(); });
    button(foot, "take", "Clear them", function () {
      dialog.close();
      answers.clear();
      tell("All answers are cleared.");
    });
    dialog.addEventListener("close", function () { dialog.remove(); });
    dialog.showModal();
  }

  /* ---- lay it out ---- */

  function layName(desk) {
    var label = part(desk, "label", "", "Your name");
    var row = part(desk, "p", "row");
    field = part(row, "input");
    field.id = "learner-name";
    field.type = "text";
    field.autocomplete = "off";
    field.maxLength = 100;
    label.htmlFor = field.id;
    button(row, "plain", "Use these numbers", function () { answers.rename(field.value); });
    var note = part(desk, "p", "note", "With a name, the exercises get numbers of your own, the same that your trainer’s sheet has for that name. Without one, they keep the course’s numbers. The name stays in this browser and goes nowhere, but into the answer sheet when you save it.");
    note.id = "learner-name-note";
    field.setAttribute("aria-describedby", note.id);
    field.addEventListener("change", function () { answers.rename(field.value); });
  }

  function layFiles(desk) {
    var row = part(desk, "p", "row");
    button(row, "plain", "Save the answer sheet (CSV)", function () {
      save(window.RingbookSheet.csv(answers.name(), answers.all()), "csv", "text/csv");
    });
    button(row, "plain", "Save it as JSON", function () {
      save(window.RingbookSheet.json(answers.name(), answers.all()), "json", "application/json");
    });
    button(row, "plain", "Clear all answers", ask);
    var label = part(desk, "label", "file", "Bring an answer sheet back ");
    var file = part(label, "input");
    file.type = "file";
    file.accept = ".csv,.json,text/csv,application/json";
    file.addEventListener("change", function () {
      if (file.files[0]) {
        bringBack(file.files[0]);
        file.value = "";
      }
    });
  }

  function follow(what) {
    if (what !== "answer") {
      field.value = answers.name();
    }
    if (what === "name") {
      hear("The exercises have " + (answers.name() ? "the numbers of " + answers.name() : "the course’s numbers") + " now.");
    }
    showTallies();
  }

  function begin() {
    var desk = document.querySelector(".answers");
    total = part(desk, "p", "total");
    if (!answers.isKept()) {
      part(desk, "p", "unkept", "This browser keeps nothing for these pages: answers hold until you leave the page. Save the answer sheet before you go.");
    }
    layName(desk);
    layFiles(desk);
    told = part(desk, "p", "told-of");
    hear("");
    desk.hidden = false;
    answers.onChange(follow);
    follow("all");
  }

  document.addEventListener("DOMContentLoaded", begin);
})();
