package ringbook.values;

import ringbook.units.Words;

/** What the operators and functions of expressions do. */
final class Operators {

  private final String expression;

  /** For messages about {@code expression}. */
  Operators(String expression) {
    this.expression = expression;
  }

  /** The number; a quantity counts in the unit it is printed in. */
  double number(Operand operand) throws ExpressionFault {
    if (operand instanceof Operand.Plain plain) {
      return plain.number();
    }
    if (operand instanceof Operand.OfQuantity quantity && !quantity.isAnswer()) {
      return quantity.quantity().unit().fromSi(quantity.si());
    }
    throw ExpressionFault.unworkable(expression);
  }

  boolean flag(Operand operand) throws ExpressionFault {
    if (operand instanceof Operand.Flag flag) {
      return flag.yes();
    }
    if (operand instanceof Operand.OfQuantity quantity && quantity.isAnswer()) {
      return quantity.si() != 0;
    }
    throw ExpressionFault.unworkable(expression);
  }

  String text(Operand operand) throws ExpressionFault {
    if (operand instanceof Operand.Words words) {
      return words.text();
    }
    if (operand instanceof Operand.Shown shown) {
      return shown.text();
    }
    if (operand instanceof Operand.OfQuantity quantity && !quantity.isAnswer()) {
      return quantity.shown().text();
    }
    if (operand instanceof Operand.Plain plain) {
      return PlainNumbers.text(plain.number());
    }
    throw ExpressionFault.unworkable(expression);
  }

  /** Numbers are added; where one side is a text, both are joined. */
  Operand plus(Operand left, Operand right) throws ExpressionFault {
    return isText(left) || isText(right)
        ? new Operand.Words(text(left) + text(right))
        : new Operand.Plain(number(left) + number(right));
  }

  Operand arithmetic(char sign, Operand left, Operand right) throws ExpressionFault {
    double a = number(left);
    double b = number(right);
    if (b == 0 && (sign == '/' || sign == '%')) {
      throw ExpressionFault.unworkable(expression);
    }
    return new Operand.Plain(
        switch (sign) {
          case '-' -> a - b;
          case '*' -> a * b;
          case '/' -> a / b;
          default -> a - b * whole(a / b);
        });
  }

  private static double whole(double ratio) {
    return ratio < 0 ? Math.ceil(ratio) : Math.floor(ratio);
  }

  Operand compare(String sign, Operand left, Operand right) throws ExpressionFault {
    if (sign.equals("==") || sign.equals("!=")) {
      return new Operand.Flag(same(left, right) == sign.equals("=="));
    }
    double a = number(left);
    double b = number(right);
    return new Operand.Flag(
        switch (sign) {
          case "<" -> a < b;
          case "<=" -> a <= b;
          case ">" -> a > b;
          default -> a >= b;
        });
  }

  private boolean same(Operand left, Operand right) throws ExpressionFault {
    if (isText(left) && isText(right)) {
      return text(left).equals(text(right));
    }
    boolean answers =
        left instanceof Operand.Flag
            || (left instanceof Operand.OfQuantity quantity && quantity.isAnswer());
    return answers ? flag(left) == flag(right) : number(left) == number(right);
  }

  private static boolean isText(Operand operand) {
    return operand instanceof Operand.Words || operand instanceof Operand.Shown;
  }

  /** The functions that change a text. */
  Operand changed(String function, Operand operand) throws ExpressionFault {
    String text = text(operand);
    if (text.isEmpty()) {
      return new Operand.Words("");
    }
    String first = text.substring(0, 1);
    String rest = text.substring(1);
    return new Operand.Words(
        switch (function) {
          case "cap_first" -> Words.upper(first) + rest;
          case "uncap_first" -> Words.lower(first) + rest;
          case "lower_case" -> Words.lower(text);
          case "upper_case" -> Words.upper(text);
          default -> Words.trimmed(text);
        });
  }
}
