/* What a reader states of the own scene, field by field, as written: also what cannot be used (yet).

   RingbookEntries.recall()              takes up what this browser keeps; after RingbookLive.ready
   RingbookEntries.fields()              the fields of the open scene, as Page.fields gives them
   RingbookEntries.own(key)              the field of the course's own scene
   RingbookEntries.written               what the reader states, by key
   RingbookEntries.faults                what is wrong with it, by key: {key, message, help}
   RingbookEntries.write(field, text)    states something; quiet where the reader is still typing
   RingbookEntries.put(all, last)        states all of it anew
   RingbookEntries.clear()               back to the course's own
   RingbookEntries.unitOf(field)         the unit a bare number is meant in
   RingbookEntries.shown(field, text)    a text of the course in the units that the reader likes
   RingbookEntries.inches(on)            whether lengths are told in inches; on sets it */
(function () {
  "use strict";
  var live = window.RingbookLive;
  var OBSTACLES = "place.obstacles";
  var UNITS = live.scene.UNITS;
  var SENSOR = ["kit.sensorWidth", "kit.sensorHeight"];
  /* Centimetres of the units of fields that are told in inches; those in millimetres stay. */
  var CENTIMETRES = { cm: 1, m: 100, "cm/s": 1 };
  var own = [];
  var good = {};           /* what of it holds */

  function fields() {
    var now = JSON.parse(live.calc.fields());
    if (own.length === 0) {
      var mine = live.scene.changes();
      live.calc.change([], []);
      own = JSON.parse(live.calc.fields());
      live.calc.change(mine.keys, mine.written);
    }
    return now;
  }

  function ownField(key) {
    return own.find(function (field) { return field.key === key; });
  }

  /* The kit first, then in the order of the fields. */
  function order() {
    var known = ["kit"].concat(own.map(function (field) { return field.key; }), OBSTACLES);
    return known.filter(function (key) { return entries.written[key] !== undefined; });
  }

  /* A sensor size follows from focal length and equivalent, unless it is stated as well. */
  function stated() {
    var all = {};
    order().forEach(function (key) { all[key] = entries.written[key]; });
    if (all["kit.equivalent"] && !all[SENSOR[0]] && !all[SENSOR[1]]) {
      SENSOR.forEach(function (key) { all[key] = ""; });
    }
    return all;
  }

  /* Takes over all that can be used; last is the field written last. Where an entry cannot be used, what
     stood there before holds. */
  function apply(last) {
    var all = stated();
    var left = Object.keys(all);
    entries.faults = {};
    for (;;) {
      var wrong = live.scene.set(left, left.map(function (key) { return all[key]; }));
      if (wrong.length === 0) {
        break;
      }
      wrong.forEach(function (fault) { entries.faults[fault.key] = entries.faults[fault.key] || fault; });
      var bad = wrong.map(function (fault) { return fault.key; }).filter(function (key) { return left.indexOf(key) >= 0; });
      if (bad.length === 0) {
        bad = left.indexOf(last) >= 0 ? [last] : left;
      }
      bad.forEach(function (key) {
        if (good[key] !== undefined && good[key] !== all[key]) {
          all[key] = good[key];
        } else {
          left = left.filter(function (other) { return other !== key; });
        }
      });
    }
    good = {};
    left.forEach(function (key) { good[key] = all[key]; });
    keepRest();
  }

  /* What could not be used is kept as well, so that nothing is lost on the next page. */
  function keepRest() {
    var rest = {};
    Object.keys(entries.written).forEach(function (key) {
      if (good[key] !== entries.written[key]) {
        rest[key] = entries.written[key];
      }
    });
    live.keep("card", rest);
  }

  function recall() {
    fields();
    var changes = live.scene.changes();
    entries.written = {};
    good = {};
    changes.keys.forEach(function (key, i) {
      entries.written[key] = changes.written[i];
      good[key] = changes.written[i];
    });
    if (entries.written["kit.equivalent"]) {
      SENSOR.forEach(function (key) {
        if (entries.written[key] === "") {
          delete entries.written[key];
        }
      });
    }
    var kept = live.kept("card", {}) || {};
    Object.keys(kept).forEach(function (key) { entries.written[key] = String(kept[key]); });
  }

  /* A bare number is meant in the unit that stands beside the field. */
  function withUnit(field, text) {
    if (!field.number || !/^[0-9.,]+$/.test(text)) {
      return text;
    }
    var unit = unitOf(field);
    return unit === "f/" ? "f/" + text : unit ? text + " " + unit : text;
  }

  function write(field, text) {
    var plain = withUnit(field, text.trim());
    var course = ownField(field.key).text;
    if ((!entries.written.kit || field.key === UNITS) && (plain === course || plain === shown(field, course))) {
      delete entries.written[field.key];
    } else {
      entries.written[field.key] = plain;
    }
    apply(field.key);
  }

  function put(all, last) {
    entries.written = all;
    apply(last);
  }

  /* The measures that the reader likes stay. */
  function clear() {
    recall();
    var units = entries.written[UNITS];
    entries.written = {};
    entries.faults = {};
    good = {};
    live.keep("card", {});
    if (units === undefined) {
      live.scene.reset();
    } else {
      entries.written[UNITS] = units;
      apply(UNITS);
    }
  }

  function convertible(field) {
    return inches() && CENTIMETRES[field.unit];
  }

  function unitOf(field) {
    return convertible(field) ? field.unit.replace(/^c?m/, "in") : field.unit;
  }

  /* Numbers that nobody wrote, such as a sensor size that follows from others, to five digits. */
  function shown(field, text) {
    var read = /^([0-9.]+)\s(mm|cm|m|cm\/s)$/.exec(text);
    if (!read) {
      return text;
    }
    if (!convertible(field)) {
      return Number(Number(read[1]).toPrecision(5)) + " " + read[2];
    }
    return Number((Number(read[1]) * CENTIMETRES[read[2]] / 2.54).toPrecision(4)) + " " + unitOf(field);
  }

  function inches(on) {
    if (on !== undefined) {
      write(ownField(UNITS), on ? "imperial" : "metric");
    }
    return (entries.written[UNITS] || ownField(UNITS).text) === "imperial";
  }

  var entries = {
    written: {},
    faults: {},
    recall: recall,
    fields: fields,
    own: ownField,
    all: function () { return own; },
    write: write,
    put: put,
    clear: clear,
    unitOf: unitOf,
    shown: shown,
    inches: inches
  };
  window.RingbookEntries = entries;
})();
