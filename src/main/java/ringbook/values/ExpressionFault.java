package ringbook.values;

import ringbook.ledger.Outcome;

/** An expression that cannot be used, and what to write instead. */
public final class ExpressionFault extends Exception {

  private static final long serialVersionUID = 1L;

  private final String fault;
  private final String help;
  private final String culprit;
  private final int offset;
  private final boolean refused;

  private ExpressionFault(String fault, String help, String culprit, int offset, boolean refused) {
    super(fault);
    this.fault = fault;
    this.help = help;
    this.culprit = culprit;
    this.offset = offset;
    this.refused = refused;
  }

  /** A fault of the author: {@code culprit} is the part of the expression that is wrong. */
  static ExpressionFault of(String fault, String help, String culprit) {
    return new ExpressionFault(fault, help, culprit, 0, false);
  }

  /** A fault of the author at a place of the expression that is known, from 0. */
  static ExpressionFault at(int offset, String fault, String help) {
    return new ExpressionFault(fault, help, "", offset, false);
  }

  /** The scene allows no value of the quantity {@code key}. */
  public static ExpressionFault refused(String key, Outcome.Refused refused) {
    String instead = "put it into a fence 'when " + key + "'";
    return new ExpressionFault(
        "'" + key + "' has no value here: " + unended(refused.reason()),
        refused.help().isEmpty() ? instead : unended(refused.help()) + "; or " + instead,
        key,
        0,
        true);
  }

  /** The expression can be read, but its parts do not fit each other. */
  static ExpressionFault unworkable(String expression) {
    return of(
        "the expression '" + expression + "' cannot be worked out",
        "see that every part is of the kind its operator needs: numbers with numbers, texts with"
            + " texts",
        "");
  }

  private static String unended(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  /** What is wrong, with the words that were found in quotation marks. */
  public String fault() {
    return fault;
  }

  /** What to write instead; may be empty. */
  public String help() {
    return help;
  }

  /** Where in {@code expression} the fault lies, from 0. */
  public int offsetIn(String expression) {
    return culprit.isEmpty() ? offset : Math.max(0, expression.indexOf(culprit));
  }

  /** Whether the expression is sound but the scene allows no such value. */
  public boolean refused() {
    return refused;
  }
}
