package ringbook.units;

import java.util.OptionalDouble;

/** Reads the number at the start of a text with plain marks. One use only. */
final class NumberScan {

  private final String text;
  private final NumberStyle style;
  private int at;
  private boolean fraction;
  private String fault = "does not begin with a number";
  private String help = "";

  NumberScan(String text, NumberStyle style) {
    this.text = text;
    this.style = style;
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** The number: a decimal one, a fraction, or a whole number and a fraction. */
  OptionalDouble read() {
    boolean negative = at('-');
    if (negative || at('+')) {
      at++;
    }
    OptionalDouble first = decimal();
    if (first.isEmpty()) {
      return first;
    }
    OptionalDouble size = at('/') && digitAt(at + 1) ? over(first.getAsDouble()) : mixed(first);
    return negative && size.isPresent() ? OptionalDouble.of(-size.getAsDouble()) : size;
  }

  /** The whole number, with a fraction added where one follows. */
  private OptionalDouble mixed(OptionalDouble whole) {
    int after = at;
    if (!at(' ') || !digitAt(at + 1)) {
      return whole;
    }
    at++;
    OptionalDouble numerator = decimal();
    if (numerator.isEmpty() || !at('/') || !digitAt(at + 1)) {
      at = after;
      return whole;
    }
    OptionalDouble parts = over(numerator.getAsDouble());
    return parts.isEmpty() ? parts : OptionalDouble.of(parts.getAsDouble() + whole.getAsDouble());
  }

  private OptionalDouble over(double numerator) {
    at++;
    OptionalDouble denominator = decimal();
    fraction = true;
    if (denominator.isPresent() && denominator.getAsDouble() == 0) {
      fault = "divides by zero";
      return OptionalDouble.empty();
    }
    return denominator.isEmpty()
        ? denominator
        : OptionalDouble.of(numerator / denominator.getAsDouble());
  }

  /** What follows the number. */
  String rest() {
    return text.substring(at);
  }

  /** Whether the number was written as a fraction. */
  boolean wasFraction() {
    return fraction;
  }

  /** What is wrong with the text, to be put after it. */
  String fault() {
    return fault;
  }

  /** How to mend it, or {@code general} where there is nothing special to say. */
  String help(String general) {
    return help.isEmpty() ? general : help;
  }

  private boolean at(char c) {
    return at < text.length() && text.charAt(at) == c;
  }

  private boolean digitAt(int i) {
    return i >= 0 && i < text.length() && isDigit(text.charAt(i));
  }

  private OptionalDouble decimal() {
    StringBuilder digits = new StringBuilder();
    while (at < text.length()) {
      char c = text.charAt(at);
      boolean mark = c == '.' || c == ',';
      if (isDigit(c) || (mark && (digitAt(at + 1) || digitAt(at - 1)))) {
        digits.append(c);
      } else if (!((c == ' ' || c == '\'') && groupFollows())) {
        break;
      }
      at++;
    }
    if (digits.length() > 0 && (at('e') || at('E')) && powerFollows()) {
      digits.append('e');
      at++;
      while (digitAt(at) || at('-') || at('+')) {
        digits.append(text.charAt(at));
        at++;
      }
    }
    return digits.length() == 0 ? OptionalDouble.empty() : withPoint(digits.toString());
  }

  /**
   * Whether a group of exactly three digits follows the mark here, and one of at most three leads.
   */
  private boolean groupFollows() {
    int before = 0;
    while (digitAt(at - 1 - before)) {
      before++;
    }
    boolean three = digitAt(at + 1) && digitAt(at + 2) && digitAt(at + 3) && !digitAt(at + 4);
    boolean numerator = at + 4 < text.length() && text.charAt(at + 4) == '/';
    return before >= 1 && before <= 3 && three && !numerator;
  }

  private boolean powerFollows() {
    int sign =
        at + 1 < text.length() && (text.charAt(at + 1) == '-' || text.charAt(at + 1) == '+')
            ? 1
            : 0;
    return digitAt(at + 1 + sign);
  }

  /** Settles which of the marks is the decimal one. */
  private OptionalDouble withPoint(String number) {
    char decimal = decimalMark(number);
    char thousands = decimal == '.' ? ',' : '.';
    int point = number.indexOf(decimal);
    String whole = point < 0 ? number : number.substring(0, point);
    String behind = point < 0 ? "" : number.substring(point + 1);
    if (!grouped(whole, thousands) || behind.indexOf('.') >= 0 || behind.indexOf(',') >= 0) {
      fault = "has its points or commas in unusual places";
      help = "write one decimal mark and no marks for thousands, such as 1" + decimal + "5";
      return OptionalDouble.empty();
    }
    String plain = whole.replace(String.valueOf(thousands), "");
    if (style == NumberStyle.EITHER && point < 0 && plain.length() == whole.length() - 1) {
      fault = "can be read in two ways";
      help =
          "write "
              + plain
              + ", or "
              + whole.replace(',', '.')
              + " if the comma is the decimal mark";
      return OptionalDouble.empty();
    }
    OptionalDouble value = Decimal.parse(point < 0 ? plain : plain + "." + behind);
    if (value.isEmpty()) {
      fault = "holds no number that could be read";
    }
    return value;
  }

  private char decimalMark(String number) {
    if (style != NumberStyle.EITHER) {
      return style == NumberStyle.POINT ? '.' : ',';
    }
    int comma = number.lastIndexOf(',');
    int point = number.lastIndexOf('.');
    if (comma >= 0 && point >= 0) {
      return comma > point ? ',' : '.';
    }
    return comma < 0 || grouped(number, ',') ? '.' : ',';
  }

  /** Whether {@code mark} stands only between groups of three digits, the first of one to three. */
  private static boolean grouped(String whole, char mark) {
    int first = whole.indexOf(mark);
    if (first < 0) {
      return true;
    }
    if (first == 0 || first > 3 || whole.charAt(0) == '0') {
      return false;
    }
    for (int i = first; i < whole.length(); i += 4) {
      if (whole.charAt(i) != mark || whole.length() < i + 4) {
        return false;
      }
      for (int k = i + 1; k < i + 4; k++) {
        if (!isDigit(whole.charAt(k))) {
          return false;
        }
      }
    }
    return true;
  }
}
