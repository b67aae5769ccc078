/* The reader's own camera, object and room: the button that opens the scene card, the words beside it,
   and what has to happen on a page when the scene changes. RingbookOwnScene.say(text) tells readers
   and screen readers what happened, once. */
(function () {
  "use strict";
  var live = window.RingbookLive;
  /* Milliseconds after which most parts of a page have followed a change. */
  var SETTLED = 700;
  var box = null;
  var state = null;
  var back = null;
  var settling = 0;
  var shown = "";          /* the scene that the page was last worked out for */

  function part(parent, name, style, text) {
    var element = document.createElement(name);
    element.className = style;
    element.textContent = text || "";
    parent.appendChild(element);
    return element;
  }

  function isOwn() {
    return live.scene.isOwn();
  }

  function say(text) {
    var place = window.RingbookCard.isOpen() ? window.RingbookCard.status() : state;
    if (place !== state) {
      state.textContent = "";
    }
    if (place.textContent !== text) {
      place.textContent = text;
    }
    window.RingbookPage.hear(text);
  }

  /* The whole page, for the scene that is open: numbers at once, what is larger in the frames after. */
  function follow() {
    window.RingbookParts.branches();
    var changed = window.RingbookNumbers.update();
    window.RingbookPanel.dress();
    window.RingbookParts.follow();
    dress();
    /* New drawings, tables and workings may be wider than there is room. */
    window.clearTimeout(settling);
    settling = window.setTimeout(window.RingbookPage.markScrolling, SETTLED);
    return changed;
  }

  /* When the card is put away, a few words stay beside its button. */
  function rest() {
    state.textContent = isOwn() ? "" : "The pages show your own scene.";
  }

  function dress() {
    var own = isOwn();
    document.documentElement.toggleAttribute("data-own-scene", !own);
    back.hidden = own;
    document.querySelectorAll(".exercise").forEach(function (exercise) {
      var note = exercise.querySelector(":scope > .stays");
      if (own && note) {
        note.remove();
      } else if (!own && !note) {
        exercise.querySelector("h3").after(part(exercise, "p", "stays",
          "The numbers of this exercise stay as the course has them."));
      }
    });
  }

  /* A field that is left as it was taken, or holds what cannot be used, is no news. */
  function changed() {
    var count = follow();
    var before = shown;
    var left = leftOut();
    shown = JSON.stringify(live.scene.changes());
    if (shown !== before || left) {
      say((live.scene.changes().keys.length === 0
        ? "The page shows the course’s own numbers again."
        : isOwn() ? "The same numbers, with lengths told as you chose."
        : (count === 0 ? "No number" : window.RingbookPage.count(count, "number")) + " on this page changed.") + left);
    }
  }

  /* What of a scene from a link or an older course cannot be used. */
  function leftOut() {
    var dropped = live.scene.dropped();
    return dropped.length === 0 ? "" :
      " Not taken over: " + dropped.map(function (fault) { return fault.message; }).join("; ") + ".";
  }

  function lay() {
    box = document.querySelector(".mine");
    var open = part(box, "button", "take", "Your camera, object and room");
    open.type = "button";
    open.setAttribute("aria-haspopup", "dialog");
    open.addEventListener("click", function () { window.RingbookCard.open(); });
    state = part(box, "p", "state", "");
    window.RingbookPage.hear("");
    back = part(box, "button", "plain", "Back to the course’s own");
    back.type = "button";
    back.hidden = true;
    back.addEventListener("click", function () {
      live.ready(window.RingbookEntries.clear);
      open.focus();
    });
    box.hidden = false;
  }

  /* A reader who has stated a scene on another page finds this one worked out for it. */
  function begin() {
    lay();
    window.RingbookPanel.attend();
    live.scene.onChange(changed);
    shown = JSON.stringify(live.scene.changes());
    if (live.scene.changes().keys.length > 0) {
      state.textContent = "Working the page out for your own scene …";
      live.ready(function () {
        follow();
        shown = JSON.stringify(live.scene.changes());
        if (isOwn() && !leftOut()) {
          state.textContent = "";
          return;
        }
        say((isOwn() ? "The page shows the course’s own numbers." : "This page is worked out for your own scene.") + leftOut());
      }, function (message) { say("Your own scene could not be worked out: " + message); });
    }
  }

  window.RingbookOwnScene = { say: say, rest: rest };
  document.addEventListener("DOMContentLoaded", begin);
})();
