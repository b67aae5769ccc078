package ringbook.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.units.Unit;

/** Builds a {@link Quantity} step by step; the lists of entries read like a table. */
public final class Entry {

  private final String key;
  private final String name;
  private String meaning = "";
  private String symbol = "";
  private Unit unit = Unit.ONE;
  private Rounding rounding = Rounding.significant(3);
  private String formula = "";
  private String rule = "";
  private List<String> inputs = List.of();
  private String source = "";
  private final List<String> checks = new ArrayList<>();
  private Optional<Range> range = Optional.empty();

  private Entry(String key, String name) {
    this.key = key;
    this.name = name;
  }

  /** Starts an entry with its key and its name for people. */
  public static Entry of(String key, String name) {
    return new Entry(key, name);
  }

  /** One sentence that says what it is. */
  public Entry meaning(String sentence) {
    meaning = sentence;
    return this;
  }

  /** Its letter in formulas, in TeX, and the unit it is printed in. */
  public Entry symbol(String tex, Unit printedIn) {
    symbol = tex;
    unit = printedIn;
    return this;
  }

  /** How it is rounded for people; three significant digits if not said. */
  public Entry rounded(Rounding how) {
    rounding = how;
    return this;
  }

  /** The formula, over keys; see {@link Formula} for the notation. */
  public Entry formula(String text) {
    formula = text;
    return this;
  }

  /** The rule in one sentence, where no formula says it, and the keys it hangs on. */
  public Entry rule(String sentence, String... keys) {
    rule = sentence;
    inputs = List.of(keys);
    return this;
  }

  /** Where the formula comes from; "common practice, no source" where that is so. */
  public Entry source(String text) {
    source = text;
    return this;
  }

  /** Ids of the checks that prove it; see {@link Quantity#checks}. */
  public Entry checkedBy(String... ids) {
    checks.addAll(List.of(ids));
    return this;
  }

  /** Where its values can lie, from what it is; yes or no has no need of it. */
  public Entry range(Range where) {
    range = Optional.of(where);
    return this;
  }

  /**
   * Ends the entry with the method that computes it.
   *
   * @throws IllegalStateException if it states no range
   */
  public Quantity by(Quantity.Method method) {
    Quantity.Definition definition =
        formula.isEmpty()
            ? new Quantity.ByRule(rule, inputs, method)
            : new Quantity.ByFormula(Formula.of(formula), method);
    return quantity(definition);
  }

  /** Ends the entry of something the scene states. */
  Quantity given(Quantity.Method method) {
    return quantity(new Quantity.Given(method));
  }

  private Quantity quantity(Quantity.Definition definition) {
    Range stated =
        unit == Unit.ANSWER
            ? Range.wholeBetween(0, 1)
            : range.orElseThrow(() -> new IllegalStateException(key + " states no range"));
    return new Quantity(
        key,
        name,
        meaning,
        symbol,
        unit,
        rounding,
        definition,
        source,
        checks,
        stated,
        Quantity.Print.OWN);
  }
}
