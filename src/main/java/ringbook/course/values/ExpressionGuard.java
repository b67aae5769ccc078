package ringbook.course.values;

import java.util.List;
import ringbook.problems.Nearest;

/**
 * Refuses what an expression has no business with: the language's own variables (the clock is one
 * of them), all but a few of its text functions, and expressions inside texts.
 */
final class ExpressionGuard {

  private static final List<String> ALLOWED =
      List.of("then", "cap_first", "uncap_first", "lower_case", "upper_case", "trim");

  private final String expression;
  private char quote;
  private int open;

  private ExpressionGuard(String expression) {
    this.expression = expression;
  }

  static void check(String expression) throws ExpressionFault {
    if (expression.isBlank()) {
      throw ExpressionFault.of("there is no expression", "write the key of a quantity", "");
    }
    new ExpressionGuard(expression).check();
  }

  private void check() throws ExpressionFault {
    for (int i = 0; i < expression.length(); i++) {
      char c = expression.charAt(i);
      if (quote != 0) {
        inText(i, c);
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '?') {
        i += checkFunction(i);
      } else if (c == '.') {
        checkPoint(i);
      } else {
        checkBracket(i, c);
      }
    }
    if (quote != 0) {
      throw ExpressionFault.of(
          "the quotation mark " + quote + " is not closed", "close it", String.valueOf(quote));
    }
  }

  private void inText(int i, char c) throws ExpressionFault {
    if (c == quote) {
      quote = 0;
    } else if (c == '{' || c == '\\') {
      throw ExpressionFault.at(
          i,
          "a text inside an expression cannot hold '" + c + "'",
          "leave it out, or write it outside the braces");
    }
  }

  /** Checks the function behind a question mark; how many further characters to pass over. */
  private int checkFunction(int mark) throws ExpressionFault {
    if (mark + 1 < expression.length() && expression.charAt(mark + 1) == '?') {
      return 1;
    }
    String name = nameAt(mark + 1);
    if (!ALLOWED.contains(name)) {
      throw ExpressionFault.of(
          "an expression cannot use '?" + name + "'", Nearest.help(name, ALLOWED), "?" + name);
    }
    return 0;
  }

  private void checkBracket(int at, char c) throws ExpressionFault {
    open += c == '(' ? 1 : c == ')' ? -1 : 0;
    if (open < 0) {
      throw ExpressionFault.at(at, "this bracket closes nothing", "take it out");
    }
  }

  private void checkPoint(int at) throws ExpressionFault {
    char before = at == 0 ? ' ' : expression.charAt(at - 1);
    if (!Character.isLetterOrDigit(before) && before != ')' && before != '_') {
      throw ExpressionFault.at(
          at,
          "an expression cannot use '." + nameAt(at + 1) + "'",
          "begin with a section of the ledger, such as distance.standoff");
    }
  }

  private String nameAt(int from) {
    int end = from;
    while (end < expression.length()
        && (Character.isLetterOrDigit(expression.charAt(end)) || expression.charAt(end) == '_')) {
      end++;
    }
    return expression.substring(from, end);
  }
}
