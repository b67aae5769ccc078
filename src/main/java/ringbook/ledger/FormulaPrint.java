package ringbook.ledger;

import java.util.List;
import java.util.function.Function;
import ringbook.units.Measure;
import ringbook.units.Unit;

/** Writes a formula in one of three styles, with no more brackets than it needs. */
final class FormulaPrint implements Expression.Cases<String> {

  static final int TEX = 0;
  static final int TEXT = 1;
  static final int SPEECH = 2;

  private static final int SUM = 1;
  private static final int PRODUCT = 2;
  private static final int POWER = 3;
  private static final int ATOM = 4;

  private final int style;
  private final Function<String, String> entry;
  private final String times;

  FormulaPrint(int style, Function<String, String> entry, String times) {
    this.style = style;
    this.entry = entry;
    this.times = times;
  }

  String print(Expression whole) {
    return whole.show(this);
  }

  @Override
  public String number(String text, double value) {
    if (text.equals("pi")) {
      return pick("\\pi", "π", "pi");
    }
    return text.equals("inf") ? pick("\\infty", "∞", "infinity") : text;
  }

  @Override
  public String literal(Measure measure) {
    return MeasurePrint.of(measure, style);
  }

  @Override
  public String key(String key) {
    return entry.apply(key);
  }

  @Override
  public String negative(Expression inner) {
    return pick("-", "−", "minus ") + within(inner, PRODUCT);
  }

  @Override
  public String binary(char operator, Expression left, Expression right) {
    return switch (operator) {
      case '+' -> within(left, SUM) + pick("+", " + ", " plus ") + added(right);
      case '-' -> within(left, SUM) + pick("-", " − ", " minus ") + within(right, PRODUCT);
      case '*' -> within(left, PRODUCT) + times(right) + within(right, PRODUCT);
      case '/' -> fraction(left, right);
      default -> power(left, right);
    };
  }

  /** No sign may stand behind another: what is added stands in brackets if it is below zero. */
  private String added(Expression right) {
    return within(right, isBelowZero(right.show(this)) ? PRODUCT : SUM);
  }

  private boolean isBelowZero(String text) {
    return style != SPEECH && (text.startsWith("-") || text.startsWith("−"));
  }

  @Override
  public String comparison(String operator, Expression left, Expression right) {
    String sign =
        switch (operator) {
          case "<=" -> pick("\\leq ", " ≤ ", " is at most ");
          case ">=" -> pick("\\geq ", " ≥ ", " is at least ");
          case "<" -> pick("<", " < ", " is below ");
          default -> pick(">", " > ", " is above ");
        };
    return left.show(this) + sign + right.show(this);
  }

  @Override
  public String call(String function, List<Expression> arguments) {
    Functions.Form form = Functions.form(function);
    String pattern = pick(form.tex(), form.text(), form.speech());
    if (form.arguments() == 0) {
      return pattern.replace("#1", joined(arguments));
    }
    String out = pattern;
    for (int i = 0; i < arguments.size(); i++) {
      out = out.replace("#" + (i + 1), arguments.get(i).show(this));
    }
    return out;
  }

  /** The sign between factors; a number must not stand behind another without one. */
  private String times(Expression right) {
    boolean number = right instanceof Expression.Constant || right instanceof Expression.Literal;
    return style == TEX && number ? "\\cdot " : times;
  }

  private String fraction(Expression left, Expression right) {
    if (style == TEX) {
      return "\\frac{" + left.show(this) + "}{" + right.show(this) + "}";
    }
    return within(left, PRODUCT) + pick("", " / ", " over ") + within(right, POWER);
  }

  private String power(Expression left, Expression right) {
    boolean square = right instanceof Expression.Constant two && two.value() == 2;
    if (style == SPEECH) {
      return within(left, ATOM) + (square ? " squared" : " to the power " + within(right, ATOM));
    }
    if (style == TEXT && square) {
      return within(left, ATOM) + "²";
    }
    return within(left, ATOM)
        + "^"
        + (style == TEX ? "{" + right.show(this) + "}" : within(right, ATOM));
  }

  private String joined(List<Expression> arguments) {
    StringBuilder all = new StringBuilder();
    for (Expression argument : arguments) {
      if (all.length() > 0) {
        all.append(pick(",\\ ", ", ", " and "));
      }
      all.append(argument.show(this));
    }
    return all.toString();
  }

  /** The node, in brackets if it binds less than {@code least}. */
  private String within(Expression node, int least) {
    String text = node.show(this);
    if (binding(node, text) >= least) {
      return text;
    }
    return pick("\\left(" + text + "\\right)", "(" + text + ")", "the whole of " + text + ",");
  }

  private int binding(Expression node, String text) {
    if (node instanceof Expression.Binary binary) {
      return switch (binary.operator()) {
        case '+', '-' -> SUM;
        case '*' -> PRODUCT;
        case '/' -> style == TEX ? POWER : PRODUCT;
        default -> POWER;
      };
    }
    if (node instanceof Expression.Comparison) {
      return 0;
    }
    if (isBelowZero(text)) {
      return SUM;
    }
    // A short time ("1/125 s") is itself a fraction.
    if (node instanceof Expression.Key && text.startsWith("1/")) {
      return PRODUCT;
    }
    // A number put in with its unit ("4.8 mm") must be bracketed before it is raised to a power.
    boolean spaced = style != SPEECH && (text.contains("\u00a0") || text.contains("\\,"));
    return node instanceof Expression.Negative ? SUM : spaced ? POWER : ATOM;
  }

  private String pick(String tex, String text, String speech) {
    return style == TEX ? tex : style == TEXT ? text : speech;
  }

  /** Numbers with units in the three styles. */
  static final class MeasurePrint {
    private MeasurePrint() {}

    static String of(Measure measure, int style) {
      return of(ringbook.units.Numbers.significant(measure.number(), 6), measure.unit(), style);
    }

    /** A length as people write it, such as {@code 3 ft 2 1/2 in}, in TeX. */
    static String tex(String length) {
      int gap = length.indexOf('\u00a0');
      if (gap >= 0) {
        return tex(length.substring(0, gap)) + "\\," + tex(length.substring(gap + 1));
      }
      int over = length.indexOf('/');
      if (over >= 0) {
        return "\\frac{" + length.substring(0, over) + "}{" + length.substring(over + 1) + "}";
      }
      boolean letters = length.charAt(length.length() - 1) > '9';
      return letters ? "\\mathrm{" + length + "}" : length;
    }

    static String of(String number, Unit unit, int style) {
      if (style != TEX) {
        return unit == Unit.F_STOP || unit.symbol().isEmpty()
            ? number
            : number + (unit == Unit.DEGREE ? "" : "\u00a0") + unit.symbol();
      }
      String plain = number.equals("∞") ? "\\infty" : number;
      if (unit == Unit.ANSWER) {
        return "\\mathrm{" + plain + "}";
      }
      if (unit == Unit.F_STOP || unit.symbol().isEmpty()) {
        return plain;
      }
      if (unit == Unit.DEGREE) {
        return plain + "^{\\circ}";
      }
      return plain + "\\,\\mathrm{" + unit.symbol().replace("µ", "\\mu ").replace("%", "\\%") + "}";
    }
  }
}
