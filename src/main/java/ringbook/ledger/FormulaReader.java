package ringbook.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.units.Decimal;
import ringbook.units.Measure;
import ringbook.units.Unit;

/** Reads the notation described at {@link Formula}; faults are the programmer's and throw. */
final class FormulaReader {

  private static final Map<String, Unit> LITERAL_UNITS =
      Map.of(
          "deg", Unit.DEGREE,
          "um", Unit.MICROMETRE,
          "mm", Unit.MILLIMETRE,
          "cm", Unit.CENTIMETRE,
          "m", Unit.METRE,
          "s", Unit.SECOND,
          "lx", Unit.LUX);

  private final String text;
  private int at;

  FormulaReader(String text) {
    this.text = text;
  }

  Expression read() {
    Expression whole = comparison();
    skipBlanks();
    if (at < text.length()) {
      throw fault("nothing more was expected");
    }
    return whole;
  }

  private Expression comparison() {
    Expression left = sum();
    skipBlanks();
    for (String operator : List.of("<=", ">=", "<", ">")) {
      if (text.startsWith(operator, at)) {
        at += operator.length();
        return new Expression.Comparison(operator, left, sum());
      }
    }
    return left;
  }

  private Expression sum() {
    Expression left = product();
    while (next('+') || next('-')) {
      char operator = text.charAt(at++);
      left = new Expression.Binary(operator, left, product());
    }
    return left;
  }

  private Expression product() {
    Expression left = power();
    while (next('*') || next('/')) {
      char operator = text.charAt(at++);
      left = new Expression.Binary(operator, left, power());
    }
    return left;
  }

  private Expression power() {
    if (next('-')) {
      at++;
      return new Expression.Negative(power());
    }
    Expression base = primary();
    if (next('^')) {
      at++;
      return new Expression.Binary('^', base, power());
    }
    return base;
  }

  private Expression primary() {
    skipBlanks();
    if (at >= text.length()) {
      throw fault("a value was expected");
    }
    char c = text.charAt(at);
    if (c == '(') {
      at++;
      Expression inner = comparison();
      expect(')');
      return inner;
    }
    return c >= '0' && c <= '9' ? number() : name();
  }

  private Expression number() {
    int from = at;
    while (at < text.length() && (isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    String digits = text.substring(from, at);
    double value = Decimal.parse(digits).orElseThrow(() -> fault("'" + digits + "' is no number"));
    from = at;
    while (at < text.length() && isLetter(text.charAt(at))) {
      at++;
    }
    if (at == from) {
      return new Expression.Constant(digits, value);
    }
    Unit unit = LITERAL_UNITS.get(text.substring(from, at));
    if (unit == null) {
      throw fault("no unit is written '" + text.substring(from, at) + "' here");
    }
    return new Expression.Literal(new Measure(value, unit));
  }

  private Expression name() {
    int from = at;
    while (at < text.length()
        && (isLetter(text.charAt(at)) || isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    String name = text.substring(from, at);
    if (name.isEmpty()) {
      throw fault("a value was expected");
    }
    if (name.indexOf('.') > 0) {
      return new Expression.Key(name);
    }
    if (name.equals("pi")) {
      return new Expression.Constant("pi", Math.PI);
    }
    if (name.equals("inf")) {
      return new Expression.Constant("inf", Double.POSITIVE_INFINITY);
    }
    return call(name);
  }

  private Expression call(String function) {
    expect('(');
    List<Expression> arguments = new ArrayList<>();
    arguments.add(comparison());
    while (next(',')) {
      at++;
      arguments.add(comparison());
    }
    expect(')');
    Functions.check(function, arguments.size());
    return new Expression.Call(function, arguments);
  }

  private boolean next(char c) {
    skipBlanks();
    return at < text.length() && text.charAt(at) == c;
  }

  private void expect(char c) {
    if (!next(c)) {
      throw fault("'" + c + "' was expected");
    }
    at++;
  }

  private void skipBlanks() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  }

  private IllegalArgumentException fault(String message) {
    return new IllegalArgumentException(
        "formula \"" + text + "\", character " + (at + 1) + ": " + message);
  }
}
