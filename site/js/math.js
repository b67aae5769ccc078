/* Formulas of the ledger as MathML: the few commands of TeX that its entries are written with.
   RingbookMath.line(tex, speech) is an element that is read out as speech; it throws where the
   formula has a command that is not known here, which a test would find. */
(function () {
  "use strict";
  var SPACE = "http://www.w3.org/1998/Math/MathML";
  var LETTERS = {
    alpha: "α", beta: "β", gamma: "γ", delta: "δ", Delta: "Δ", varepsilon: "ε", theta: "θ", lambda: "λ",
    mu: "µ", pi: "π", sigma: "σ", tau: "τ", varphi: "φ", Phi: "Φ", omega: "ω", perp: "⊥"
  };
  var SIGNS = {
    times: "×", cdot: "·", leq: "≤", geq: "≥", "%": "%", lceil: "⌈", rceil: "⌉", lfloor: "⌊", rfloor: "⌋",
    infty: "∞", circ: "∘"
  };
  var NAMES = ["min", "max", "sin", "cos", "tan", "arcsin", "arccos", "arctan", "ln", "log"];
  var GAPS = { ",": "0.17em", " ": "0.33em", quad: "1em" };

  function made(name, text) {
    var element = document.createElementNS(SPACE, name);
    if (text !== undefined) {
      element.textContent = text;
    }
    return element;
  }

  function row(parts) {
    if (parts.length === 1) {
      return parts[0];
    }
    var all = made("mrow");
    parts.forEach(function (part) { all.appendChild(part); });
    return all;
  }

  function tokens(tex) {
    return tex.match(/\\[A-Za-z]+|\\.|[0-9](?:[0-9.\u00a0\u202f]*[0-9])?|\s+|[\s\S]/g) || [];
  }

  function Reader(tex) {
    this.all = tokens(tex).filter(function (token) { return token.trim() !== ""; });
    this.at = 0;
  }

  Reader.prototype.peek = function () { return this.all[this.at]; };
  Reader.prototype.next = function () { return this.all[this.at++]; };

  /* What stands until one of the ends, which is taken. */
  Reader.prototype.until = function (ends) {
    var parts = [];
    while (this.at < this.all.length && ends.indexOf(this.peek()) < 0) {
      this.part(parts);
    }
    this.next();
    return row(parts);
  };

  Reader.prototype.group = function () {
    if (this.peek() !== "{") {
      var parts = [];
      this.part(parts);
      return row(parts);
    }
    this.next();
    return this.until(["}"]);
  };

  /* The plain text of a group. */
  Reader.prototype.words = function () {
    var text = "";
    this.next();
    while (this.peek() !== "}") {
      var token = this.next();
      var name = token.slice(1);
      text += token.charAt(0) !== "\\" ? token : LETTERS[name] || SIGNS[name] || " ";
    }
    this.next();
    return text;
  };

  Reader.prototype.part = function (parts) {
    var token = this.next();
    if (token === "^" || token === "_") {
      this.raised(token, parts);
    } else if (token === "{") {
      parts.push(this.until(["}"]));
    } else if (token.charAt(0) === "\\") {
      parts.push(this.command(token.slice(1)));
    } else if (/[0-9]/.test(token)) {
      parts.push(made("mn", token));
    } else if (/[A-Za-z]/.test(token)) {
      parts.push(made("mi", token));
    } else {
      parts.push(made("mo", token === "-" ? "−" : token === "'" ? "′" : token));
    }
  };

  Reader.prototype.raised = function (sign, parts) {
    var base = parts.pop() || made("mrow");
    var script = this.group();
    if (sign === "^" && script.textContent === "∘") {
      parts.push(row([base, made("mtext", "°")]));
      return;
    }
    var under = base.localName === "msub" && sign === "^";
    var both = made(under ? "msubsup" : sign === "^" ? "msup" : "msub");
    (under ? Array.from(base.children) : [base]).forEach(function (part) { both.appendChild(part); });
    both.appendChild(script);
    parts.push(both);
  };

  Reader.prototype.command = function (name) {
    if (LETTERS[name]) {
      return made("mi", LETTERS[name]);
    }
    if (SIGNS[name]) {
      return made("mo", SIGNS[name]);
    }
    if (NAMES.indexOf(name) >= 0) {
      return made("mi", name);
    }
    if (GAPS[name]) {
      var gap = made("mspace");
      gap.setAttribute("width", GAPS[name]);
      return gap;
    }
    if (name === "mathrm") {
      var words = this.words();
      var upright = made("mi", words);
      if (words.length === 1) {
        upright.setAttribute("mathvariant", "normal");
      }
      return upright;
    }
    if (name === "frac" || name === "sqrt") {
      var over = made(name === "frac" ? "mfrac" : "msqrt");
      over.appendChild(this.group());
      if (name === "frac") {
        over.appendChild(this.group());
      }
      return over;
    }
    if (name === "left") {
      return this.fenced();
    }
    if (name === "begin") {
      return this.cases();
    }
    throw new Error("a formula has '\\" + name + "', which pages cannot write");
  };

  Reader.prototype.fence = function () {
    var token = this.next();
    var sign = made("mo", token.charAt(0) === "\\" ? SIGNS[token.slice(1)] || "" : token === "." ? "" : token);
    sign.setAttribute("fence", "true");
    return sign;
  };

  Reader.prototype.fenced = function () {
    var open = this.fence();
    var inside = this.until(["\\right"]);
    return row([open, inside, this.fence()]);
  };

  Reader.prototype.cases = function () {
    this.words();
    var table = made("mtable");
    table.setAttribute("class", "cases");
    var ended = false;
    while (!ended) {
      var line = made("mtr");
      table.appendChild(line);
      var more = true;
      while (more) {
        var cell = made("mtd");
        var start = this.at;
        cell.appendChild(this.until(["&", "\\\\", "\\end"]));
        var end = this.all[this.at - 1];
        more = end === "&";
        ended = end === "\\end" || this.at > this.all.length || this.at === start;
        line.appendChild(cell);
      }
    }
    this.words();
    var brace = made("mo", "{");
    brace.setAttribute("fence", "true");
    return row([brace, table]);
  };

  function line(tex, speech) {
    var math = made("math");
    math.setAttribute("display", "block");
    math.setAttribute("aria-hidden", "true");
    math.appendChild(new Reader(tex).until([]));
    var said = document.createElement("span");
    said.className = "typeset";
    said.setAttribute("role", "img");
    said.setAttribute("aria-label", speech);
    said.appendChild(math);
    return said;
  }

  window.RingbookMath = { line: line };
})();
