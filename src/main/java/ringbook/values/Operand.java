package ringbook.values;

import java.util.List;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.problems.Nearest;
import ringbook.units.Unit;

/** What a part of an expression stands for. */
sealed interface Operand {

  /** A bare number. */
  record Plain(double number) implements Operand {}

  /** A text. */
  record Words(String text) implements Operand {}

  /** Yes or no. */
  record Flag(boolean yes) implements Operand {}

  /** A value that is ready to be printed. */
  record Shown(Value value, String text) implements Operand {}

  /** A scene with changes. */
  record OfScene(SceneScope scene) implements Operand {}

  /** A section of the ledger. */
  record OfSection(String name, SceneScope scene) implements Operand {}

  /** A quantity; whether the scene allows it turns out when its number is asked for. */
  record OfQuantity(Quantity quantity, SceneScope scene) implements Operand {

    private static final List<String> PARTS = List.of("name", "symbol", "number", "in");

    boolean isAnswer() {
      return quantity.unit() == Unit.ANSWER;
    }

    /** The number in SI. */
    double si() throws ExpressionFault {
      String key = quantity.key();
      Outcome outcome = scene.reckoning().of(key);
      if (outcome instanceof Outcome.Known known) {
        return known.si();
      }
      throw ExpressionFault.refused(key, (Outcome.Refused) outcome);
    }

    /** As printed with its unit. */
    Shown shown() throws ExpressionFault {
      return shown("", quantity.text(si()));
    }

    /** In another unit. */
    Shown in(String symbol) throws ExpressionFault {
      Unit unit = OtherUnit.of(quantity.unit(), symbol);
      return shown(unit.symbol(), OtherUnit.text(quantity, si(), unit));
    }

    /** One of its parts but {@code in}. */
    Shown part(String part) throws ExpressionFault {
      return switch (part) {
        case "name" -> new Shown(new Value.Plain(quantity.name()), quantity.name());
        case "symbol" ->
            new Shown(new Value.Symbol(quantity.symbol(), quantity.name()), quantity.symbol());
        case "number" -> shown("number", quantity.number(si()));
        default ->
            throw ExpressionFault.of(
                "a quantity has no part '" + part + "'",
                Nearest.to(part, PARTS)
                    .map(near -> "did you mean '" + near + "'?")
                    .orElse("write .name, .symbol, .number or .in(\"mm\") behind its key"),
                part);
      };
    }

    private Shown shown(String form, String text) throws ExpressionFault {
      return new Shown(new Value.OfQuantity(quantity.key(), scene.given(), form, text, si()), text);
    }
  }
}
