package ringbook.values;

/** What an expression came to. */
public sealed interface Value {

  /**
   * The printed value of a quantity.
   *
   * @param key of the quantity
   * @param given the changes to the scene as the author wrote them; empty for the scene itself
   * @param form how it is printed: empty with its own unit, {@code number} without unit, else the
   *     symbol of another unit
   * @param text as printed
   * @param si the unrounded number in SI
   */
  record OfQuantity(String key, String given, String form, String text, double si)
      implements Value {}

  /**
   * A quantity's letter in formulas.
   *
   * @param tex the letter, in TeX
   * @param speech the name of the quantity
   */
  record Symbol(String tex, String speech) implements Value {}

  /**
   * A word or name that the scene states.
   *
   * @param key of the field
   * @param given as for {@link OfQuantity}
   * @param text the word
   */
  record Word(String key, String given, String text) implements Value {}

  /** A text that hangs on no single quantity. */
  record Plain(String text) implements Value {}

  /** Yes or no, worked out by the expression itself. */
  record Flag(boolean yes) implements Value {}
}
