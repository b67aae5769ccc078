package ringbook.output;

import ringbook.units.Numbers;

/**
 * The ring of stations as a small drawing: one tick a lesson round a point, the lesson at hand
 * heavier. It opens each chapter and stands large on the title page.
 */
public final class StationMark {

  private static final String ACCENT = "#9a4a26";
  private static final String FAINT = "#cbb9a6";

  private StationMark() {}

  /** Where the reader is: station {@code number} of {@code stations}. */
  public static String chapter(int number, int stations) {
    StringBuilder ticks = new StringBuilder();
    for (int i = 1; i <= stations; i++) {
      boolean here = i == number;
      ticks.append(tick(i, stations, here ? 66 : 80, here ? ACCENT : FAINT, here ? 9 : 5));
    }
    return ring(ticks.toString(), "Station " + number + " of " + stations);
  }

  /** The whole ring, for the title page. */
  public static String title(int stations) {
    int ticks = Math.max(stations, 24);
    StringBuilder drawn = new StringBuilder();
    for (int i = 1; i <= ticks; i++) {
      boolean long_ = i % 6 == 1;
      drawn.append(tick(i, ticks, long_ ? 72 : 82, long_ ? ACCENT : FAINT, long_ ? 2.5 : 1.5));
    }
    return ring(drawn.toString(), "A ring of camera stations round an object");
  }

  private static String ring(String ticks, String label) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"mark\" viewBox=\"-100 -100 200 200\""
        + " role=\"img\"><title>"
        + label
        + "</title>"
        + "<circle cx=\"0\" cy=\"0\" r=\"96\" fill=\"none\" stroke=\""
        + FAINT
        + "\" stroke-width=\"1.5\"/>"
        + ticks
        + "<circle cx=\"0\" cy=\"0\" r=\"22\" fill=\""
        + ACCENT
        + "\"/></svg>";
  }

  /** A tick from the rim inwards to {@code inner}, of 100 for the rim; the first one at the top. */
  private static String tick(int number, int count, double inner, String colour, double width) {
    double turn = 2 * Math.PI * (number - 1) / count;
    double across = Math.sin(turn);
    double down = -Math.cos(turn);
    return "<line x1=\""
        + at(inner * across)
        + "\" y1=\""
        + at(inner * down)
        + "\" x2=\""
        + at(96 * across)
        + "\" y2=\""
        + at(96 * down)
        + "\" stroke=\""
        + colour
        + "\" stroke-width=\""
        + at(width)
        + "\"/>";
  }

  private static String at(double value) {
    return Numbers.trimmed(Numbers.fixed(value, 2));
  }
}
