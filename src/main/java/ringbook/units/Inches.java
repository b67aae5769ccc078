package ringbook.units;

/**
 * Prints lengths in feet and inches, as people write them: {@code 16 1/2 in}, {@code 16.7 in},
 * {@code 6 ft 2 3/4 in}. Halves and quarters only, in lowest terms; finer ones as decimals.
 */
public final class Inches {

  /** From so many inches on, feet are told. */
  public static final double FEET_FROM = 36;

  private static final double IN_A_FOOT = 12;
  private static final String SPACE = "\u00a0";
  private static final String[] QUARTERS = {"", "1/4", "1/2", "3/4"};

  private Inches() {}

  /** To whole multiples of {@code step} inches, 1/4 or a whole number. */
  public static String inSteps(double inches, double step, boolean up) {
    double steps = Math.abs(inches) / step;
    double whole = up ? Whole.up(steps) : Math.floor(steps + 0.5);
    return signed(inches, quarters(whole * step));
  }

  /** With so many digits after the point at most. */
  public static String inDecimals(double inches, int decimals, boolean up) {
    double scale = Num.pow(10, decimals);
    double steps = Math.abs(inches) * scale;
    double shown = (up ? Whole.up(steps) : Math.floor(steps + 0.5)) / scale;
    String text = Numbers.trimmed(Numbers.fixed(shown, decimals));
    if (shown < FEET_FROM) {
      return signed(inches, text + SPACE + Unit.INCH.symbol());
    }
    double feet = Math.floor(shown / IN_A_FOOT);
    double rest = shown - feet * IN_A_FOOT;
    return signed(inches, joined(feet, Numbers.trimmed(Numbers.fixed(rest, decimals))));
  }

  /** A multiple of a quarter. */
  private static String quarters(double inches) {
    double feet = inches < FEET_FROM ? 0 : Math.floor(inches / IN_A_FOOT);
    double rest = inches - feet * IN_A_FOOT;
    double whole = Math.floor(rest);
    String part = QUARTERS[(int) (4 * (rest - whole))];
    String number = Numbers.fixed(whole, 0);
    if (!part.isEmpty()) {
      number = whole == 0 ? part : number + SPACE + part;
    }
    return joined(feet, number);
  }

  private static String joined(double feet, String inches) {
    String inch = inches + SPACE + Unit.INCH.symbol();
    String foot = Numbers.fixed(feet, 0) + SPACE + Unit.FOOT.symbol();
    return feet == 0 ? inch : inches.equals("0") ? foot : foot + SPACE + inch;
  }

  private static String signed(double inches, String size) {
    return inches < 0 && !size.startsWith("0" + SPACE) ? "-" + size : size;
  }
}
