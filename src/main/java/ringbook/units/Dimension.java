package ringbook.units;

/**
 * What kind of thing a number measures; two units fit each other when their dimension is the same.
 */
public enum Dimension {
  /** Metres inside. Sampling distances (per pixel) are lengths too. */
  LENGTH("a length", "42 cm"),
  /** Radians inside. */
  ANGLE("an angle", "12°"),
  /** Seconds inside. */
  TIME("a time", "1/125 s"),
  /** Metres a second inside. */
  SPEED("a speed", "5 mm/s"),
  /** Radians a second inside. */
  TURN_RATE("a rate of turn", "6°/s"),
  /** Hertz inside. */
  FREQUENCY("a frequency", "50 Hz"),
  /** Square metres inside. */
  AREA("an area", "120 cm²"),
  /** Lux inside. */
  ILLUMINANCE("an illuminance", "500 lx"),
  /** Lumen inside. */
  LUMINOUS_FLUX("a luminous flux", "800 lm"),
  /** Candela a square metre inside. */
  LUMINANCE("a luminance", "120 cd/m²"),
  /** One over metres (dioptres) inside. */
  LENS_POWER("a lens power", "2 dpt"),
  /** Bytes inside. */
  DATA("an amount of data", "25 MB"),
  /** A marked or effective f-number. */
  F_NUMBER("an f-number", "f/8"),
  /** Base-2 steps of exposure. */
  STOPS("a number of stops", "2 stops"),
  /** Pixels along one direction of the picture. */
  PIXELS("a number of pixels", "4000 px"),
  /** A whole number of things, such as photographs. */
  COUNT("a whole number", "24"),
  /** A part of a whole, 1 inside for all of it. */
  SHARE("a share", "80 %"),
  /** A plain ratio. */
  RATIO("a plain number", "1.5"),
  /** Yes (1) or no (0). */
  YES_NO("yes or no", "yes");

  private final String noun;
  private final String example;

  Dimension(String noun, String example) {
    this.noun = noun;
    this.example = example;
  }

  /** How a message names it, with its article: "a length". */
  public String noun() {
    return noun;
  }

  /** A measure of this kind as a person would write it: "42 cm". */
  public String example() {
    return example;
  }

  /** The same as people would write it who measure lengths so. */
  public String example(Lengths lengths) {
    return this == LENGTH ? lengths.either(example, "16 1/2 in") : example;
  }
}
