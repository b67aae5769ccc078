package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.units.Decimal;
import ringbook.units.Dimension;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.NumberStyle;
import ringbook.units.Unit;
import ringbook.units.Words;

/** Cuts a written plan into words, numbers with their units, and ends of clauses. */
final class PlanTokens {

  /** What a token is. */
  enum Sort {
    /** Letters, in lower case. */
    WORD,
    /** A number alone. */
    BARE,
    /** A number of degrees. */
    DEGREES,
    /** A length, in metres. */
    LENGTH,
    /** A semicolon, a full stop or the end of a line. */
    END,
    /** Something that belongs to no plan. */
    STRANGE
  }

  /**
   * One token.
   *
   * @param sort what it is
   * @param text as written
   * @param number of a number, else 0
   */
  record Token(Sort sort, String text, double number) {}

  private static final String SILENT = " ,:+/|()[]*×·=&\"'";

  private final String text;

  /** Whether ' and " are feet and inches; around a whole plan they are quotation marks. */
  private final boolean marks;

  private int at;
  private final List<Token> tokens = new ArrayList<>();

  private PlanTokens(String text) {
    this.text = text;
    this.marks = !text.startsWith("'") && !text.startsWith("\"");
  }

  static List<Token> of(String written) {
    return new PlanTokens(plain(written)).cut();
  }

  private static String plain(String written) {
    StringBuilder plain = new StringBuilder(written.length());
    for (int i = 0; i < written.length(); i++) {
      char c = written.charAt(i);
      plain.append(
          switch (c) {
            case '\u2212', '\u2013', '\u2014', '\u2010', '\u2011' -> '-';
            case '\u00ba', '\u02da' -> '°';
            case '\u2032', '\u2019' -> '\'';
            case '\u2033', '\u201d' -> '"';
            case '\n', '\r', '\u2028' -> ';';
            case '\t', '\u00a0', '\u2007', '\u2009', '\u202f', '\u200b', '\ufeff' -> ' ';
            default -> c;
          });
    }
    return Words.trimmed(Words.lower(plain.toString()));
  }

  private List<Token> cut() {
    while (at < text.length()) {
      char c = text.charAt(at);
      boolean minus = c == '-' && isDigit(at + 1);
      if (isDigit(at) || minus) {
        number();
      } else if (isLetter(c)) {
        tokens.add(new Token(Sort.WORD, letters(), 0));
      } else {
        at++;
        if (c == '@') {
          tokens.add(new Token(Sort.WORD, "at", 0));
        } else if (c == ';' || c == '.') {
          tokens.add(new Token(Sort.END, ";", 0));
        } else if (SILENT.indexOf(c) < 0 && c != '-') {
          tokens.add(new Token(Sort.STRANGE, String.valueOf(c), 0));
        }
      }
    }
    return tokens;
  }

  private boolean isDigit(int i) {
    return i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9';
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c > '\u00bf' && c != '×');
  }

  private String letters() {
    int from = at;
    while (at < text.length() && isLetter(text.charAt(at))) {
      at++;
    }
    return text.substring(from, at);
  }

  /** Digits with one decimal mark, point or comma, that has a digit behind it; then the unit. */
  private void number() {
    int from = at;
    at++;
    boolean marked = false;
    while (isDigit(at) || (!marked && isMark(at) && isDigit(at + 1))) {
      marked |= isMark(at);
      at++;
    }
    String digits = text.substring(from, at);
    OptionalDouble value = Decimal.parse(digits.replace(',', '.'));
    if (value.isEmpty()) {
      tokens.add(new Token(Sort.STRANGE, digits, 0));
      return;
    }
    double number = value.getAsDouble();
    int whole = at;
    double part = fraction();
    if (part == 0 || !length(from, number + part)) {
      at = whole;
      unit(from, number);
    }
  }

  /** A fraction behind a whole number, as of inches: {@code 1/2}; 0 where none stands. */
  private double fraction() {
    double over = whole();
    if (over > 0 && at < text.length() && text.charAt(at) == '/') {
      at++;
      double under = whole();
      return under > 0 ? over / under : 0;
    }
    return 0;
  }

  private double whole() {
    blanks();
    int from = at;
    while (isDigit(at)) {
      at++;
    }
    return Decimal.parse(text.substring(from, at)).orElse(0);
  }

  private void blanks() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }

  /** Takes a length whose number is read, with the inches behind feet; else stays where it is. */
  private boolean length(int from, double number) {
    int before = at;
    Optional<Unit> unit = unitOfLength();
    if (unit.isEmpty()) {
      at = before;
      return false;
    }
    double metres = unit.get().toSi(number);
    if (unit.get() == Unit.FOOT) {
      int feet = at;
      double inches = whole();
      int behind = at;
      double part = fraction();
      at = part == 0 ? behind : at;
      if (inches + part > 0 && unitOfLength().orElse(Unit.FOOT) == Unit.INCH) {
        metres += Unit.INCH.toSi(inches + part);
      } else {
        at = feet;
      }
    }
    tokens.add(new Token(Sort.LENGTH, text.substring(from, at), metres));
    return true;
  }

  private Optional<Unit> unitOfLength() {
    blanks();
    String unit = "";
    if (at < text.length() && isLetter(text.charAt(at))) {
      unit = letters();
    } else if (marks && at < text.length() && "'\"".indexOf(text.charAt(at)) >= 0) {
      unit = text.substring(at, ++at);
    }
    return !unit.isEmpty()
            && MeasureReader.read("1 " + unit, Dimension.LENGTH, NumberStyle.POINT)
                instanceof MeasureReading.Read one
        ? Optional.of(one.measure().unit())
        : Optional.empty();
  }

  private boolean isMark(int i) {
    return i < text.length() && (text.charAt(i) == '.' || text.charAt(i) == ',');
  }

  private void unit(int from, double value) {
    int after = at;
    blanks();
    if (at < text.length() && text.charAt(at) == '°') {
      at++;
      tokens.add(new Token(Sort.DEGREES, text.substring(from, at), value));
      return;
    }
    String unit = at < text.length() && isLetter(text.charAt(at)) ? letters() : "";
    if (unit.equals("deg") || unit.equals("degree") || unit.equals("degrees")) {
      tokens.add(new Token(Sort.DEGREES, text.substring(from, at), value));
      return;
    }
    at = after;
    if (!length(from, value)) {
      tokens.add(new Token(Sort.BARE, text.substring(from, at), value));
    }
  }
}
