package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;

/** The whole job as a walk with ten stops round the object, each with its number of the scene. */
final class JobPath {

  private static final double WIDTH = 560;
  private static final double ROW = 62;
  private static final double TOP = 62;
  private static final double HALF = 58;
  private static final int SIDE = 5;
  private static final double TEXT = 192;

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final List<Stop> stops;

  /** A stop: what is done there, and its number. */
  private record Stop(String name, String number) {}

  private JobPath(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, TOP + (SIDE - 1) * ROW + 74, idPrefix);
    stops =
        List.of(
            new Stop("Choose the object", readings.yes("fitness.fit") ? "fit" : "a hard one"),
            new Stop("Know your camera", told("kit.megapixels", "", " megapixels")),
            new Stop("Find the distance", told("distance.standoff", "near face at ", "")),
            new Stop("Focus, and lock it", told("sharp.focus", "at ", "")),
            new Stop("Light, steady hand", told("motion.dialTime", "", "") + iso()),
            new Stop("Walk the rings", rings()),
            new Stop("Top, holes, edges", told("rings.topViews", "", " over the top")),
            new Stop("The underside", underside()),
            new Stop("True size", told("kit.barCount", "scale bars: ", "")),
            new Stop("Check, hand over", told("job.photos", "", " photographs")));
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new JobPath(reckoning, idPrefix).figure();
  }

  private String told(String key, String before, String after) {
    return readings.known(key) ? before + readings.text(key) + after : "open";
  }

  private String iso() {
    return readings.known("motion.dialIso") ? ", ISO " + readings.text("motion.dialIso") : "";
  }

  private String rings() {
    return readings.known("rings.count")
        ? readings.count("rings.count", "ring") + told("ring.photos", " of ", "")
        : "open";
  }

  private String underside() {
    return readings.si("aim.poses") > 1 ? told("pose.photos", "", " more") : "not taken here";
  }

  private Figure figure() {
    drawPath();
    for (int i = 0; i < stops.size(); i++) {
      drawStop(i);
    }
    drawMiddle();
    readings.tabulate(
        "fitness.fit",
        "kit.megapixels",
        "distance.standoff",
        "sharp.focus",
        "motion.dialTime",
        "motion.dialIso",
        "rings.count",
        "ring.photos",
        "rings.topViews",
        "aim.poses",
        "kit.barCount",
        "job.photos",
        "job.time",
        "job.storage");
    return readings.figure(svg, "The job on one page", description());
  }

  /** Down the right side, up the left one. */
  private Point at(int stop) {
    boolean right = stop < SIDE;
    int row = right ? stop : 2 * SIDE - 1 - stop;
    return new Point(WIDTH / 2 + (right ? HALF : -HALF), TOP + row * ROW);
  }

  private void drawPath() {
    Stroke pen = Stroke.solid(Ink.FAINT, 3);
    double bottom = TOP + (SIDE - 1) * ROW;
    svg.line(at(0), at(SIDE - 1), pen);
    svg.line(at(SIDE), at(2 * SIDE - 1), pen);
    Sweep under = new Sweep(Math.PI, 2 * Math.PI);
    svg.arc(new Point(WIDTH / 2, bottom), HALF, under, pen);
    // The way in and the way out leave the top open: the walk ends where it began.
    svg.arc(
        new Point(WIDTH / 2, TOP),
        HALF,
        new Sweep(0.3, Math.PI - 0.3),
        Stroke.dashed(Ink.FAINT, 2, "5 4"));
  }

  private void drawStop(int stop) {
    Point at = at(stop);
    boolean right = stop < SIDE;
    svg.circle(at, 14, Stroke.solid(Ink.ACCENT, 2), Fill.PAPER);
    svg.text(Label.of(String.valueOf(stop + 1), at.plus(0, 5), Anchor.MIDDLE).bold());
    double x = at.x() + (right ? 22 : -22);
    Anchor anchor = right ? Anchor.START : Anchor.END;
    svg.text(Label.of(stops.get(stop).name(), new Point(x, at.y() - 2), anchor).bold());
    String number = Sentence.fitted(stops.get(stop).number(), Label.SIZE, TEXT);
    svg.text(Label.of(number, new Point(x, at.y() + 16), anchor));
  }

  private void drawMiddle() {
    String name = reckoning.scene().subject().name();
    List<String> lines = new ArrayList<>(Sentence.lines(name, Label.SMALL, 2 * HALF - 44));
    double y = TOP + (SIDE - 1) * ROW / 2 - 8 * (lines.size() - 1);
    for (String line : lines) {
      String fitted = Sentence.fitted(line, Label.SMALL, 2 * HALF - 40);
      svg.text(Label.small(fitted, new Point(WIDTH / 2, y), Anchor.MIDDLE));
      y += 16;
    }
  }

  private String description() {
    List<String> told = new ArrayList<>();
    for (int i = 0; i < stops.size(); i++) {
      told.add((i + 1) + " " + stops.get(i).name() + " (" + stops.get(i).number() + ")");
    }
    return "A walk round the "
        + reckoning.scene().subject().name()
        + " with ten stops: "
        + Sentence.list(told)
        + ". In all it takes "
        + readings.text("job.photos")
        + " photographs, "
        + readings.text("job.time")
        + " at the camera and "
        + readings.text("job.storage")
        + " of storage.";
  }
}
