package ringbook.units;

/**
 * Prints measures for people, in one of two spellings. No space before the degree sign and after
 * {@code f/}; a space everywhere else, the percent sign included (SI brochure, 9th edition, 5.4.3
 * and 5.4.7; from memory).
 */
public enum MeasurePrinter {
  /** For pages: no-break space before the unit, true minus, narrow spaces in long numbers. */
  PAGE("\u00a0", "\u2212"),
  /** For files and terminals: plain space and hyphen, digits in one run. */
  PLAIN(" ", "-");

  /** Exposures shorter than this are written as one over a number, as on cameras. */
  private static final double FRACTION_BELOW = 1.0 / 3;

  private final String space;
  private final String minus;

  MeasurePrinter(String space, String minus) {
    this.space = space;
    this.minus = minus;
  }

  /** {@code measure} rounded to so many significant digits: 42 cm, 1/125 s, f/8, 24, 80 %, 12°. */
  public String print(Measure measure, int significantDigits) {
    double seconds = measure.number();
    if (measure.unit() == Unit.SECOND && seconds > 0 && seconds < FRACTION_BELOW) {
      double over = 1 / seconds;
      String below = over < 10 ? Numbers.significant(over, 2) : Numbers.fixed(over, 0);
      return "1/" + number(below) + space + "s";
    }
    return beside(Numbers.significant(measure.number(), significantDigits), measure.unit());
  }

  /** A number already rounded and printed by {@link Numbers}, with its unit. */
  public String beside(String number, Unit unit) {
    String printed = number(number);
    if (unit == Unit.ANSWER) {
      return number.equals("0") ? "no" : "yes";
    }
    if (unit == Unit.F_STOP) {
      return unit.symbol() + printed;
    }
    if (unit == Unit.STOP && number.equals("1")) {
      return printed + space + "stop";
    }
    boolean joined = unit == Unit.DEGREE || unit == Unit.DEGREE_PER_SECOND;
    return unit.symbol().isEmpty() ? printed : printed + (joined ? "" : space) + unit.symbol();
  }

  private String number(String number) {
    String grouped = this == PAGE ? Numbers.grouped(number) : number;
    return grouped.startsWith("-") ? minus + grouped.substring(1) : grouped;
  }
}
