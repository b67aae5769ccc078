/* The one way from a page to the calculations, as the global RingbookLive. Nothing is fetched before
   it is asked for. Numbers and words are worked out in the page, by js/calc.js; figures and plans in
   workers, by js/sight.js.

   ready(then, failed)   Fetches js/calc.js and js/course.js, once, opens the course with the reader's
                         scene and calls then(), at once if all stands ready; where they cannot be had,
                         failed(message), if given.
   calc                  The calls of ringbook.browser.Page (RingbookCalc), for what takes milliseconds,
                         such as calc.evaluate(); null until ready. What a call changes holds for all:
                         change the scene by scene.set, never by calc.
   question(id, learner) Poses an exercise of any kind; a Promise of what Page.question describes, as an
                         object. Learner is "" for the numbers of the book.
   mark(id, learner, answer)
                         Marks an answer to it: a Promise of what Page.mark describes. Plans are marked
                         in the worker, which takes from a tenth of a second to seconds the first time.
   judge(id, learner, plan, idPrefix)
                         What a written plan would come to, for an exercise that asks for one: a Promise of
                         what SightPage.judge describes, worked out in the worker.
                         These three take up the exercise themselves, make things ready themselves, and
                         reject with an Error whose message can be shown. A Promise resolves to null where
                         the answer is out of date: the same was asked for the same exercise and learner
                         again while this one still waited. One that is being worked on is answered, so a slider may ask at will.
   ask(call, args, then, slot)
                         The same with a function instead of a Promise, for "question", "mark", "judge",
                         "plan", "figure" and "fieldSheet" of SightPage: then(answer) with JSON as text, or
                         then(null, message). Of calls with one slot (any text) that still wait, only the
                         latest is made and answered. A figure or field sheet is not answered once the scene has
                         changed.
   warm(exercise, learner)
                         Starts the workers, for a reader who is about to change the scene or, with an
                         exercise, to write a plan.
   scene.changes()       What the reader states otherwise than the course: {keys: [...], written: [...]},
                         as calc.change takes them; both empty for the course's own scene. Also before
                         ready, so that a page need not fetch anything for a reader without changes.
   scene.set(keys, written)
                         All changes anew, after ready. Gives what is wrong, a list of
                         {key, message, help}; then all stays as it was. If the list is empty, the
                         scene holds, is kept for all pages of the site, and the listeners are called.
   scene.reset()         Back to the course's scene; also before ready.
   scene.dropped()       After ready: what of the kept scene the course does not accept (any more) and
                         was therefore left out, as scene.set gives it.
   scene.onChange(listener)
                         listener() is called after each change of the open scene, whether it was made
                         here or in another window. Never before ready.
   scene.link()          The address of this page with the reader's scene in its fragment. A page that
                         is opened with such a fragment takes that scene over, and keeps it.
   scene.UNITS           The field that says in which measures lengths are told. It is stated like all
                         others, but no other scene for it.
   scene.isOwn()         Whether the reader's scene is the course's, whatever measures it is told in.
   kept(name, otherwise) What keep(name, value) stored for this site; values are JSON.
   keeps()               False where the browser keeps nothing, as some do for files from a disk or in a
                         private window: all holds until the page is left. */
(function () {
  "use strict";
  var FOLDER = document.currentScript.src.replace(/[^/]*$/, "");
  var SITE = FOLDER.replace(/js\/$/, "");
  var MARK = "#scene&";
  var EMPTY = { keys: [], written: [] };
  var UNITS = "aim.units";

  /* One store may serve several sites: all files on a disk share one. */
  function kept(name, otherwise) {
    try {
      var text = window.localStorage.getItem("ringbook." + name + " " + SITE);
      return text === null ? otherwise : JSON.parse(text);
    } catch (deniedOrBroken) {
      return otherwise;
    }
  }

  function keep(name, value) {
    try {
      window.localStorage.setItem("ringbook." + name + " " + SITE, JSON.stringify(value));
    } catch (denied) {
      /* It then holds for this page only. */
    }
  }

  function keeps() {
    try {
      window.localStorage.setItem("ringbook.probe", "1");
      window.localStorage.removeItem("ringbook.probe");
      return true;
    } catch (denied) {
      return false;
    }
  }

  var fetched = {};

  /* Fetches a script of ours once, however often it is asked for. */
  function fetchScript(name, then, failed) {
    if (!fetched[name]) {
      fetched[name] = new Promise(function (done, refused) {
        var script = document.createElement("script");
        script.src = FOLDER + name + ".js";
        script.onload = done;
        script.onerror = function () { refused(new Error("js/" + name + ".js could not be read")); };
        document.head.appendChild(script);
      });
    }
    fetched[name].then(function () { later(then); }, function (fault) {
      delete fetched[name];
      if (failed) {
        failed(fault.message);
      }
    });
  }

  /* Outside the promise, so that a fault of the page shows as what it is. */
  function later(then) {
    window.setTimeout(then, 0);
  }

  /* ---- the scene ---- */

  var changes = sound(kept("scene", EMPTY));
  var dropped = [];
  var listeners = [];

  function sound(scene) {
    var good = scene && Array.isArray(scene.keys) && Array.isArray(scene.written) &&
      scene.keys.length === scene.written.length &&
      scene.keys.concat(scene.written).every(function (text) { return typeof text === "string"; });
    return good ? { keys: scene.keys.slice(), written: scene.written.slice() } : EMPTY;
  }

  function fromFragment() {
    if (window.location.hash.indexOf(MARK) !== 0) {
      return;
    }
    var scene = { keys: [], written: [] };
    new URLSearchParams(window.location.hash.slice(MARK.length)).forEach(function (written, key) {
      scene.keys.push(key);
      scene.written.push(written);
    });
    window.history.replaceState(null, "", window.location.href.split("#")[0]);
    takeOver(scene);
    keep("scene", changes);
  }

  function link() {
    var stated = new URLSearchParams();
    changes.keys.forEach(function (key, i) { stated.append(key, changes.written[i]); });
    return window.location.href.split("#")[0] + MARK + stated;
  }

  /* A scene from elsewhere: what the course refuses of it is left out, one field after the other. */
  function takeOver(scene) {
    changes = sound(scene);
    dropped = [];
    if (!live.calc) {
      return;
    }
    var faults = JSON.parse(live.calc.change(changes.keys, changes.written));
    while (faults.length > 0) {
      dropped = dropped.concat(faults);
      changes = without(changes, faults.map(function (fault) { return fault.key; }));
      faults = JSON.parse(live.calc.change(changes.keys, changes.written));
    }
  }

  function without(scene, keys) {
    var left = { keys: [], written: [] };
    scene.keys.forEach(function (key, i) {
      if (keys.indexOf(key) < 0) {
        left.keys.push(key);
        left.written.push(scene.written[i]);
      }
    });
    return left.keys.length < scene.keys.length ? left : EMPTY;
  }

  function set(keys, written) {
    var faults = JSON.parse(live.calc.change(keys, written));
    if (faults.length === 0) {
      changes = { keys: keys.slice(), written: written.slice() };
      dropped = [];
      keep("scene", changes);
      tellListeners();
    }
    return faults;
  }

  function reset() {
    if (live.calc) {
      set([], []);
    } else {
      changes = EMPTY;
      keep("scene", EMPTY);
    }
  }

  function tellListeners() {
    lanes.forEach(function (lane) { lane.sceneChanged(); });
    if (live.calc) {
      listeners.forEach(function (listener) { listener(); });
    }
  }

  /* Another window, or this page before the reader walked on and came back. */
  function lookAgain() {
    var now = sound(kept("scene", EMPTY));
    if (JSON.stringify(now) !== JSON.stringify(changes)) {
      takeOver(now);
      tellListeners();
    }
  }

  window.addEventListener("storage", lookAgain);
  window.addEventListener("pageshow", function (event) {
    if (event.persisted) {
      lookAgain();
    }
  });
  window.addEventListener("hashchange", function () {
    if (window.location.hash.indexOf(MARK) === 0) {
      fromFragment();
      ready(tellListeners);
    }
  });

  /* ---- calls ---- */

  var taken = {};

  function ready(then, failed) {
    if (live.calc) {
      then();
      return;
    }
    fetchScript("course", function () {
      fetchScript("calc", function () {
        if (!live.calc) {
          window.RingbookCalc.open(window.RingbookCourse.course);
          live.calc = window.RingbookCalc;
          takeOver(changes);
          /* Told once, not on every page. */
          if (dropped.length > 0) {
            keep("scene", changes);
          }
        }
        then();
      }, failed);
    }, failed);
  }

  var ABOUT_SCENE = ["figure", "fieldSheet"];
  var ABOUT_EXERCISE = ["question", "mark", "judge"];

  /* The exercise a call is about, if it is about one. */
  function exerciseOf(call, args) {
    return ABOUT_EXERCISE.indexOf(call) >= 0 ? args[0] : null;
  }

  function asksForPlan(exercise) {
    return JSON.parse(window.RingbookCourse.exercises[exercise]).task.kind === "plan";
  }

  function take(id) {
    if (!taken[id]) {
      live.calc.take(window.RingbookCourse.exercises[id]);
      taken[id] = true;
    }
  }

  /* What comes of it is for nobody: the program is read by then, and knows the object. */
  function warm(exercise, learner) {
    ready(function () {
      var slow = Array.from(document.querySelectorAll(".plate[data-figure]")).filter(isPatchwise)[0];
      if (exercise) {
        warmUp(slowLane, "judge", [exercise, learner, "rings: 1 at 0°", "warm-"]);
      } else {
        warmUp(quickLane, "figures", []);
        warmUp(slowLane, slow ? "figure" : "figures", slow ? [slow.dataset.figure, [], "warm-"] : []);
      }
    });
  }

  function isPatchwise(plate) {
    return window.RingbookCourse.patchwise.indexOf(plate.dataset.figure) >= 0;
  }

  function warmUp(lane, call, args) {
    var name = lanes.indexOf(lane) + " " + call + " " + args[0];
    if (!warmed[name]) {
      warmed[name] = true;
      lane.add({ call: call, args: args, then: function () {}, stays: true, scene: changes });
    }
  }

  var warmed = {};

  /* dropped(), if given, is called instead of then where the answer is not wanted any more. */
  function ask(call, args, then, slot, dropped) {
    ready(function () {
      var job = { call: call, args: args, then: then, slot: slot, dropped: dropped, scene: changes };
      if (exerciseOf(call, args) !== null && !window.RingbookCourse.exercises[args[0]]) {
        then(null, "the course has no exercise '" + args[0] + "'");
      } else if (exerciseOf(call, args) === null) {
        (call === "figure" && window.RingbookCourse.patchwise.indexOf(args[0]) >= 0 ? slowLane : quickLane).add(job);
      } else if (call === "judge" || asksForPlan(args[0])) {
        slowLane.add(job);
      } else {
        here(call, args, then);
      }
    }, function (message) { then(null, message); });
  }

  function here(call, args, then) {
    var answer;
    try {
      take(args[0]);
      answer = live.calc[call].apply(null, args);
    } catch (fault) {
      then(null, fault.message);
      return;
    }
    then(answer);
  }

  function promised(call, args) {
    return new Promise(function (done, refused) {
      ask(call, args, function (answer, fault) {
        if (answer === null) {
          refused(new Error(fault));
        } else {
          done(JSON.parse(answer));
        }
      }, call + " " + JSON.stringify(args.slice(0, 2)), function () { done(null); });
    });
  }

  /* ---- workers ---- */

  /* The worker's own part; it is handed over as text. A job is {course, keys, written, exercise, call,
     args}. Course and exercise are texts, given only where the worker does not have them yet. */
  function answering(calc) {
    var scene = "";
    return function (job) {
      if (job.course) {
        calc.open(job.course);
        scene = "";
      }
      if (job.exercise) {
        calc.take(job.exercise);
      }
      var wanted = JSON.stringify([job.keys, job.written]);
      if (wanted !== scene) {
        calc.change(job.keys, job.written);
        scene = wanted;
      }
      return calc[job.call].apply(null, job.args);
    };
  }

  function attending(self, answer) {
    self.postMessage("here");
    self.onmessage = function (event) {
      try {
        self.postMessage({ answer: answer(event.data) });
      } catch (fault) {
        self.postMessage({ fault: fault.message });
      }
    };
  }

  /* Opens something that does one job after the other: opened(desk) with desk.order(job, told), which
     calls told({answer}) or told({fault}), and desk.close() unless it cannot be closed. The worker's
     program is text: from a disk, a worker may not load a file. */
  function openDesk(opened) {
    var calcOf = window.RingbookSightOf;
    var worker = null;
    var isOpen = false;
    var tell = null;

    function inThisPage() {
      var answer = answering(calcOf({}));
      opened({
        order: function (job, told) {
          later(function () {
            try {
              told({ answer: answer(job) });
            } catch (fault) {
              told({ fault: fault.message });
            }
          });
        },
        close: null
      });
    }

    try {
      var program = calcOf + "\n(" + attending + ")(self, (" + answering + ")(" + calcOf.name + "({})));";
      var address = URL.createObjectURL(new Blob([program], { type: "text/javascript" }));
      worker = new Worker(address);
    } catch (refused) {
      inThisPage();
      return;
    }
    worker.onerror = function (event) {
      if (!isOpen) {
        worker.terminate();
        inThisPage();
      } else if (tell) {
        tell({ fault: event.message });
      }
    };
    worker.onmessage = function (event) {
      if (!isOpen) {
        isOpen = true;
        URL.revokeObjectURL(address);
        opened({
          order: function (job, told) {
            tell = told;
            worker.postMessage(job);
          },
          close: function () { worker.terminate(); }
        });
      } else {
        tell(event.data);
      }
    };
  }

  /* Jobs that wait for one worker, in the order in which they came; readers' answers go first. Drawings let
     those of another lane begin before them, if one is named. */
  function Lane(before) {
    var queue = [];
    var running = null;
    var desk = null;
    var opening = false;
    var takenThere = {};
    var openThere = false;

    function hangsOnScene(job) {
      return !job.stays && ABOUT_SCENE.indexOf(job.call) >= 0;
    }

    function add(job) {
      if (job.slot !== undefined) {
        dropWhere(function (waiting) { return waiting.slot === job.slot; });
      }
      var first = hangsOnScene(job) ? queue.length : queue.findIndex(hangsOnScene);
      queue.splice(first < 0 ? queue.length : first, 0, job);
      job.since = performance.now();
      if (desk) {
        next();
      } else if (!opening) {
        opening = true;
        fetchScript("sight", open, giveUp);
      }
    }

    function open() {
      opening = true;
      openDesk(function (opened) {
        opening = false;
        desk = opened;
        takenThere = {};
        openThere = false;
        next();
      });
    }

    function giveUp(message) {
      var all = queue;
      queue = [];
      opening = false;
      all.forEach(function (job) { job.then(null, message); });
    }

    function next() {
      if (!desk || running || queue.length === 0) {
        return;
      }
      if (before && hangsOnScene(queue[0]) && before.isBusy() && performance.now() - queue[0].since < HEAD_START) {
        window.setTimeout(next, 10);
        return;
      }
      var job = queue.shift();
      running = job;
      var exercise = exerciseOf(job.call, job.args);
      var first = exercise !== null && !takenThere[exercise];
      var order = {
        course: openThere ? "" : window.RingbookCourse.course,
        exercise: first ? window.RingbookCourse.exercises[exercise] : "",
        keys: job.scene.keys,
        written: job.scene.written,
        call: job.call,
        args: job.args
      };
      openThere = true;
      if (first) {
        takenThere[exercise] = true;
      }
      desk.order(order, function (told) {
        if (running !== job) {
          return;
        }
        running = null;
        later(next);
        if (job.isVoid) {
          drop(job);
        } else if (told.fault === undefined) {
          job.then(told.answer);
        } else {
          job.then(null, told.fault);
        }
      });
    }

    function drop(job) {
      if (job.dropped) {
        job.dropped();
      }
    }

    function dropWhere(isOld) {
      queue.filter(isOld).forEach(drop);
      queue = queue.filter(function (job) { return !isOld(job); });
    }

    /* What is drawn for a scene that is gone only holds up what is drawn for the new one. */
    function sceneChanged() {
      dropWhere(hangsOnScene);
      if (running && hangsOnScene(running)) {
        running.isVoid = true;
        if (desk.close) {
          var job = running;
          window.setTimeout(function () {
            if (running === job) {
              desk.close();
              desk = null;
              running = null;
              drop(job);
              open();
            }
          }, PATIENCE);
        }
      }
    }

    return { add: add, sceneChanged: sceneChanged, isBusy: function () { return queue.length > 0 || running !== null; } };
  }

  /* Milliseconds that a job for an old scene may still take: about what another worker takes to start. */
  var PATIENCE = 150;

  /* Milliseconds for which slow drawings let quick ones have the processor, of which there may be few. */
  var HEAD_START = 50;

  /* Two, so that nothing quick waits behind what looks at the object patch by patch. */
  var quickLane = Lane(null);
  var slowLane = Lane(quickLane);
  var lanes = [quickLane, slowLane];

  var live = {
    calc: null,
    ready: ready,
    question: function (id, learner) { return promised("question", [id, learner]); },
    mark: function (id, learner, answer) { return promised("mark", [id, learner, answer]); },
    judge: function (id, learner, plan, prefix) { return promised("judge", [id, learner, plan, prefix]); },
    ask: ask,
    warm: warm,
    kept: kept,
    keep: keep,
    keeps: keeps,
    scene: {
      UNITS: UNITS,
      isOwn: function () { return changes.keys.every(function (key) { return key === UNITS; }); },
      changes: function () { return sound(changes); },
      set: set,
      reset: reset,
      dropped: function () { return dropped.slice(); },
      onChange: function (listener) { listeners.push(listener); },
      link: link
    }
  };
  window.RingbookLive = live;
  fromFragment();
})();
