package ringbook.course.values;

import freemarker.template.TemplateModelException;

/** An expression that cannot be used, and what to write instead. */
public final class ExpressionFault extends TemplateModelException {

  private final String fault;
  private final String help;
  private final String culprit;
  private final boolean refused;

  private ExpressionFault(String fault, String help, String culprit, boolean refused) {
    super(fault);
    this.fault = fault;
    this.help = help;
    this.culprit = culprit;
    this.refused = refused;
  }

  /** A fault of the author: {@code culprit} is the part of the expression that is wrong. */
  static ExpressionFault of(String fault, String help, String culprit) {
    return new ExpressionFault(fault, help, culprit, false);
  }

  /** The scene allows no such value. */
  static ExpressionFault refused(String fault, String help, String culprit) {
    return new ExpressionFault(fault, help, culprit, true);
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
    return Math.max(0, expression.indexOf(culprit));
  }

  /** Whether the expression is sound but the scene allows no such value. */
  public boolean refused() {
    return refused;
  }
}
