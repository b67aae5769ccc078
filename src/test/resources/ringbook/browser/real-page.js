/* Times what a reader waits for on a real page; see ringbook.bench.RealPages. */

/* The reader opens the scene card and looks for the field; the page has that long to get ready. */
function opensCard(key) {
  window.RingbookCard.open(key);
  return new Promise(function (done) { window.setTimeout(function () { done([]); }, 2500); });
}

/* The reader has written in a field of the scene card: milliseconds until the script is done with numbers,
   branches and the card; until they are painted; until the diagrams in view are painted; until all
   diagrams of the page are that are not counted patch by patch; until all. */
function changeTo(key, written) {
  return new Promise(function (done) {
    var plates = Array.from(document.querySelectorAll(".plate[data-figure]"));
    var inView = plates.filter(function (plate) {
      var box = plate.getBoundingClientRect();
      return box.height > 0 && box.bottom > 0 && box.top < window.innerHeight;
    });
    function isQuick(plate) {
      return window.RingbookCourse.patchwise.indexOf(plate.dataset.figure) < 0;
    }
    var times = [];
    var begun = performance.now();
    var input = document.getElementById("scene-" + key.replace(".", "-"));
    input.value = written;
    input.dispatchEvent(new Event("change"));
    times.push(performance.now() - begun);
    if (input.getAttribute("aria-invalid") === "true") {
      throw new Error(document.getElementById(input.id + "-wrong").textContent);
    }
    var waits = [[], inView.filter(isQuick), plates.filter(isQuick), plates];
    function look() {
      while (waits.length > 0 && !waits[0].some(function (plate) { return plate.getAttribute("aria-busy") === "true"; })) {
        waits.shift();
        times.push(performance.now() - begun);
      }
      if (waits.length === 0) {
        done(times);
      } else {
        afterFrame(look);
      }
    }
    afterFrame(look);
  });
}

/* The least that a change of this page can take: one word is written and painted. Milliseconds. */
function changeWord(text) {
  var begun = performance.now();
  document.querySelector("main p").lastChild.textContent = text;
  return new Promise(function (done) {
    afterFrame(function () { done([performance.now() - begun]); });
  });
}

/* One input is changed and only branches and numbers follow; done when they are painted. What the page
   does in the frames after would otherwise be counted before this is told. */
function changeNumbers(key, written) {
  window.RingbookLive.calc.change([key], [written]);
  window.RingbookParts.branches();
  window.RingbookNumbers.update();
  return new Promise(function (done) { afterFrame(function () { done([]); }); });
}

/* Once nothing is on its way any more. */
function settled() {
  return new Promise(function (done) {
    (function look() {
      if (document.querySelector(".plate[aria-busy='true']")) {
        window.setTimeout(look, 10);
      } else {
        window.setTimeout(function () { done([]); }, 50);
      }
    })();
  });
}

/* A fixed piece of arithmetic, to set the other times against. */
function arithmetic() {
  var begun = performance.now();
  var x = 2;
  for (var i = 0; i < 10000000; i++) {
    x = Math.sqrt(x + i);
  }
  return x > 0 ? [performance.now() - begun] : [];
}

/* Once the next frame is on its way to the screen, before anything else that waits. */
function afterFrame(then) {
  requestAnimationFrame(function () {
    scheduler.postTask(then, { priority: "user-blocking" });
  });
}

/* Milliseconds from the start of the navigation until the page's scripts have run, and until something is painted. */
function opened() {
  var navigation = performance.getEntriesByType("navigation")[0];
  var paint = performance.getEntriesByName("first-contentful-paint")[0];
  return [navigation.domContentLoadedEventEnd, paint ? paint.startTime : navigation.loadEventEnd];
}

/* Milliseconds until the worker has told what a plan comes to. */
function judged(exercise, plan) {
  var begun = performance.now();
  return window.RingbookLive.judge(exercise, "", plan, "bench-").then(function (told) {
    if (told.message) {
      throw new Error(told.message);
    }
    return performance.now() - begun;
  });
}
