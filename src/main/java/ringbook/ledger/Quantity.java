package ringbook.ledger;

import java.util.List;
import java.util.Optional;
import ringbook.units.Lengths;
import ringbook.units.Unit;
import ringbook.units.Whole;

/**
 * One entry of the ledger.
 *
 * @param key how lessons and exercises call it, such as {@code ring.photos}
 * @param name its name for people, without an article
 * @param meaning one sentence that says what it is
 * @param symbol its letter in formulas, in TeX
 * @param unit the unit it is printed in
 * @param rounding how it is rounded for people
 * @param definition how it comes about
 * @param source where the formula comes from
 * @param checks what proves it: ids of outside values in the data files of the tests, such as
 *     {@code HYP-01}, and {@code test:} with the name of a test class that works it out by a second
 *     route; empty for givens
 * @param range where its values can lie
 * @param print in which measures lengths are told
 */
public record Quantity(
    String key,
    String name,
    String meaning,
    String symbol,
    Unit unit,
    Rounding rounding,
    Definition definition,
    String source,
    List<String> checks,
    Range range,
    Print print) {

  public Quantity {
    checks = List.copyOf(checks);
  }

  /** In which measures lengths of objects and rooms are told. */
  enum Print {
    /** In the unit of the entry. */
    OWN,
    /** In feet and inches. */
    INCHES,
    /** In inches, with as many digits as the numbers of a question need. */
    FINE_INCHES
  }

  /** Works a quantity out, in SI; reads other quantities only through the reckoning. */
  @FunctionalInterface
  public interface Method {
    /**
     * The number in SI.
     *
     * @throws RefusedException if the scene does not allow it
     */
    double compute(Reckoning reckoning);
  }

  /** Yes or no: whether {@code x} is no more than {@code limit}; see {@link Whole#atMost}. */
  static double atMost(double x, double limit) {
    return answer(Whole.atMost(x, limit));
  }

  /** The number that stands for yes or no. */
  static double answer(boolean yes) {
    return yes ? 1 : 0;
  }

  /** How a quantity comes about. */
  public sealed interface Definition {
    /** The method that computes it. */
    Method method();
  }

  /** Stated by the scene. */
  public record Given(Method method) implements Definition {}

  /**
   * Worked out by a formula over other entries; the method gives the same number.
   *
   * @param formula the formula
   * @param method computes it
   */
  public record ByFormula(Formula formula, Method method) implements Definition {}

  /**
   * Worked out by a rule that no single formula says.
   *
   * @param rule the rule in one sentence
   * @param inputs keys of what it hangs on
   * @param method computes it
   */
  public record ByRule(String rule, List<String> inputs, Method method) implements Definition {
    public ByRule {
      inputs = List.copyOf(inputs);
    }
  }

  /** The formula, where there is one. */
  public Optional<Formula> formula() {
    return definition instanceof ByFormula by ? Optional.of(by.formula()) : Optional.empty();
  }

  /** Keys of the entries it is worked out from; empty for givens. */
  public List<String> inputs() {
    if (definition instanceof ByFormula by) {
      return by.formula().keys();
    }
    return definition instanceof ByRule by ? by.inputs() : List.of();
  }

  /** The number for people, without its unit: {@code 41.2}; yes or no in words. */
  public String number(double si) {
    if (unit == Unit.ANSWER) {
      return si == 0 ? "no" : "yes";
    }
    return rounding.text(unit.fromSi(si));
  }

  /**
   * The number for people with its unit, joined by a no-break space: {@code 41.2 cm}, {@code f/8},
   * {@code 12°}; where lengths are told in inches, {@code 16 1/4 in}.
   */
  public String text(double si) {
    if (!isInInches() || Math.abs(si) == Double.POSITIVE_INFINITY) {
      return ownText(si);
    }
    return print == Print.FINE_INCHES ? LengthText.fine(this, si) : LengthText.of(this, si, false);
  }

  /** What it is; of what a scene may leave out also what holds then. */
  @Override
  public String meaning() {
    return definition instanceof Given ? Givens.meaning(this) : meaning;
  }

  /** Where its values can lie, in a few words: {@code above 0}, {@code 3 mm to 11.8 in}. */
  public String rangeText() {
    return range.text(unit, print == Print.OWN ? Lengths.METRIC : Lengths.IMPERIAL);
  }

  /** Whether its values are told in feet and inches. */
  boolean isInInches() {
    return print != Print.OWN && LengthText.isMeant(this);
  }

  /**
   * Half the last digit of what is printed as an answer, in the unit of the entry: how far a text
   * may be from {@code number}.
   */
  public double slack(double number) {
    double own = rounding.slack(number);
    return isInInches() && !(definition instanceof Given)
        ? Math.max(own, unit.fromSi(LengthText.slack(this, unit.toSi(number))))
        : own;
  }

  /**
   * The text as the answer to a question. What the scene states is told as it is stated: a tape in
   * inches is read more coarsely than that.
   */
  public String answerText(double si) {
    return definition instanceof Given ? ownText(si) : text(si);
  }

  /** The same entry with its lengths told in other measures. */
  Quantity told(Print other) {
    return new Quantity(
        key, name, meaning, symbol, unit, rounding, definition, source, checks, range, other);
  }

  /** The number for people in the unit of the entry, whatever measures lengths are told in. */
  public String ownText(double si) {
    String number = number(si);
    if (Math.abs(si) == Double.POSITIVE_INFINITY) {
      return number; // endless in every unit
    }
    String symbol = unit.symbol();
    if (unit == Unit.F_STOP) {
      return symbol + number;
    }
    if (symbol.isEmpty() || unit == Unit.DEGREE) {
      return number + symbol;
    }
    return number + "\u00a0" + symbol;
  }
}
