/* What a page does beyond being read: remembers light or dark, brings the current station of the
   strip into view, opens an entry that is linked to, and makes wide parts reachable by keyboard. */
(function () {
  "use strict";
  var KEY = "ringbook.page";
  var root = document.documentElement;
  /* Readers whose system sets all colours have drawings in the same ones, light or dark as that is. */
  var OWN_COLOURS = window.matchMedia("(forced-colors: active)");

  function remembered() {
    try {
      return window.localStorage.getItem(KEY);
    } catch (denied) {
      return null;
    }
  }

  function remember(look) {
    try {
      window.localStorage.setItem(KEY, look);
    } catch (denied) {
      /* The choice then holds for this page only. */
    }
  }

  function isDark() {
    var look = root.getAttribute("data-page");
    return look ? look === "dark" : window.matchMedia("(prefers-color-scheme: dark)").matches;
  }

  function show(look) {
    if (!OWN_COLOURS.matches && (look === "dark" || look === "light")) {
      root.setAttribute("data-page", look);
    }
  }

  show(remembered());

  function hangUpLamp() {
    var lamp = document.querySelector(".lamp");
    function name() {
      lamp.textContent = isDark() ? "Light page" : "Dark page";
    }
    lamp.addEventListener("click", function () {
      var look = isDark() ? "light" : "dark";
      show(look);
      remember(look);
      name();
    });
    name();
    lamp.hidden = OWN_COLOURS.matches;
  }

  function bringStationIntoView() {
    var strip = document.querySelector(".strip");
    var here = strip && strip.querySelector(".is-here");
    if (here) {
      strip.scrollLeft = here.offsetLeft - (strip.clientWidth - here.offsetWidth) / 2;
    }
  }

  /* A part that scrolls by itself must take the focus, but only where it does scroll. */
  function markScrolling() {
    document.querySelectorAll(".table, .drawing, .working, .formula, pre").forEach(function (part) {
      if (part.scrollWidth > part.clientWidth) {
        var name = part.getAttribute("data-scrolls") || (part.matches(".table") ? "Table" : "Wide part");
        part.setAttribute("tabindex", "0");
        part.setAttribute("role", "group");
        part.setAttribute("aria-label", name + ", scrolls sideways");
      } else if (part.hasAttribute("tabindex")) {
        part.removeAttribute("tabindex");
        part.removeAttribute("role");
        part.removeAttribute("aria-label");
      }
    });
  }

  /* For all scripts of the page: a new element at the end of another, and a button. */
  function part(parent, name, style, text) {
    var element = document.createElement(name);
    if (style) {
      element.className = style;
    }
    if (text) {
      element.textContent = text;
    }
    parent.appendChild(element);
    return element;
  }

  function button(parent, style, text, pressed) {
    var made = part(parent, "button", style, text);
    made.type = "button";
    made.addEventListener("click", pressed);
    return made;
  }

  /* A number of things in words: "1 answer", "2 answers". */
  function count(number, noun) {
    return number + " " + noun + (number === 1 ? "" : "s");
  }

  var heard = null;
  var hearing = 0;
  var QUIET = 200;

  /* Tells screen readers what happened: the only place for it on a page, so that nothing is said twice
     and of what follows in quick succession, as under a slider, only the last. "" makes it ready. */
  function hear(text) {
    if (!heard) {
      heard = part(document.body, "p", "heard");
      heard.setAttribute("role", "status");
    }
    window.clearTimeout(hearing);
    hearing = window.setTimeout(function () {
      heard.textContent = text && heard.textContent === text ? text + "\u00a0" : text;
    }, QUIET);
  }

  /* While a dialog shuts the rest of the page off, it is heard there; in null, in the page again. */
  function hearIn(dialog) {
    hear("");
    (dialog || document.body).appendChild(heard);
  }

  window.RingbookPage = { part: part, button: button, count: count, hear: hear, hearIn: hearIn, markScrolling: markScrolling };

  document.addEventListener("DOMContentLoaded", function () {
    hangUpLamp();
    bringStationIntoView();
    markScrolling();
    window.addEventListener("resize", markScrolling);
    document.querySelectorAll("details").forEach(function (box) {
      box.addEventListener("toggle", markScrolling);
    });
  });
})();
