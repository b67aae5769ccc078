/* The field view: goes through the shot table with the reader, one photograph after the other. What is
   marked is kept in this browser together with the plan it belongs to, so that a shoot goes on as it
   began until its reader takes up another plan. Steps and marks: field-log.js. */
(function () {
  "use strict";
  var live = window.RingbookLive;
  var SITE = document.currentScript.src.replace(/js\/[^/]*$/, "");
  var KEY = "ringbook.field " + SITE;
  var TOO_FAST = 350; /* milliseconds between two touches of one thumb that were meant as one */
  var state = { sheet: "", marks: [], ticks: {}, stays: "" };
  var plan = null;
  var offered = "";   /* the sheet of the scene that holds now */
  var keeps = true;
  var awake = null;
  var touched = -Infinity;

  function find(selector) {
    return document.querySelector("main " + selector);
  }

  function part(parent, name, style, text) {
    return window.RingbookPage.part(parent, name, style, text);
  }

  /* ---- what this browser keeps ---- */

  function read() {
    try {
      var kept = JSON.parse(window.localStorage.getItem(KEY));
      if (kept && typeof kept.sheet === "string" && Array.isArray(kept.marks)) {
        JSON.parse(kept.sheet);
        return { sheet: kept.sheet, marks: kept.marks, ticks: kept.ticks || {}, stays: kept.stays || "" };
      }
    } catch (deniedOrBroken) {
      /* Then the shoot begins. */
    }
    return null;
  }

  function keep() {
    try {
      window.localStorage.setItem(KEY, JSON.stringify(state));
    } catch (denied) {
      keeps = false;
    }
  }

  function begin(sheet) {
    state = { sheet: sheet, marks: [], ticks: {}, stays: "" };
    plan = JSON.parse(sheet);
    keep();
  }

  /* ---- the plan of the scene that holds ---- */

  function follow() {
    var own = live && live.scene.changes().keys.length > 0;
    if (!own) {
      offer(JSON.stringify(window.RingbookShoot));
      return;
    }
    live.ask("fieldSheet", [], function (sheet, fault) {
      if (sheet !== null) {
        offer(JSON.stringify(JSON.parse(sheet)));
        return;
      }
      if (!plan) {
        offer(JSON.stringify(window.RingbookShoot));
      }
      notice("Your own scene could not be worked out: " + fault);
    }, "field sheet");
  }

  function offer(sheet) {
    offered = sheet;
    if (!plan || state.sheet !== sheet && state.marks.length === 0) {
      begin(sheet);
    }
    show(true);
  }

  function answerMove(renew) {
    if (renew) {
      begin(offered);
    } else {
      state.stays = offered;
      keep();
    }
    show(true);
    find(".main").focus();
  }

  /* ---- marks ---- */

  function now() {
    return window.RingbookLog.look(plan, state.marks);
  }

  function mark(what, step) {
    state.marks.push({ what: what, step: step });
    keep();
    stayAwake();
    show();
  }

  /* A thumb that trembles counts once; keys and scripts (detail 0) are meant as they come. */
  function meant(event) {
    var fast = event.detail > 0 && event.timeStamp - touched < TOO_FAST;
    touched = event.timeStamp;
    return !fast && event.currentTarget.getAttribute("aria-disabled") !== "true";
  }

  function pressed(event) {
    if (meant(event) && now().step !== "finished") {
      mark("done", now().step);
    }
  }

  function skipped(event) {
    if (meant(event)) {
      mark(now().queue === "later" ? "out" : "later", now().step);
    }
  }

  function undone(event) {
    if (meant(event)) {
      state.marks.pop();
      keep();
      show();
    }
  }

  /* ---- the screen stays on while there is something to take ---- */

  function stayAwake() {
    var wanted = plan && state.marks.length > 0 && now().step !== "finished";
    if (!navigator.wakeLock || document.visibilityState !== "visible") {
      return;
    }
    if (!wanted && awake) {
      awake.release();
      awake = null;
    } else if (wanted && !awake) {
      navigator.wakeLock.request("screen").then(function (lock) {
        awake = lock;
        lock.addEventListener("release", function () { awake = null; });
      }, function () { /* A low battery refuses it; the screen then goes dark as ever. */ });
    }
  }

  /* ---- words ---- */

  function minutes(at) {
    return "about " + Math.ceil(at.left * Number(plan.seconds) / 60) + "\u00a0min";
  }

  function shotName(step) {
    var parts = step.split(" ");
    var run = plan.runs[parts[1]];
    return run.name + " " + run.stops[parts[2]].number;
  }

  function title(at) {
    var run = plan.runs[at.run];
    if (at.stop >= 0) {
      return run.name + ": " + (at.queue === "again" ? "again, " : "") + (run.repeats === "1" ? "photograph " : "station ") +
        run.stops[at.stop].number + " of " + run.stops.length;
    }
    return {
      ready: "Ready?",
      "slate later": "Now what you skipped",
      "slate again": "Now the retakes",
      "slate end": "The last slate",
      finished: "All is taken"
    }[at.step] || "Slate: " + run.name;
  }

  /* The way from the stop before holds only for somebody who stands there. */
  function way(at) {
    var stop = plan.runs[at.run].stops[at.stop];
    var last = state.marks[state.marks.length - 1];
    var before = "shot " + at.run + " " + (at.stop - 1);
    return !at.queue && last && last.what === "done" && last.step === before ? stop.way : stop.place;
  }

  function inTheWay(stop) {
    return stop.inTheWay.length ? "In the way here: " + stop.inTheWay.join(", ") + ". Move it, or skip." : "";
  }

  /* What is heard of a stop: how the camera is held where that is new, and always what is in the way. */
  function spoken(at) {
    var stops = plan.runs[at.run].stops;
    var stop = stops[at.stop];
    var before = stops[at.stop - 1];
    var steps = way(at) === stop.way;
    var same = steps && before && ["height", "away", "tilt"].every(function (fact) { return before[fact] === stop[fact]; });
    return [way(at), same ? "" : "Lens height " + stop.height + ", distance " + stop.away + ", tilt " + stop.tilt + ".", inTheWay(stop)]
      .filter(Boolean).join(" ");
  }

  function lines(at) {
    var run = plan.runs[at.run];
    if (at.step.indexOf("slate ") === 0 && run) {
      return run.before.concat(
        run.turned ? ["Let its keeper turn it. Lay it on something soft and firm, so that it cannot roll."] : [],
        ["Check the locks.", "Photograph a card that says " + run.name + "."]);
    }
    return {
      "slate later": ["Photograph a card that says Left over.", window.RingbookPage.count(at.later.length, "station") + ": " + at.later.map(shotName).join(", ") + "."],
      "slate again": ["Photograph a card that says Retakes.", "Same settings. Take a good neighbour on either side with each."],
      "slate end": ["Look through the set before anything is moved.", "If one is no good, ask for it again below.", "Then photograph the last slate."],
      finished: ["Nothing is moved until the set is checked."]
    }[at.step] || [];
  }

  /* ---- the page ---- */

  function notice(text) {
    find(".notice").textContent = text;
    find(".notice").hidden = !text;
  }

  function facts(stop) {
    var list = find(".facts");
    list.textContent = "";
    [["Lens height", stop.height], ["Distance", stop.away], ["Tilt", stop.tilt]].forEach(function (fact) {
      var pair = part(list, "div");
      part(pair, "dt", "", fact[0]);
      part(pair, "dd", "", fact[1]);
    });
  }

  function face(at) {
    var shot = at.stop >= 0;
    find(".face").hidden = at.run < 0;
    find(".say").hidden = !shot;
    if (at.run >= 0) {
      window.RingbookPlan.draw(find(".plan"), plan, at);
    }
    if (shot) {
      var run = plan.runs[at.run];
      var stop = run.stops[at.stop];
      find(".way").textContent = way(at);
      find(".stand").textContent = "Clock " + stop.clock + ", angle " + stop.angle + ", " + stop.floor + " along the floor" +
        (run.repeats === "1" ? "" : ", " + run.repeats + " photographs here");
      facts(stop);
      find(".block").textContent = inTheWay(stop);
    }
  }

  function todo(at) {
    var place = find(".todo");
    place.textContent = "";
    var all = lines(at);
    if (all.length) {
      var list = part(place, "ul");
      all.forEach(function (line) { part(list, "li", "", line); });
    }
    if (at.out.length) {
      part(place, "p", "gaps", "Left out, a gap: " + at.out.map(shotName).join(", ") + ".");
    }
    if (at.step === "slate end" || at.step === "finished") {
      retakes(place, at);
    }
  }

  function chooser(parent, label, names) {
    var made = part(parent, "label", "", label + " ");
    var select = part(made, "select");
    names.forEach(function (name, i) { part(select, "option", "", name).value = i; });
    return select;
  }

  function retakes(place) {
    var box = part(place, "div", "retakes");
    part(box, "h3", "", "Retakes");
    var run = chooser(box, "Run", plan.runs.map(function (one) { return one.name; }));
    var stop = chooser(box, "Number", []);
    function numbers() {
      stop.textContent = "";
      plan.runs[run.value].stops.forEach(function (one, i) { part(stop, "option", "", one.number).value = i; });
    }
    run.addEventListener("change", numbers);
    numbers();
    window.RingbookPage.button(box, "plain again", "Take it again", function () {
      mark("again", "shot " + run.value + " " + stop.value);
      find(".main").focus();
    });
  }

  function able(button, yes) {
    button.setAttribute("aria-disabled", yes ? "false" : "true");
  }

  function buttons(at) {
    var shot = at.stop >= 0;
    find(".main").textContent = shot ? "Taken" : at.step === "ready" ? "Begin" : at.step === "finished" ? "Done" : "Slate taken";
    able(find(".main"), at.step !== "finished");
    find(".later").textContent = at.queue === "later" && shot ? "Leave out" : "Skip for later";
    able(find(".later"), shot && at.queue !== "again");
    able(find(".undo"), state.marks.length > 0);
  }

  /* The list before the first photograph follows the plan; what is ticked stays ticked. */
  function checks() {
    /* In other measures the course's own plan reads otherwise and is still its own. */
    var isCourse = live && live.scene.isOwn() && state.sheet === offered;
    var own = state.sheet !== JSON.stringify(window.RingbookShoot) && !isCourse;
    find(".scene-of").textContent = own ? "For your own scene" : "For the course’s own scene";
    find(".object").textContent = plan.object;
    find(".kit").textContent = plan.kit;
    find(".total").textContent = plan.total;
    var list = find(".locks");
    list.textContent = "";
    plan.locks.forEach(function (lock) {
      var label = part(part(list, "li"), "label");
      part(label, "input").type = "checkbox";
      part(label, "span", "", lock.name);
      part(label, "b", "", lock.value);
    });
    document.querySelectorAll(".checks input").forEach(function (box) {
      var name = box.parentNode.textContent.trim().replace(/\s+/g, " ");
      box.checked = state.ticks[name] === true;
      box.onchange = function () {
        state.ticks[name] = box.checked;
        keep();
      };
    });
    window.RingbookPlan.tables(find(".tables"), plan);
  }

  function moved(at) {
    var asks = state.sheet !== offered && offered !== "" && state.stays !== offered;
    find(".moved").hidden = !asks;
    if (asks) {
      find(".moved p").textContent = "The scene has changed since this shoot began. Its plan stays, with " +
        window.RingbookPage.count(at.taken, "photograph") + " taken, until you decide.";
    }
  }

  function show(anew) {
    var at = now();
    if (anew) {
      checks();
    }
    moved(at);
    notice(keeps ? "" : "This browser keeps nothing. Leave this page open: if it closes, the count is lost.");
    find(".shoot").hidden = false;
    find(".rest").hidden = false;
    find(".ready").hidden = at.step !== "ready";
    find(".thumb").hidden = plan.runs.length === 0;
    if (plan.runs.length === 0) {
      find(".now").textContent = "No plan is possible yet";
      find(".left").textContent = plan.lack.join(" ");
      find(".face").hidden = true;
      return;
    }
    find(".now").textContent = title(at);
    find("progress").max = at.all;
    find("progress").value = at.taken;
    find(".left").textContent = (at.run >= 0 && !at.queue ? at.runLeft + " left in " + plan.runs[at.run].name + ", " : "") +
      at.left + " left in all, " + minutes(at);
    face(at);
    todo(at);
    buttons(at);
    find(".hears").textContent = anew ? "" : title(at) + ". " + (at.stop >= 0 ? spoken(at) : lines(at).join(" "));
    find(".quiet").textContent = at.later.length ? "Skipped for later: " + at.later.map(shotName).join(", ") + "." : "";
  }

  function attend() {
    find(".main").addEventListener("click", pressed);
    find(".later").addEventListener("click", skipped);
    find(".undo").addEventListener("click", undone);
    find(".stay").addEventListener("click", function () { answerMove(false); });
    find(".renew").addEventListener("click", function () { answerMove(true); });
    var asks = find("dialog");
    find(".forget").addEventListener("click", function () { asks.showModal(); });
    find(".keep").addEventListener("click", function () { asks.close(); });
    find(".drop").addEventListener("click", function () {
      asks.close();
      begin(offered || state.sheet);
      show(true);
      find(".main").focus();
    });
    document.addEventListener("visibilitychange", stayAwake);
    window.addEventListener("storage", function (event) {
      if (event.key === KEY && read()) {
        take(read());
        show(true);
      } else {
        window.setTimeout(follow, 0);
      }
    });
    if (live) {
      live.scene.onChange(follow);
    }
  }

  function take(kept) {
    state = kept;
    plan = JSON.parse(kept.sheet);
  }

  document.addEventListener("DOMContentLoaded", function () {
    find(".all-shots").open = false;
    find(".todo").after(find(".ready"));
    attend();
    var kept = read();
    if (kept) {
      take(kept);
      show(true);
      stayAwake();
    }
    follow();
  });
})();
