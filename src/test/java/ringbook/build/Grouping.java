package ringbook.build;

import org.teavm.jso.JSExport;

/** Sums and products whose brackets count, in the shapes that a compiler may take them apart in. */
public final class Grouping {

  private static double field;

  private Grouping() {}

  /** What each shape comes to for three numbers. */
  @JSExport
  public static double[] of(double a, double b, double c) {
    double sum = b + c;
    double product = b * c;
    field = b + c;
    Pair pair = new Pair(b + c, b / c);
    return new double[] {
      a + (b + c),
      a + (b - c),
      a * (b * c),
      a * (b / c),
      a + sum,
      a * product,
      a + sum(b, c),
      a * quotient(b, c),
      a + field,
      a + pair.first(),
      a * pair.second(),
      0.1 + (b + c),
      3 * (b / c),
      a - (b + c),
      a / (b * c),
      -a + (b + (c + a)),
      a * (b * (c * a)),
      (a > b ? b + c : b - c) + (a > c ? b + c : b - c),
      looped(a, b, c)
    };
  }

  private static double sum(double b, double c) {
    return b + c;
  }

  private static double quotient(double b, double c) {
    return b / c;
  }

  private static double looped(double a, double b, double c) {
    double total = 0;
    for (int i = 1; i < 9; i++) {
      total = a * i + (total + (b * i + c));
    }
    return total;
  }

  private record Pair(double first, double second) {}
}
