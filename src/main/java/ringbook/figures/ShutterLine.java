package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;
import ringbook.units.Numbers;

/**
 * Exposure times on one line, each tick twice the time of the one before: how long each way of
 * holding the camera allows, and how long the light asks for.
 */
final class ShutterLine {

  private static final double WIDTH = 560;
  private static final double LEFT = 30;
  private static final double RIGHT = 530;
  private static final double TOP = 44;
  private static final double ROW = 46;

  /** A way of working and the longest time it allows. */
  private record Way(String name, String key) {}

  private static final List<Way> WAYS =
      List.of(
          new Way("walking on", "motion.byWalking"),
          new Way("on a turning table", "motion.byTurntable"),
          new Way("held in the hands, standing", "motion.byTremor"));

  private final Readings readings;
  private final SvgWriter svg;
  private final int first;
  private final int last;

  private ShutterLine(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, TOP + 4 * ROW + 58, idPrefix);
    double low = readings.si("light.timeHighest");
    double high = readings.si("light.timeBase");
    for (Way way : WAYS) {
      if (readings.known(way.key())) {
        low = Math.min(low, readings.si(way.key()));
        high = Math.max(high, readings.si(way.key()));
      }
    }
    first = (int) Math.floor(Num.log2(low)) - 1;
    last = (int) Math.ceil(Num.log2(high)) + 1;
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new ShutterLine(reckoning, idPrefix).figure();
  }

  private double x(double seconds) {
    return LEFT + (RIGHT - LEFT) * (Num.log2(seconds) - first) / (last - first);
  }

  private Figure figure() {
    double bottom = TOP + 4 * ROW;
    axis(bottom);
    for (int i = 0; i < WAYS.size(); i++) {
      way(WAYS.get(i), TOP + i * ROW);
    }
    light(TOP + 3 * ROW);
    readings.tabulate(
        "motion.byWalking",
        "motion.byTurntable",
        "motion.byTremor",
        "motion.rule",
        "light.timeHighest",
        "light.timeBase",
        "motion.tripod",
        "motion.dialTime",
        "motion.dialIso");
    return readings.figure(svg, "How long may the shutter be open?", description());
  }

  private void axis(double y) {
    svg.line(new Point(LEFT, y), new Point(RIGHT, y), Stroke.OUTLINE);
    int every = Thinning.every(last - first, 8);
    for (int stop = first; stop <= last; stop++) {
      double x = x(Num.pow(2, stop));
      boolean named = (stop - first) % every == 0;
      svg.line(new Point(x, y), new Point(x, y + (named ? 7 : 4)), Stroke.THIN);
      if (named) {
        svg.text(Label.small(time(stop), new Point(x, y + 22), Anchor.MIDDLE));
      }
    }
    svg.text(
        Label.small(
            "each mark is twice the time of the one before",
            new Point(LEFT, y + 44),
            Anchor.START));
  }

  /** The engraved name of a time that is so many doublings from a second. */
  private static String time(int stop) {
    if (stop >= 0) {
      return Numbers.fixed(Num.pow(2, stop), 0) + " s";
    }
    return switch (stop) {
      case -4 -> "1/15 s";
      case -5 -> "1/30 s";
      case -6 -> "1/60 s";
      case -7 -> "1/125 s";
      case -8 -> "1/250 s";
      case -9 -> "1/500 s";
      default ->
          stop > -4
              ? "1/" + Numbers.fixed(Num.pow(2, -stop), 0) + " s"
              : "1/" + Numbers.fixed(1000 * Num.pow(2, -stop - 10), 0) + " s";
    };
  }

  private void way(Way way, double y) {
    boolean known = readings.known(way.key());
    String words =
        way.name() + ": " + (known ? "up to " + readings.text(way.key()) : "no limit here");
    double end = known ? x(readings.si(way.key())) : RIGHT;
    svg.box(new Box(LEFT, y, end, y + 13), Stroke.solid(Ink.SECOND, 1), Fill.FAINT);
    svg.line(new Point(end, y - 3), new Point(end, y + 16), Stroke.solid(Ink.SECOND, 2.5));
    svg.text(Label.of(words, new Point(LEFT, y - 7), Anchor.START));
  }

  private void light(double y) {
    double from = x(readings.si("light.timeHighest"));
    double to = x(readings.si("light.timeBase"));
    svg.box(
        new Box(from, y, Math.max(to, from + 2), y + 13), Stroke.solid(Ink.ACCENT, 1), Fill.ACCENT);
    String words =
        "the light asks for "
            + readings.text("light.timeHighest")
            + " (highest ISO) to "
            + readings.text("light.timeBase")
            + " (lowest)";
    svg.text(Label.of(words, new Point(LEFT, y - 7), Anchor.START).bold());
  }

  private String description() {
    return "A line of exposure times. Walking on allows "
        + readings.text("motion.byWalking")
        + ", a turning table "
        + readings.text("motion.byTurntable")
        + ", hands "
        + readings.text("motion.byTremor")
        + ". The light asks for "
        + readings.text("light.timeHighest")
        + " at the highest ISO up to "
        + readings.text("light.timeBase")
        + " at the lowest. "
        + (readings.yes("motion.tripod")
            ? "Hands are too unsteady for that: a tripod is needed."
            : "Hands can hold at least the shortest of these.");
  }
}
