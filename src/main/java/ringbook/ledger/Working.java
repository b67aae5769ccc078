package ringbook.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.units.Unit;

/**
 * How one quantity of one scene is worked out, as a person would write it down: formula, formula
 * with the numbers put in, result. No line is there twice: what reads as the next one is left out.
 *
 * @param key the quantity
 * @param formula the formula in letters; empty where a rule or the scene gives the number
 * @param numbers the formula with the numbers put in, as printed; empty likewise
 * @param result the result, or the reason of the refusal
 * @param rule the rule in words where there is no formula; empty otherwise
 * @param inputs what was put in
 */
public record Working(
    String key,
    Optional<Line> formula,
    Optional<Line> numbers,
    Line result,
    String rule,
    List<Input> inputs) {

  public Working {
    inputs = List.copyOf(inputs);
  }

  /**
   * One line in its three forms.
   *
   * @param tex typeset
   * @param text one line of plain text
   * @param speech as it is read out
   */
  public record Line(String tex, String text, String speech) {

    private boolean reads(Line other) {
      return text.equals(other.text());
    }
  }

  /**
   * Something that was put in.
   *
   * @param key its key
   * @param symbol its plain symbol
   * @param name its name
   * @param text its printed value
   */
  public record Input(String key, String symbol, String name, String text) {}

  /** The working of {@code key}. */
  public static Working of(Reckoning reckoning, String key) {
    Quantity quantity = reckoning.ledger().get(key);
    Optional<Line> letters =
        quantity.formula().map(formula -> letters(reckoning, quantity, formula));
    boolean allKnown =
        quantity.inputs().stream().allMatch(in -> reckoning.of(in) instanceof Outcome.Known);
    Optional<Line> numbers =
        allKnown
            ? quantity.formula().map(formula -> numbers(reckoning, quantity, formula))
            : Optional.empty();
    String rule = quantity.definition() instanceof Quantity.ByRule by ? by.rule() : "";
    Line result = result(reckoning, quantity);
    return new Working(
        key,
        letters.filter(line -> !line.reads(result)),
        numbers.filter(line -> !line.reads(result) && !line.reads(letters.orElseThrow())),
        result,
        rule,
        inputs(reckoning, quantity));
  }

  private static Line letters(Reckoning reckoning, Quantity quantity, Formula formula) {
    Ledger ledger = reckoning.ledger();
    return new Line(
        quantity.symbol() + "=" + formula.tex(key -> ledger.get(key).symbol(), "\\,"),
        Symbols.plain(quantity.symbol())
            + " = "
            + formula.text(key -> Symbols.plain(ledger.get(key).symbol())),
        quantity.name() + " equals " + formula.speech(key -> ledger.get(key).name()));
  }

  private static Line numbers(Reckoning reckoning, Quantity quantity, Formula formula) {
    PutIn in = new PutIn(reckoning, quantity, formula);
    return new Line(
        quantity.symbol()
            + "="
            + formula.tex(key -> value(reckoning, in, key, FormulaPrint.TEX), "\\times "),
        Symbols.plain(quantity.symbol())
            + " = "
            + formula.text(key -> value(reckoning, in, key, FormulaPrint.TEXT)),
        quantity.name()
            + " equals "
            + formula.speech(key -> value(reckoning, in, key, FormulaPrint.SPEECH)));
  }

  private static Line result(Reckoning reckoning, Quantity quantity) {
    String key = quantity.key();
    if (reckoning.of(key) instanceof Outcome.Refused refused) {
      return new Line("", refused.reason(), refused.reason());
    }
    double si = ((Outcome.Known) reckoning.of(key)).si();
    String own = quantity.ownText(si);
    String told = quantity.text(si);
    boolean same = told.equals(own);
    return new Line(
        quantity.symbol()
            + "="
            + value(reckoning, key, FormulaPrint.TEX)
            + (same ? "" : "=" + FormulaPrint.MeasurePrint.tex(told)),
        Symbols.plain(quantity.symbol()) + " = " + own + (same ? "" : " = " + told),
        quantity.name() + " is " + own + (same ? "" : ", or " + told));
  }

  private static List<Input> inputs(Reckoning reckoning, Quantity quantity) {
    List<Input> inputs = new ArrayList<>();
    for (String key : quantity.inputs()) {
      Quantity input = reckoning.ledger().get(key);
      inputs.add(new Input(key, Symbols.plain(input.symbol()), input.name(), text(reckoning, key)));
    }
    return inputs;
  }

  /**
   * Workings stay in the units of their formulas; where people measure in others, both are told.
   */
  private static String text(Reckoning reckoning, String key) {
    String told = reckoning.text(key);
    if (reckoning.of(key) instanceof Outcome.Known known) {
      String own = reckoning.ledger().get(key).ownText(known.si());
      return own.equals(told) ? own : own + " (" + told + ")";
    }
    return told;
  }

  private static String value(Reckoning reckoning, PutIn in, String key, int style) {
    Unit unit = reckoning.ledger().get(key).unit();
    return FormulaPrint.MeasurePrint.of(in.number(key), unit, style);
  }

  private static String value(Reckoning reckoning, String key, int style) {
    Quantity quantity = reckoning.ledger().get(key);
    double si = ((Outcome.Known) reckoning.of(key)).si();
    return FormulaPrint.MeasurePrint.of(quantity.number(si), quantity.unit(), style);
  }
}
