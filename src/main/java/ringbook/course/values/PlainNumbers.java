package ringbook.course.values;

import freemarker.core.Environment;
import freemarker.core.TemplateNumberFormat;
import freemarker.core.TemplateNumberFormatFactory;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import java.util.Locale;

/** How numbers turn into text inside an expression: quantities as printed, others if whole. */
final class PlainNumbers extends TemplateNumberFormatFactory {

  /** The largest whole number that a double holds without gaps below it. */
  private static final double LARGEST = 9e15;

  @Override
  public TemplateNumberFormat get(String parameters, Locale locale, Environment environment) {
    return new Format();
  }

  /** The text of a number without unit. */
  static String text(double number) throws ExpressionFault {
    if (Math.rint(number) == number && Math.abs(number) < LARGEST) {
      return String.valueOf((long) number);
    }
    throw ExpressionFault.of(
        "the expression comes to the bare number " + number,
        "use a quantity, which knows its unit and its rounding",
        "");
  }

  private static final class Format extends TemplateNumberFormat {
    @Override
    public String formatToPlainText(TemplateNumberModel model) throws TemplateModelException {
      if (model instanceof QuantityModel quantity
          && quantity.value() instanceof Value.OfQuantity printed) {
        return printed.text();
      }
      return text(model.getAsNumber().doubleValue());
    }

    @Override
    public boolean isLocaleBound() {
      return false;
    }

    @Override
    public String getDescription() {
      return "text of lessons";
    }
  }
}
