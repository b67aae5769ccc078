/* Steps that are brought into order: by the buttons of each, by the arrow keys on them, or by dragging
   the letter. RingbookRank.make gives {read, write} as RingbookControls has them. */
(function () {
  "use strict";
  var part = window.RingbookPage.part;

  function make(place, question, fill, changed) {
    var group = part(place, "fieldset", "rank");
    part(group, "legend", "", "Bring the steps into order");
    var list = part(group, "ol");
    question.options.forEach(function (xhtml, i) { item(String.fromCharCode(97 + i), xhtml); });
    settle();

    function item(letter, xhtml) {
      var li = part(list, "li");
      li.setAttribute("data-letter", letter);
      var handle = part(li, "b", "letter handle", letter);
      fill(part(li, "span"), xhtml);
      var both = part(li, "span", "moves");
      [["Up", -1], ["Down", 1]].forEach(function (way) {
        var button = window.RingbookPage.button(both, "plain", way[0], function () { move(li, way[1], button); });
        button.setAttribute("aria-label", way[0] + ": step " + letter);
        button.addEventListener("keydown", function (event) {
          var by = event.key === "ArrowUp" ? -1 : event.key === "ArrowDown" ? 1 : 0;
          if (by) {
            event.preventDefault();
            move(li, by, button);
          }
        });
      });
      drag(handle, li);
    }

    function items() {
      return Array.from(list.children);
    }

    /* The keyboard stays where it is even at either end. */
    function settle() {
      items().forEach(function (li, i, all) {
        var buttons = li.querySelectorAll("button");
        buttons[0].setAttribute("aria-disabled", String(i === 0));
        buttons[1].setAttribute("aria-disabled", String(i === all.length - 1));
      });
    }

    function move(li, by, button) {
      var other = by < 0 ? li.previousElementSibling : li.nextElementSibling;
      if (!other) {
        return;
      }
      list.insertBefore(by < 0 ? li : other, by < 0 ? other : li);
      moved(li);
      button.focus();
    }

    function moved(li) {
      settle();
      changed();
      window.RingbookPage.hear("Step " + li.getAttribute("data-letter") + " is now number " +
        (items().indexOf(li) + 1) + " of " + items().length + ".");
    }

    /* Moving the step takes the pointer from it, so the document listens. */
    function drag(handle, li) {
      handle.addEventListener("pointerdown", function (event) {
        var start = items().indexOf(li);
        event.preventDefault();
        li.classList.add("is-dragged");
        document.addEventListener("pointermove", follow);
        document.addEventListener("pointerup", end);
        document.addEventListener("pointercancel", end);

        function follow(to) {
          var over = items().find(function (other) {
            var box = other.getBoundingClientRect();
            return other !== li && to.clientY > box.top && to.clientY < box.bottom;
          });
          if (over) {
            var down = items().indexOf(over) > items().indexOf(li);
            list.insertBefore(li, down ? over.nextElementSibling : over);
          }
        }

        function end() {
          document.removeEventListener("pointermove", follow);
          document.removeEventListener("pointerup", end);
          document.removeEventListener("pointercancel", end);
          li.classList.remove("is-dragged");
          if (items().indexOf(li) !== start) {
            moved(li);
          }
        }
      });
    }

    return {
      read: function () {
        return items().map(function (li) { return li.getAttribute("data-letter"); }).join(" ");
      },
      write: function (answer) {
        var wanted = answer.toLowerCase().match(/[a-z]/g) || [];
        items().sort(function (a, b) {
          return place(a) - place(b);
        }).forEach(function (li) { list.appendChild(li); });
        settle();
        function place(li) {
          var letter = li.getAttribute("data-letter");
          var at = wanted.indexOf(letter);
          return at < 0 ? 100 + letter.charCodeAt(0) : at;
        }
      }
    };
  }

  window.RingbookRank = { make: make };
})();
