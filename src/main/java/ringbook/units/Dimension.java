package ringbook.units;

/**
 * What kind of thing a number measures; two units fit each other when their dimension is the same.
 */
public enum Dimension {
  /** Metres inside. Sampling distances (per pixel) are lengths too. */
  LENGTH("a length"),
  /** Radians inside. */
  ANGLE("an angle"),
  /** Seconds inside. */
  TIME("a time"),
  /** Metres a second inside. */
  SPEED("a speed"),
  /** Radians a second inside. */
  TURN_RATE("a rate of turn"),
  /** Hertz inside. */
  FREQUENCY("a frequency"),
  /** Square metres inside. */
  AREA("an area"),
  /** Lux inside. */
  ILLUMINANCE("an illuminance"),
  /** Candela a square metre inside. */
  LUMINANCE("a luminance"),
  /** One over metres (dioptres) inside. */
  LENS_POWER("a lens power"),
  /** Bytes inside. */
  DATA("an amount of data"),
  /** A marked or effective f-number. */
  F_NUMBER("an f-number"),
  /** Base-2 steps of exposure. */
  STOPS("a number of stops"),
  /** Pixels along one direction of the picture. */
  PIXELS("a number of pixels"),
  /** A whole number of things, such as photographs. */
  COUNT("a whole number"),
  /** A part of a whole, 1 inside for all of it. */
  SHARE("a share"),
  /** A plain ratio. */
  RATIO("a plain number"),
  /** Yes (1) or no (0). */
  YES_NO("yes or no");

  private final String noun;

  Dimension(String noun) {
    this.noun = noun;
  }

  /** How a message names it, with its article: "a length". */
  public String noun() {
    return noun;
  }
}
