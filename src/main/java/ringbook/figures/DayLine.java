package ringbook.figures;

import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/** The session as a line of minutes, in full and as the smaller plan, at one scale. */
final class DayLine {

  private static final double WIDTH = 560;
  private static final double LEFT = 14;
  private static final double LONGEST = 532;
  private static final double THICK = 34;
  private static final int MOST_TICKS = 40;
  private static final String[] PARTS = {"set up", "shoot", "check"};

  private final Readings readings;
  private final SvgWriter svg;
  private final double scale;

  private DayLine(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, 220, idPrefix);
    scale = LONGEST / Math.max(readings.si("job.day"), readings.si("job.fewestDay"));
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new DayLine(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    bar(46, "job.day", readings.si("job.ringTime"));
    title(28, "The full plan", "job.photos", "job.day");
    double fewer = readings.si("ring.fewest") * readings.si("aim.secondsPerPhoto");
    bar(146, "job.fewestDay", fewer);
    title(128, "The smaller plan", "job.fewest", "job.fewestDay");
    readings.tabulate(
        "job.photos",
        "job.ringTime",
        "job.time",
        "job.day",
        "job.fewest",
        "job.fewestTime",
        "job.fewestDay");
    return readings.figure(svg, "How long the day is", description());
  }

  private void title(double y, String plan, String photos, String day) {
    String told = readings.text(photos) + " photographs, " + readings.text(day) + " in all";
    svg.text(Label.of(plan + ": " + told, new Point(LEFT, y), Anchor.START).bold());
  }

  /** Three equal parts; the middle one is cut where a ring ends. */
  private void bar(double top, String day, double ring) {
    double part = scale * readings.si(day) / PARTS.length;
    for (int i = 0; i < PARTS.length; i++) {
      double x = LEFT + i * part;
      Fill fill = i == 1 ? Fill.FAINT : Fill.PAPER;
      svg.box(new Box(x, top, x + part, top + THICK), Stroke.OUTLINE, fill);
      if (TextWidth.of(PARTS[i], Label.SIZE) < part - 8) {
        Point under = new Point(x + part / 2, top + THICK + 17);
        svg.text(Label.of(PARTS[i], under, Anchor.MIDDLE));
      }
    }
    int rings = (int) readings.si("rings.count");
    for (int i = 1; i <= rings && rings <= MOST_TICKS && i * ring * scale < part; i++) {
      double x = LEFT + part + i * ring * scale;
      Stroke pen = Stroke.solid(Ink.ACCENT, 1.6);
      svg.line(new Point(x, top + 6), new Point(x, top + THICK - 6), pen);
    }
  }

  private String description() {
    return "Two bars of minutes at one scale, each in three equal parts: set up, shoot, check. In"
        + " the middle part a mark stands where each ring ends. The full plan: "
        + readings.text("job.photos")
        + " photographs, "
        + readings.text("job.time")
        + " of shooting, "
        + readings.text("job.day")
        + " in all. The smaller plan: "
        + readings.text("job.fewest")
        + " photographs, "
        + readings.text("job.fewestTime")
        + " of shooting, "
        + readings.text("job.fewestDay")
        + " in all.";
  }
}
