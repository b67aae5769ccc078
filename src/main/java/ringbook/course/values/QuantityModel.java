package ringbook.course.values;

import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.util.List;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.problems.Nearest;
import ringbook.units.Unit;

/** A quantity of a scene as expressions see it. */
class QuantityModel implements TemplateHashModel {

  private static final List<String> PARTS = List.of("name", "symbol", "number", "in");

  private final Quantity quantity;
  private final Reckoning reckoning;
  private final String given;

  private QuantityModel(Quantity quantity, Reckoning reckoning, String given) {
    this.quantity = quantity;
    this.reckoning = reckoning;
    this.given = given;
  }

  static QuantityModel of(Quantity quantity, Reckoning reckoning, String given) {
    return quantity.unit() == Unit.ANSWER
        ? new OfAnswer(quantity, reckoning, given)
        : new OfNumber(quantity, reckoning, given);
  }

  /** The value as printed with its unit. */
  Value value() throws ExpressionFault {
    double si = si();
    return shown("", quantity.text(si), si);
  }

  @Override
  public TemplateModel get(String part) throws TemplateModelException {
    return switch (part) {
      case "name" -> new ShownModel(new Value.Plain(quantity.name()), quantity.name());
      case "symbol" ->
          new ShownModel(new Value.Symbol(quantity.symbol(), quantity.name()), quantity.symbol());
      case "number" -> model("number", quantity.number(si()));
      case "in" -> (TemplateMethodModelEx) this::in;
      default ->
          throw ExpressionFault.of(
              "a quantity has no part '" + part + "'",
              Nearest.to(part, PARTS)
                  .map(near -> "did you mean '" + near + "'?")
                  .orElse("write .name, .symbol, .number or .in(\"mm\") behind its key"),
              part);
    };
  }

  @Override
  public boolean isEmpty() {
    return false;
  }

  /** The number in SI. */
  double si() throws ExpressionFault {
    if (reckoning.of(quantity.key()) instanceof Outcome.Known known) {
      return known.si();
    }
    throw ExpressionFault.refused(quantity.key(), (Outcome.Refused) reckoning.of(quantity.key()));
  }

  private TemplateModel in(List<?> arguments) throws TemplateModelException {
    if (arguments.size() != 1 || !(arguments.get(0) instanceof TemplateScalarModel written)) {
      throw ExpressionFault.of(
          "'in' needs one unit in quotation marks", "write for example .in(\"mm\")", "in");
    }
    String symbol = written.getAsString();
    Unit unit = OtherUnit.of(quantity.unit(), symbol);
    return model(unit.symbol(), OtherUnit.text(quantity, si(), unit));
  }

  private TemplateModel model(String form, String text) throws ExpressionFault {
    return new ShownModel(shown(form, text, si()), text);
  }

  private Value shown(String form, String text, double si) {
    return new Value.OfQuantity(quantity.key(), given, form, text, si);
  }

  /** A number can be compared; in comparisons it counts in its printed unit. */
  static final class OfNumber extends QuantityModel implements TemplateNumberModel {
    private final Unit unit;

    private OfNumber(Quantity quantity, Reckoning reckoning, String given) {
      super(quantity, reckoning, given);
      this.unit = quantity.unit();
    }

    @Override
    public Number getAsNumber() throws TemplateModelException {
      return unit.fromSi(si());
    }
  }

  /** A yes or no can decide. */
  static final class OfAnswer extends QuantityModel implements TemplateBooleanModel {
    private OfAnswer(Quantity quantity, Reckoning reckoning, String given) {
      super(quantity, reckoning, given);
    }

    @Override
    public boolean getAsBoolean() throws TemplateModelException {
      return si() != 0;
    }
  }
}
