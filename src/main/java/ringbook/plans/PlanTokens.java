package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringbook.units.Decimal;
import ringbook.units.Dimension;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.NumberStyle;
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
  private int at;
  private final List<Token> tokens = new ArrayList<>();

  private PlanTokens(String text) {
    this.text = text;
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
            case '\n', '\r', '\u2028' -> ';';
            case '\t', '\u00a0', '\u2007', '\u2009', '\u202f', '\u200b', '\ufeff' -> ' ';
            default -> c;
          });
    }
    return Words.lower(plain.toString());
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
    unit(from, value.getAsDouble());
  }

  private boolean isMark(int i) {
    return i < text.length() && (text.charAt(i) == '.' || text.charAt(i) == ',');
  }

  private void unit(int from, double value) {
    int after = at;
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
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
    if (!unit.isEmpty()
        && MeasureReader.read("1 " + unit, Dimension.LENGTH, NumberStyle.POINT)
            instanceof MeasureReading.Read one) {
      double metres = one.measure().unit().toSi(value);
      tokens.add(new Token(Sort.LENGTH, text.substring(from, at), metres));
      return;
    }
    at = after;
    tokens.add(new Token(Sort.BARE, text.substring(from, at), value));
  }
}
