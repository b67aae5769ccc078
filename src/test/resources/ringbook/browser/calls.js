/* Makes lists of calls to RingbookCalc, or to what RingbookSightOf makes if c.sight says so, and tells what they answer, as ringbook.browser.Calls does. */
var sight = null;

function answersTo(calls) {
  function text(answer) {
    if (answer === undefined || answer === null) {
      return "";
    }
    if (answer instanceof Float64Array) {
      var bits = new BigUint64Array(answer.buffer, answer.byteOffset, answer.length);
      return Array.from(bits, function (b, i) {
        return Number.isNaN(answer[i]) ? "none" : b.toString(16);
      }).join(" ");
    }
    return Array.isArray(answer) ? answer.join("\n") : String(answer);
  }
  function call(far, name, args) {
    try {
      sight = sight || RingbookSightOf({});
      return text((far ? sight : RingbookCalc)[name].apply(null, args));
    } catch (fault) {
      return "! " + fault.message;
    }
  }
  var out = [];
  calls.forEach(function (c) {
    if (c.args.indexOf("*") < 0) {
      out.push(c.name + ": " + call(c.sight, c.name, c.args));
    } else {
      RingbookCalc.keys().forEach(function (key) {
        out.push(c.name + " " + key + ": " + call(c.sight, c.name, c.args.map(function (a) {
          return a === "*" ? key : a;
        })));
      });
    }
  });
  return out.join("\n");
}

function digest(text) {
  var a = 0;
  var b = 0;
  for (var i = 0; i < text.length; i++) {
    a = (Math.imul(a, 31) + text.charCodeAt(i)) | 0;
    b = (Math.imul(b, 1000003) ^ text.charCodeAt(i)) | 0;
  }
  return a + " " + b;
}
