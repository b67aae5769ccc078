package ringbook.values;

import java.util.List;
import java.util.OptionalDouble;
import ringbook.problems.Nearest;
import ringbook.units.Decimal;
import ringbook.units.Dimension;
import ringbook.units.Lengths;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.NumberStyle;
import ringbook.units.Words;

/** Reads the notation that the package describes. */
final class ExpressionReader {

  private static final List<String> FUNCTIONS =
      List.of("then", "cap_first", "uncap_first", "lower_case", "upper_case", "trim");

  private static final List<String> EQUALS = List.of("==", "!=", "=");
  private static final List<String> COMPARISONS = List.of("<=", ">=", "<", ">");

  private final String text;
  private final Operators operators;
  private int at;

  ExpressionReader(String text) {
    this.text = text;
    this.operators = new Operators(text);
  }

  /**
   * The expression.
   *
   * @throws ExpressionFault if it cannot be read
   */
  Part read() throws ExpressionFault {
    if (Words.isBlank(text)) {
      throw ExpressionFault.of("there is no expression", "write the key of a quantity", "");
    }
    Part whole = either();
    if (here() == ')') {
      throw ExpressionFault.at(at, "this bracket closes nothing", "take it out");
    }
    if (at < text.length()) {
      throw unreadable();
    }
    return whole;
  }

  private Part either() throws ExpressionFault {
    Part left = both();
    while (takes("||")) {
      Part first = left;
      Part second = both();
      left = s -> new Operand.Flag(flag(first, s) || flag(second, s));
    }
    return left;
  }

  private Part both() throws ExpressionFault {
    Part left = equality();
    while (takes("&&")) {
      Part first = left;
      Part second = equality();
      left = s -> new Operand.Flag(flag(first, s) && flag(second, s));
    }
    return left;
  }

  private Part equality() throws ExpressionFault {
    Part left = comparison();
    String sign = oneOf(EQUALS);
    return sign.isEmpty() ? left : compare(sign.equals("=") ? "==" : sign, left, comparison());
  }

  private Part comparison() throws ExpressionFault {
    Part left = sum();
    String sign = oneOf(COMPARISONS);
    return sign.isEmpty() ? left : compare(sign, left, sum());
  }

  private Part compare(String sign, Part left, Part right) {
    return s -> operators.compare(sign, left.over(s), right.over(s));
  }

  private Part sum() throws ExpressionFault {
    Part left = product();
    while (here() == '+' || here() == '-') {
      char sign = text.charAt(at++);
      Part first = left;
      Part second = product();
      left =
          sign == '+'
              ? s -> operators.plus(first.over(s), second.over(s))
              : s -> operators.arithmetic(sign, first.over(s), second.over(s));
    }
    return left;
  }

  private Part product() throws ExpressionFault {
    Part left = signed();
    while (here() == '*' || here() == '/' || here() == '%') {
      char sign = text.charAt(at++);
      Part first = left;
      Part second = signed();
      left = s -> operators.arithmetic(sign, first.over(s), second.over(s));
    }
    return left;
  }

  private Part signed() throws ExpressionFault {
    if (here() == '!') {
      at++;
      Part inner = signed();
      return s -> new Operand.Flag(!flag(inner, s));
    }
    if (here() == '-') {
      at++;
      Part inner = signed();
      return s -> new Operand.Plain(-operators.number(inner.over(s)));
    }
    return behind(first());
  }

  private Part first() throws ExpressionFault {
    char c = here();
    if (c == '(') {
      at++;
      Part inner = either();
      close();
      return inner;
    }
    if (c == '"' || c == '\'') {
      String words = quoted();
      return s -> new Operand.Words(words);
    }
    if (c >= '0' && c <= '9') {
      return number();
    }
    if (c == '.') {
      throw pointless(at);
    }
    int from = at;
    String name = name();
    return switch (name) {
      case "" -> throw unreadableAt(from);
      case "true", "false" -> s -> new Operand.Flag(name.equals("true"));
      case "given" -> given();
      case "length" -> length();
      default -> s -> s.section(name);
    };
  }

  private Part given() throws ExpressionFault {
    if (here() != '(') {
      throw changesMissing();
    }
    at++;
    char quote = here();
    if (quote != '"' && quote != '\'') {
      throw changesMissing();
    }
    String changes = quoted();
    close();
    return s -> new Operand.OfScene(s.given(changes));
  }

  /** A stated length, told in the measures of the scene; the second text is for inches. */
  private Part length() throws ExpressionFault {
    take('(');
    String metric = lengthText();
    double metres = metres(metric);
    String imperial = Lengths.IMPERIAL.roughly(metres);
    if (takes(",")) {
      imperial = lengthText();
      metres(imperial);
    }
    close();
    String inches = imperial;
    return s ->
        new Operand.Words(
            s.reckoning().scene().aim().lengths().either(metric, inches).replace(' ', '\u00a0'));
  }

  private String lengthText() throws ExpressionFault {
    char quote = here();
    if (quote != '"' && quote != '\'') {
      throw lengthFault("'length' needs a length in quotation marks");
    }
    return quoted();
  }

  private static double metres(String written) throws ExpressionFault {
    if (MeasureReader.read(written, Dimension.LENGTH, NumberStyle.POINT)
        instanceof MeasureReading.Read read) {
      return read.measure().si();
    }
    throw lengthFault("'" + written + "' is no length");
  }

  private static ExpressionFault lengthFault(String message) {
    return ExpressionFault.of(
        message, "write for example length(\"30 cm\") or length(\"30 cm\", \"12 in\")", "length");
  }

  private static ExpressionFault changesMissing() {
    return ExpressionFault.of(
        "'given' needs one text in quotation marks",
        "write for example given(\"aim.step = 72°\")",
        "given");
  }

  /** What stands behind a value: points and functions, as many as there are. */
  private Part behind(Part value) throws ExpressionFault {
    Part whole = value;
    while (here() == '.' || here() == '?') {
      Part before = whole;
      whole = text.charAt(at) == '.' ? member(before) : function(before);
    }
    return whole;
  }

  private Part member(Part before) throws ExpressionFault {
    int point = at++;
    if (point > 0 && text.charAt(point - 1) == ' ') {
      throw pointless(point);
    }
    String name = name();
    if (name.isEmpty()) {
      throw unreadable();
    }
    if (name.equals("in")) {
      return in(before);
    }
    return s -> memberOf(before.over(s), name);
  }

  private Operand memberOf(Operand operand, String name) throws ExpressionFault {
    if (operand instanceof Operand.OfScene scene) {
      return scene.scene().section(name);
    }
    if (operand instanceof Operand.OfSection section) {
      return section.scene().field(section.name() + "." + name);
    }
    if (operand instanceof Operand.OfQuantity quantity) {
      return quantity.part(name);
    }
    throw ExpressionFault.unworkable(text);
  }

  private Part in(Part before) throws ExpressionFault {
    boolean open = here() == '(';
    at += open ? 1 : 0;
    if (!open || (here() != '"' && here() != '\'')) {
      throw ExpressionFault.of(
          "'in' needs one unit in quotation marks", "write for example .in(\"mm\")", "in");
    }
    String unit = quoted();
    close();
    return s -> {
      if (before.over(s) instanceof Operand.OfQuantity quantity) {
        return quantity.in(unit);
      }
      throw ExpressionFault.unworkable(text);
    };
  }

  private Part function(Part before) throws ExpressionFault {
    at++;
    String name = name();
    if (!FUNCTIONS.contains(name)) {
      throw ExpressionFault.of(
          "an expression cannot use '?" + name + "'", Nearest.help(name, FUNCTIONS), "?" + name);
    }
    if (!name.equals("then")) {
      return s -> operators.changed(name, before.over(s));
    }
    take('(');
    Part one = either();
    take(',');
    Part other = either();
    close();
    return s -> flag(before, s) ? one.over(s) : other.over(s);
  }

  private boolean flag(Part part, SceneScope scene) throws ExpressionFault {
    return operators.flag(part.over(scene));
  }

  private Part number() throws ExpressionFault {
    int from = at;
    while (at < text.length() && (isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    OptionalDouble number = Decimal.parse(text.substring(from, at));
    if (number.isEmpty()) {
      throw unreadableAt(from);
    }
    return s -> new Operand.Plain(number.getAsDouble());
  }

  private String quoted() throws ExpressionFault {
    char quote = text.charAt(at);
    int from = ++at;
    while (at < text.length() && text.charAt(at) != quote) {
      char c = text.charAt(at);
      if (c == '{' || c == '\\') {
        throw ExpressionFault.at(
            at,
            "a text inside an expression cannot hold '" + c + "'",
            "leave it out, or write it outside the braces");
      }
      at++;
    }
    if (at == text.length()) {
      throw ExpressionFault.of(
          "the quotation mark " + quote + " is not closed", "close it", String.valueOf(quote));
    }
    return text.substring(from, at++);
  }

  private String name() {
    int from = at;
    while (at < text.length() && isOfName(text.charAt(at))) {
      at++;
    }
    return text.substring(from, at);
  }

  private ExpressionFault pointless(int point) {
    at = point + 1;
    return ExpressionFault.at(
        point,
        "an expression cannot use '." + name() + "'",
        "begin with a section of the ledger, such as distance.standoff");
  }

  private void close() throws ExpressionFault {
    take(')');
  }

  private void take(char c) throws ExpressionFault {
    if (here() != c) {
      throw unreadable();
    }
    at++;
  }

  private boolean takes(String sign) {
    here();
    if (!text.startsWith(sign, at)) {
      return false;
    }
    at += sign.length();
    return true;
  }

  private String oneOf(List<String> signs) {
    for (String sign : signs) {
      if (takes(sign)) {
        return sign;
      }
    }
    return "";
  }

  /** The next character that is no space, or 0 at the end. */
  private char here() {
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
    return at < text.length() ? text.charAt(at) : 0;
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isOfName(char c) {
    return isDigit(c) || c == '_' || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  }

  private ExpressionFault unreadable() {
    return unreadableAt(at);
  }

  private ExpressionFault unreadableAt(int offset) {
    return ExpressionFault.at(
        offset,
        "the expression '" + text + "' cannot be read here",
        "look at its brackets, quotation marks and operators");
  }
}
