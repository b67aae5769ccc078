package ringbook.ledger;

import java.util.LinkedHashMap;
import java.util.Map;
import ringbook.units.Num;
import ringbook.units.Whole;

/** The functions a formula may use: their number of arguments, value, typeset and spoken form. */
final class Functions {

  /** Value of a function; angles in radians. */
  @FunctionalInterface
  interface Value {
    double of(double[] arguments);
  }

  /**
   * One function.
   *
   * @param arguments how many it takes; 0 for two or more
   * @param value its value
   * @param tex typeset form with #1, #2 … for the arguments; for many, they are joined by commas as
   *     #1
   * @param text plain form, likewise
   * @param speech spoken form, likewise
   */
  record Form(int arguments, Value value, String tex, String text, String speech) {}

  private static final Map<String, Form> ALL = new LinkedHashMap<>();

  static {
    one("sqrt", a -> Math.sqrt(a[0]), "\\sqrt{#1}", "√(#1)", "the square root of #1");
    one("sin", a -> Num.sin(a[0]), "\\sin\\left(#1\\right)", "sin(#1)", "the sine of #1");
    one("cos", a -> Num.cos(a[0]), "\\cos\\left(#1\\right)", "cos(#1)", "the cosine of #1");
    one("tan", a -> Num.tan(a[0]), "\\tan\\left(#1\\right)", "tan(#1)", "the tangent of #1");
    one(
        "asin",
        a -> Num.asin(a[0]),
        "\\arcsin\\left(#1\\right)",
        "arcsin(#1)",
        "the arc sine of #1");
    one(
        "acos",
        a -> Num.acos(a[0]),
        "\\arccos\\left(#1\\right)",
        "arccos(#1)",
        "the arc cosine of #1");
    one(
        "atan",
        a -> Num.atan(a[0]),
        "\\arctan\\left(#1\\right)",
        "arctan(#1)",
        "the arc tangent of #1");
    one("exp", a -> Num.exp(a[0]), "e^{#1}", "exp(#1)", "e to the power #1");
    one("ln", a -> Num.log(a[0]), "\\ln\\left(#1\\right)", "ln(#1)", "the natural logarithm of #1");
    one(
        "log2",
        a -> Num.log2(a[0]),
        "\\log_{2}\\left(#1\\right)",
        "log₂(#1)",
        "the base two logarithm of #1");
    one("abs", a -> Math.abs(a[0]), "\\left|#1\\right|", "|#1|", "the size of #1");
    one("ceil", a -> Whole.up(a[0]), "\\left\\lceil #1\\right\\rceil", "⌈#1⌉", "#1, rounded up");
    one(
        "floor",
        a -> Whole.down(a[0]),
        "\\left\\lfloor #1\\right\\rfloor",
        "⌊#1⌋",
        "#1, rounded down");
    one(
        "round",
        a -> Num.round(a[0]),
        "\\mathrm{round}\\left(#1\\right)",
        "round(#1)",
        "#1, rounded");
    many("max", Functions::largest, "\\max\\left(#1\\right)", "max(#1)", "the larger of #1");
    many("min", Functions::smallest, "\\min\\left(#1\\right)", "min(#1)", "the smaller of #1");
    many(
        "both",
        Functions::smallest,
        "\\mathrm{all\\ of}\\left(#1\\right)",
        "all of (#1)",
        "all of #1");
    many(
        "either",
        Functions::largest,
        "\\mathrm{any\\ of}\\left(#1\\right)",
        "any of (#1)",
        "any of #1");
    ALL.put(
        "if",
        new Form(
            3,
            a -> a[0] != 0 ? a[1] : a[2],
            "\\begin{cases}#2\\quad&\\mathrm{if\\ }#1\\\\#3\\quad&\\mathrm{otherwise}\\end{cases}",
            "(#2 if #1, otherwise #3)",
            "#2 if #1, otherwise #3"));
  }

  private Functions() {}

  static Form form(String name) {
    return ALL.get(name);
  }

  /**
   * Makes sure that the function exists and takes that many arguments.
   *
   * @throws IllegalArgumentException otherwise
   */
  static void check(String name, int arguments) {
    Form form = ALL.get(name);
    if (form == null) {
      throw new IllegalArgumentException("no function is called '" + name + "'");
    }
    if (form.arguments() == 0 ? arguments < 2 : arguments != form.arguments()) {
      throw new IllegalArgumentException(
          "function '" + name + "' does not take " + arguments + " arguments");
    }
  }

  private static void one(String name, Value value, String tex, String text, String speech) {
    ALL.put(name, new Form(1, value, tex, text, speech));
  }

  private static void many(String name, Value value, String tex, String text, String speech) {
    ALL.put(name, new Form(0, value, tex, text, speech));
  }

  private static double largest(double[] values) {
    double largest = values[0];
    for (double value : values) {
      largest = Math.max(largest, value);
    }
    return largest;
  }

  private static double smallest(double[] values) {
    double smallest = values[0];
    for (double value : values) {
      smallest = Math.min(smallest, value);
    }
    return smallest;
  }
}
