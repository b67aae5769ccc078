package ringbook.units;

/** Which mark separates the whole part of a number from the rest. */
public enum NumberStyle {
  /** 1.5; a comma may only mark thousands: 1,500 is fifteen hundred. */
  POINT,
  /** 1,5; a point may only mark thousands: 1.500 is fifteen hundred. */
  COMMA,
  /**
   * Either. Where both stand in one number the last one is the decimal mark. A point alone is the
   * decimal mark; a comma alone too, but for a text like 1,500, which can be read in two ways and
   * is given back to the writer.
   */
  EITHER
}
