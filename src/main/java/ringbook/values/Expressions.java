package ringbook.values;

import java.util.LinkedHashMap;
import java.util.Map;
import ringbook.ledger.Reckoning;
import ringbook.optics.Kit;
import ringbook.units.Words;

/** Works out the expressions of a text over one scene. */
public final class Expressions {

  private final SceneScope scene;

  /** What was read before: on a page the same is asked for scene after scene. */
  private final Map<String, Part> read;

  /**
   * Expressions over the scene of {@code reckoning}.
   *
   * @param kits further kits that {@code given("kit = …")} may take, by name
   */
  public Expressions(Reckoning reckoning, Map<String, Kit> kits) {
    this(new SceneScope(reckoning, "", kits), new LinkedHashMap<>());
  }

  private Expressions(SceneScope scene, Map<String, Part> read) {
    this.scene = scene;
    this.read = read;
  }

  /** Expressions over another scene of the same course; what is read for one is for both. */
  public Expressions over(Reckoning reckoning) {
    return new Expressions(new SceneScope(reckoning, "", scene.kits()), read);
  }

  /** The scene and its quantities. */
  public Reckoning reckoning() {
    return scene.reckoning();
  }

  /**
   * What {@code expression} comes to.
   *
   * @throws ExpressionFault if it cannot be read or has no value
   */
  public Value evaluate(String expression) throws ExpressionFault {
    return value(part(expression).over(scene), expression);
  }

  private Part part(String expression) throws ExpressionFault {
    Part known = read.get(expression);
    if (known == null) {
      known = new ExpressionReader(expression).read();
      read.put(expression, known);
    }
    return known;
  }

  /**
   * What {@code expression} prints, as plain text.
   *
   * @throws ExpressionFault if it cannot be read or has no value
   */
  public String text(String expression) throws ExpressionFault {
    Value value = evaluate(expression);
    if (value instanceof Value.OfQuantity quantity) {
      return quantity.text();
    }
    if (value instanceof Value.Word word) {
      return word.text();
    }
    if (value instanceof Value.Flag flag) {
      return flag.yes() ? "yes" : "no";
    }
    return value instanceof Value.Symbol symbol ? symbol.speech() : ((Value.Plain) value).text();
  }

  /**
   * Whether {@code expression} is true; a quantity that is no yes or no counts as true if it has a
   * value in this scene.
   *
   * @throws ExpressionFault if it cannot be read
   */
  public boolean holds(String expression) throws ExpressionFault {
    Part part = part(expression);
    try {
      Operand operand = part.over(scene);
      if (operand instanceof Operand.OfQuantity quantity && quantity.isAnswer()) {
        return quantity.si() != 0;
      }
      return !(value(operand, expression) instanceof Value.Flag flag) || flag.yes();
    } catch (ExpressionFault fault) {
      if (fault.refused()) {
        return false;
      }
      throw fault;
    }
  }

  private static Value value(Operand operand, String expression) throws ExpressionFault {
    if (operand instanceof Operand.OfQuantity quantity) {
      return quantity.shown().value();
    }
    if (operand instanceof Operand.Shown shown) {
      return shown.value();
    }
    if (operand instanceof Operand.Flag flag) {
      return new Value.Flag(flag.yes());
    }
    if (operand instanceof Operand.Plain plain) {
      return new Value.Plain(PlainNumbers.text(plain.number()));
    }
    if (operand instanceof Operand.Words words) {
      return new Value.Plain(words.text());
    }
    String help =
        operand instanceof Operand.OfSection section
            ? "write the key of one of its quantities, such as "
                + section.scene().keys(section.name()).get(0)
            : "write the key of a quantity behind it";
    throw ExpressionFault.of("'" + Words.trimmed(expression) + "' is not a value", help, "");
  }
}
