/* What a reader has answered, for the whole site, in the browser's own storage and nowhere else: the
   global RingbookAnswers. An answer belongs to whose numbers it was worked out from: each name has its
   own answers, and so have the course's numbers (no name).

   name(), rename(text)   The reader's name; empty for the course's numbers.
   of(id)                 {answer, marked, credit, tries}: what is written; what of it was marked last and
                          what that was worth, as text; how often it was marked.
   write(id, answer)      Keeps what is written.
   mark(id, answer, credit)  Notes a mark.
   all()                  Those of the reader with an answer, by id.
   take(name, answers)    Answers {id: text} read from a sheet take the place of those kept.
   tally(ids)             {all, written, right} of these exercises.
   clear()                Forgets all of it, of all names.
   isKept()               False where the browser keeps nothing: all holds until the page is left.
   onChange(listener)     listener(what) after each change; what is "name", "answer" or "all". */
(function () {
  "use strict";
  var live = window.RingbookLive;
  var EMPTY = { name: "", people: {} };
  var listeners = [];
  var refused = !live.keeps();
  var held = load();

  function load() {
    var kept = live.kept("answered", EMPTY);
    var good = kept && typeof kept.name === "string" && kept.people && typeof kept.people === "object";
    return good ? kept : { name: "", people: {} };
  }

  /* Another window may have written meanwhile. */
  function refresh() {
    if (!refused) {
      held = load();
    }
  }

  function changed(what) {
    live.keep("answered", held);
    tell(what);
  }

  function tell(what) {
    listeners.forEach(function (listener) { listener(what); });
  }

  /* One writing of a name, as the answer sheets take it. */
  function proper(name) {
    return name.normalize("NFC").trim().replace(/\s+/g, " ");
  }

  /* Case and accents make no difference to the numbers, so none to whose answers they are. */
  function key(name) {
    return "*" + proper(name).normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase();
  }

  function mine() {
    var own = held.people[key(held.name)];
    if (!own) {
      own = held.people[key(held.name)] = {};
    }
    return own;
  }

  function of(id) {
    return mine()[id] || { answer: "", marked: "", credit: "", tries: 0 };
  }

  function change(id, part) {
    refresh();
    mine()[id] = Object.assign(of(id), part);
    changed("answer");
  }

  function isRight(one) {
    return one.credit === "1" && one.tries > 0 && one.marked === one.answer;
  }

  window.addEventListener("storage", function () {
    var before = JSON.stringify(held);
    refresh();
    if (JSON.stringify(held) !== before) {
      tell("all");
    }
  });

  window.RingbookAnswers = {
    name: function () { return held.name; },
    rename: function (text) {
      if (proper(text) !== held.name) {
        refresh();
        held.name = proper(text);
        changed("name");
      }
    },
    proper: proper,
    of: of,
    write: function (id, answer) {
      if (of(id).answer !== answer) {
        change(id, { answer: answer });
      }
    },
    mark: function (id, answer, credit) {
      change(id, { answer: answer, marked: answer, credit: credit, tries: of(id).tries + 1 });
    },
    isRight: function (id) { return isRight(of(id)); },
    all: function () {
      var own = mine();
      return Object.keys(own).filter(function (id) { return own[id].answer.trim(); })
        .reduce(function (all, id) { all[id] = own[id]; return all; }, {});
    },
    take: function (name, answers) {
      refresh();
      held.name = proper(name);
      Object.keys(answers).forEach(function (id) {
        mine()[id] = Object.assign(of(id), { answer: answers[id] });
      });
      changed("all");
    },
    tally: function (ids) {
      return {
        all: ids.length,
        written: ids.filter(function (id) { return of(id).answer.trim(); }).length,
        right: ids.filter(function (id) { return isRight(of(id)); }).length
      };
    },
    clear: function () {
      held = { name: "", people: {} };
      changed("all");
    },
    isKept: function () { return !refused; },
    onChange: function (listener) { listeners.push(listener); }
  };
})();
