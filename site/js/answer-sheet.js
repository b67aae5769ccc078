/* Answer sheets as files, as the command that marks them reads and writes them:
   RingbookSheet.csv(name, answers) and .json(name, answers) write one, .read(text, name) reads one and
   gives {name, answers, left, fault}: whose it is, {id: answer}, how many lines were left out, and what
   is wrong with the whole of it, if anything. */
(function () {
  "use strict";
  var NOBODY = "no name";
  var COLUMNS = ["learner", "exercise", "answer", "numbers"];
  var FORMULA = /^\s*[=+\-@\t\r\n＝＋－＠]/;
  var NUMBER = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/;

  /* A spreadsheet must not take an answer for a formula. */
  function safe(text) {
    return FORMULA.test(text) && !NUMBER.test(text) ? "'" + text : text;
  }

  function plain(cell) {
    return cell.charAt(0) === "'" && safe(cell.slice(1)) === cell ? cell.slice(1) : cell;
  }

  function cell(text) {
    var guarded = safe(text);
    return /[,;\t"\r\n]/.test(guarded) ? "\"" + guarded.replace(/"/g, "\"\"") + "\"" : guarded;
  }

  function rows(name, answers) {
    return Object.keys(answers).map(function (id) {
      return [name || NOBODY, id, answers[id].answer, name ? "own" : "book"];
    });
  }

  /* The mark at the start lets spreadsheets see that it is UTF-8. */
  function csv(name, answers) {
    return "\ufeff" + [COLUMNS].concat(rows(name, answers)).map(function (row) {
      return row.map(cell).join(",") + "\r\n";
    }).join("");
  }

  function json(name, answers) {
    return JSON.stringify(rows(name, answers).map(function (row) {
      return COLUMNS.reduce(function (one, column, i) { one[column] = row[i]; return one; }, {});
    }), null, 1) + "\n";
  }

  /* Cells of all lines, by RFC 4180. */
  function table(text, delimiter) {
    var lines = [];
    var line = [];
    var now = "";
    var quoted = false;
    for (var i = 0; i <= text.length; i++) {
      var c = i < text.length ? text.charAt(i) : "\n";
      if (quoted && i < text.length) {
        if (c !== "\"") {
          now += c;
        } else if (text.charAt(i + 1) === "\"") {
          now += c;
          i++;
        } else {
          quoted = false;
        }
      } else if (c === "\"" && now.trim() === "") {
        now = "";
        quoted = true;
      } else if (c === delimiter || c === "\n") {
        line.push(plain(now.trim()));
        now = "";
        if (c === "\n") {
          lines.push(line);
          line = [];
        }
      } else {
        now += c;
      }
    }
    return lines.filter(function (cells) { return cells.some(Boolean); });
  }

  function fromTable(text) {
    var head = text.split(/\r?\n/)[0];
    var delimiter = [",", ";", "\t"].sort(function (a, b) {
      return head.split(b).length - head.split(a).length;
    })[0];
    var lines = table(text, delimiter);
    var names = (lines.shift() || []).map(function (name) { return name.toLowerCase(); });
    return lines.map(function (cells) {
      return COLUMNS.reduce(function (one, column) {
        one[column] = cells[names.indexOf(column)] || "";
        return one;
      }, {});
    });
  }

  function fromJson(text) {
    var list = JSON.parse(text);
    return (Array.isArray(list) ? list : [list]).map(function (one) {
      return COLUMNS.reduce(function (row, column) {
        row[column] = one && one[column] !== undefined && one[column] !== null ? String(one[column]) : "";
        return row;
      }, {});
    });
  }

  function found(name, answers, left, fault) {
    return { name: name, answers: answers, left: left, fault: fault };
  }

  function sound(row) {
    return row.learner && row.exercise && row.answer && row.answer.length <= 2000 && row.learner.length <= 100;
  }

  /* Whose numbers a line means: of nobody where they are those of the course. */
  function owner(row) {
    return row.numbers === "own" ? window.RingbookAnswers.proper(row.learner) : "";
  }

  function read(text, name) {
    var all;
    try {
      var body = text.replace(/^\ufeff/, "");
      all = /^\s*[[{]/.test(body) ? fromJson(body) : fromTable(body);
    } catch (broken) {
      return found("", {}, 0, "it is not in the form of an answer sheet");
    }
    var good = all.filter(sound);
    if (good.length === 0) {
      return found("", {}, 0, "no line of it has a learner, an exercise and an answer");
    }
    var people = good.map(owner).filter(function (one, i, list) { return list.indexOf(one) === i; });
    var whose = people.indexOf(name) >= 0 ? name : people[0];
    if (people.length > 1 && whose !== name) {
      return found("", {}, 0, "it has answers of several people: write your name as it stands there first");
    }
    var answers = {};
    var left = all.length;
    good.forEach(function (row) {
      if (owner(row) === whose && !Object.prototype.hasOwnProperty.call(answers, row.exercise)) {
        answers[row.exercise] = row.answer;
        left--;
      }
    });
    return found(whose, answers, left, "");
  }

  window.RingbookSheet = { csv: csv, json: json, read: read };
})();
