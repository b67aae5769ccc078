/* What was done in a shoot, as a list of marks, and what comes next; it knows nothing of the page.

   A mark is {what, step}: "done", "later" (skipped), "out" (left out for good), "again" (to be taken
   once more). Steps are "ready", "slate N" before run N, "shot N M", "slate later" and "slate again"
   before what is taken out of its turn, "slate end".

   RingbookLog.look(plan, marks)   {step, queue, run, stop, done, later, out, again, runLeft, left, taken,
                                   all}: the next step ("finished" when none is left), the photographs. */
(function () {
  "use strict";

  function order(plan) {
    var steps = ["ready"];
    plan.runs.forEach(function (run, r) {
      steps.push("slate " + r);
      run.stops.forEach(function (stop, s) { steps.push("shot " + r + " " + s); });
    });
    return steps;
  }

  function without(list, step) {
    return list.filter(function (other) { return other !== step; });
  }

  function replay(marks) {
    var at = { done: {}, later: [], out: [], again: [] };
    marks.forEach(function (mark) {
      var step = mark.step;
      if (mark.what === "again") {
        at.again = without(at.again, step).concat(step);
        delete at.done["slate end"];
        return;
      }
      var queued = at.later.length + at.again.length;
      var retake = mark.what !== "done" && at.again.indexOf(step) >= 0;
      at.later = without(at.later, step);
      at.again = without(at.again, step);
      if (mark.what === "done") {
        at.done[step] = true;
        at.out = without(at.out, step);
      } else if (!retake) {
        at[mark.what] = without(at[mark.what], step).concat(step);
      }
      /* Whatever comes out of its turn afterwards has a slate of its own. */
      if (queued > 0 && at.later.length === 0) {
        delete at.done["slate later"];
      }
      if (queued > 0 && at.again.length === 0) {
        delete at.done["slate again"];
      }
    });
    return at;
  }

  function nextStep(plan, at) {
    var step = order(plan).find(function (one) {
      return !at.done[one] && at.later.indexOf(one) < 0 && at.out.indexOf(one) < 0;
    });
    if (step) {
      return [step, ""];
    }
    var queue = at.later.length ? "later" : at.again.length ? "again" : "";
    if (queue) {
      return at.done["slate " + queue] ? [at[queue][0], queue] : ["slate " + queue, queue];
    }
    return [at.done["slate end"] ? "finished" : "slate end", ""];
  }

  function look(plan, marks) {
    var at = replay(marks);
    var next = nextStep(plan, at);
    at.step = next[0];
    at.queue = next[1];
    var parts = /^(shot|slate) (\d+)(?: (\d+))?$/.exec(at.step);
    at.run = parts ? Number(parts[2]) : -1;
    at.stop = parts && parts[3] ? Number(parts[3]) : -1;
    at.left = at.runLeft = at.taken = at.all = 0;
    plan.runs.forEach(function (run, r) {
      var photos = Number(run.repeats);
      run.stops.forEach(function (stop, s) {
        var step = "shot " + r + " " + s;
        var left = at.again.indexOf(step) >= 0 || !at.done[step] && at.out.indexOf(step) < 0;
        at.all += photos;
        at.taken += at.done[step] ? photos : 0;
        at.left += left ? photos : 0;
        at.runLeft += left && r === at.run ? photos : 0;
      });
    });
    return at;
  }

  window.RingbookLog = { look: look };
})();
