package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/**
 * Whether the object suits kit and place, as far as numbers tell: for each reason the share of its
 * limit that is used up.
 */
final class ObjectChoice {

  private static final double WIDTH = 560;
  private static final double TOP = 64;
  private static final double ROW = 52;
  private static final double LEFT = 20;
  private static final double LIMIT = 340;
  private static final double END = 540;

  /** A reason: what is held against which limit, and how both are called. */
  private record Reason(String name, String value, String limit, String words) {}

  private static final List<Reason> REASONS =
      List.of(
          new Reason("Turn", "ring.realStep", "fitness.stepAdvised", "for this surface"),
          new Reason("Movement", "subject.sway", "distance.samplingNear", "one pixel"),
          new Reason(
              "One pixel covers", "distance.samplingFar", "distance.samplingWanted", "wanted"),
          new Reason(
              "Thin parts need", "fitness.thinnestShown", "subject.thinnest", "thinnest part"),
          new Reason("Closest focus", "kit.closestFocus", "distance.standoff", "where you stand"),
          new Reason("Ring on the floor", "ring.floorDistance", "room.free", "free room"));

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final List<String> told = new ArrayList<>();

  private ObjectChoice(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, TOP + REASONS.size() * ROW + 12, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new ObjectChoice(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    double bottom = TOP + REASONS.size() * ROW;
    svg.line(new Point(LIMIT, 34), new Point(LIMIT, bottom), Stroke.solid(Ink.INK, 1.6));
    svg.line(new Point(LEFT, 34), new Point(LEFT, bottom), Stroke.solid(Ink.FAINT, 1));
    svg.text(Label.of("the limit", new Point(LIMIT, 24), Anchor.MIDDLE).bold());
    for (int i = 0; i < REASONS.size(); i++) {
      draw(REASONS.get(i), TOP + i * ROW);
    }
    readings.tabulate("fitness.fit", "fitness.score");
    return readings.figure(svg, "What speaks for the object, in numbers", description());
  }

  private void draw(Reason reason, double y) {
    boolean both = readings.known(reason.value()) && readings.known(reason.limit());
    String words = reason.name() + " " + shown(reason.value());
    String against = shown(reason.limit()) + ", " + reason.words();
    svg.text(Label.of(words, new Point(LEFT + 8, y), Anchor.START));
    svg.text(Label.of(against, new Point(END, y), Anchor.END));
    readings.row(
        reason.name() + ", against " + reason.words(),
        shown(reason.value()) + " against " + shown(reason.limit()));
    if (!both) {
      open(reason, y);
      return;
    }
    double used = readings.si(reason.value());
    double limit = readings.si(reason.limit());
    boolean over = used > limit * (1 + 1e-9);
    double length = limit > 0 ? used / limit * (LIMIT - LEFT) : over ? END : 0;
    bar(y + 7, Math.min(length, END - LEFT), over);
    told.add(
        reason.name()
            + " "
            + shown(reason.value())
            + " against "
            + shown(reason.limit())
            + (over ? ", too much" : ""));
  }

  /** A surface for which no turn is small enough is over any limit; all else is left open. */
  private void open(Reason reason, double y) {
    boolean hopeless = reason.limit().equals("fitness.stepAdvised");
    if (hopeless) {
      bar(y + 7, END - LEFT, true);
    }
    told.add(reason.name() + (hopeless ? ": no turn is small enough" : ": open"));
  }

  private void bar(double top, double length, boolean over) {
    Box inside = new Box(LEFT, top, LEFT + Math.min(length, LIMIT - LEFT), top + 16);
    svg.box(inside, Stroke.solid(Ink.ACCENT, 1.2), over ? Fill.ACCENT : Fill.FAINT);
    if (over) {
      Box beyond = new Box(LIMIT, top, LEFT + Math.max(length, LIMIT - LEFT + 4), top + 16);
      svg.box(beyond, Stroke.dashed(Ink.ACCENT, 2, "4 3"), Fill.PAPER);
      svg.text(Label.small("too much", new Point(LIMIT + 8, top + 12), Anchor.START));
    }
  }

  private String shown(String key) {
    if (readings.known(key)) {
      return readings.text(key);
    }
    return key.equals("subject.thinnest") ? "not stated" : "none will do";
  }

  private String description() {
    return "Bars for the "
        + reckoning.scene().subject().name()
        + ", each as long as the share of a limit that is used up; beyond the line it is too much. "
        + String.join("; ", told)
        + ". Fit for kit and place: "
        + readings.text("fitness.fit")
        + ".";
  }
}
