/* The small plan of one run, the door side below, and the shot table of a plan.

   RingbookPlan.draw(place, plan, at)   the run of the step at (see RingbookLog), its next station marked
   RingbookPlan.tables(place, plan)     all runs as tables to read */
(function () {
  "use strict";
  var SVG = "http://www.w3.org/2000/svg";
  var RING = 98;
  var HEADS = ["No.", "Clock", "Angle", "Lens height", "Along floor", "Distance", "Tilt", "In the way"];

  function shape(parent, name, attributes) {
    var element = document.createElementNS(SVG, name);
    Object.keys(attributes).forEach(function (key) { element.setAttribute(key, attributes[key]); });
    parent.appendChild(element);
    return element;
  }

  function draw(place, plan, at) {
    var run = plan.runs[at.run];
    var here = run.stops[Math.max(0, at.stop)];
    var farthest = Math.max(Number(plan.outline.width), Number(plan.outline.depth)) / 2;
    run.stops.forEach(function (stop) { farthest = Math.max(farthest, Math.hypot(stop.x, stop.y)); });
    var scale = RING / farthest;
    place.textContent = "";
    var svg = shape(place, "svg", { viewBox: "-150 -150 300 300", role: "img" });
    svg.setAttribute("aria-label", "Plan of " + run.name + ", the door side below: you stand at " + here.clock + ".");
    plan.obstacles.forEach(function (corners) {
      shape(svg, "polygon", { "class": "plan-block", points: corners.map(function (c) { return c.x * scale + "," + -c.y * scale; }).join(" ") });
    });
    shape(svg, "circle", { "class": "plan-face", r: 124 });
    [[12, 0, -1], [3, 1, 0], [6, 0, 1], [9, -1, 0]].forEach(function (hour) {
      shape(svg, "text", { "class": "plan-hour", x: 137 * hour[1], y: 137 * hour[2], dy: "0.36em" }).textContent = hour[0];
    });
    var half = [Number(plan.outline.width) / 2 * scale, Number(plan.outline.depth) / 2 * scale];
    if (plan.outline.round) {
      shape(svg, "circle", { "class": "plan-object", r: half[0] });
    } else {
      shape(svg, "rect", { "class": "plan-object", x: -half[0], y: -half[1], width: 2 * half[0], height: 2 * half[1] });
    }
    run.stops.forEach(function (stop, s) {
      var step = "shot " + at.run + " " + s;
      var state = at.later.indexOf(step) >= 0 || at.out.indexOf(step) >= 0 ? "is-later" : at.done[step] ? "is-done" : "";
      shape(svg, "circle", { "class": "plan-stop " + state, cx: stop.x * scale, cy: -stop.y * scale, r: 4 });
    });
    arrow(svg, here.x * scale, -here.y * scale);
  }

  /* A camera that points at the object. */
  function arrow(svg, x, y) {
    var turn = Math.hypot(x, y) < 1e-6 ? 0 : Math.atan2(-x, y) * 180 / Math.PI;
    shape(svg, "path", { "class": "plan-here", d: "M-13 16H13V-6H6L0 -22L-6 -6H-13Z", transform: "translate(" + x + " " + y + ") rotate(" + turn + ")" });
  }

  function row(parent, cell, texts) {
    var line = window.RingbookPage.part(parent, "tr");
    texts.forEach(function (text) {
      var made = window.RingbookPage.part(line, cell, "", text);
      if (cell === "th") {
        made.scope = "col";
      }
    });
  }

  function tables(place, plan) {
    var part = window.RingbookPage.part;
    place.textContent = "";
    plan.runs.forEach(function (run) {
      var section = part(place, "section");
      part(section, "h3", "", run.name + ": " + window.RingbookPage.count(run.photos, "photograph"));
      part(section, "p", "", run.why + " " + run.setup + " Aim at: " + run.aim + ".");
      var frame = part(section, "div", "table");
      frame.setAttribute("data-scrolls", run.name);
      var table = part(frame, "table");
      row(part(table, "thead"), "th", HEADS);
      var body = part(table, "tbody");
      run.stops.forEach(function (stop) {
        row(body, "td", [stop.number, stop.clock, stop.angle, stop.height, stop.floor, stop.away, stop.tilt, stop.inTheWay.join(", ")]);
      });
    });
    if (plan.runs.length === 0) {
      part(place, "p", "", plan.lack.join(" "));
    }
  }

  window.RingbookPlan = { draw: draw, tables: tables };
})();
