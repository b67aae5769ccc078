/* Times the calls of a page; see ringbook.bench.PageBench. */
var sightLoaded = performance.now() - begun;

function bench() {
  var C = RingbookCalc;
  var begun = performance.now();
  var S = RingbookSightOf({});
  var made = performance.now() - begun;
  function timed(name, runs, work) {
    var times = [];
    for (var i = 0; i <= runs; i++) {
      var start = performance.now();
      work(i);
      times.push(performance.now() - start);
    }
    var warm = times.slice(1).sort(function (a, b) { return a - b; });
    return [name, times[0], warm[Math.floor(warm.length / 2)]];
  }
  function change(i, script) {
    script.change(["subject.height", "aim.step"], [(30 + i % 20) + " cm", (8 + i % 5) + "°"]);
  }
  var rows = [["load calc.js", loaded, loaded], ["load sight.js", sightLoaded, sightLoaded], ["run sight.js", made, made]];
  S.open(RingbookCourse.course);
  rows.push(timed("open the course", 5, function () { C.open(RingbookCourse.course); }));
  rows.push(timed("change, all numbers as text", 60, function (i) { change(i, C); C.texts(); }));
  rows.push(timed("one working", 60, function (i) { change(i, C); C.working("distance.standoff"); }));
  S.figures().forEach(function (name) {
    var runs = RingbookCourse.patchwise.indexOf(name) < 0 ? 30 : 3;
    rows.push(timed("change, " + name, runs, function (i) { change(i, S); S.figure(name, [], "a-"); }));
  });
  rows.push(timed("reference arithmetic", 9, function () {
    var x = 2;
    for (var i = 0; i < 10000000; i++) {
      x = Math.sqrt(x + i);
    }
    return x;
  }));
  return rows;
}
