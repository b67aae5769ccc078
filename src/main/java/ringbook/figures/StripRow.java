package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/**
 * A row of photographs along a face that is three footprints long: what each one covers, and how
 * many of them hold a spot; with the frames beyond both ends drawn hollow.
 */
final class StripRow {

  private static final double WIDTH = 560;
  private static final double LEFT = 116;
  private static final double LENGTH = 330;
  private static final double FOOTPRINTS = 3;
  private static final double ROW = 13;
  private static final double TOP = 46;
  private static final int MOST = 40;

  private final Readings readings;
  private final double footprint = LENGTH / FOOTPRINTS;
  private final double base;
  private final int frames;
  private final SvgWriter svg;

  private StripRow(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    base = (1 - readings.si("aim.stripOverlap")) * footprint;
    frames = Math.min(MOST, (int) Math.ceil(LENGTH / base - 1e-9) + 1);
    svg = new SvgWriter(WIDTH, bottom() + 78, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new StripRow(reckoning, idPrefix).figure();
  }

  private double bottom() {
    return TOP + frames * ROW + 10;
  }

  /** Where the middle of a frame lies; the first and the last one look at the ends. */
  private double middle(int frame) {
    return LEFT + frame * LENGTH / (frames - 1);
  }

  private Figure figure() {
    for (int i = 0; i < frames; i++) {
      frame(i);
    }
    svg.text(Label.small("first end", new Point(LEFT, 20), Anchor.MIDDLE));
    svg.text(Label.small("other end", new Point(LEFT + LENGTH, 20), Anchor.MIDDLE));
    for (double x : new double[] {LEFT, LEFT + LENGTH}) {
      svg.line(new Point(x, 26), new Point(x, bottom()), Stroke.GUIDE);
    }
    Box face = new Box(LEFT, bottom(), LEFT + LENGTH, bottom() + 14);
    svg.box(face, Stroke.OUTLINE, Fill.FAINT);
    svg.text(Label.of("the face", new Point(LEFT - 10, bottom() + 12), Anchor.END));
    counts();
    readings.tabulate("aim.stripOverlap", "strip.imagesPerPoint");
    return readings.figure(svg, "A strip by thirds", description());
  }

  private void frame(int number) {
    double y = TOP + number * ROW;
    double x = middle(number);
    boolean end = number == 0 || number == frames - 1;
    Box box = new Box(x - footprint / 2, y, x + footprint / 2, y + ROW - 5);
    svg.box(box, Stroke.solid(Ink.ACCENT, 1.4), end ? Fill.PAPER : Fill.FAINT);
    svg.dot(new Point(x, y + (ROW - 5) / 2), 2.2, Fill.ACCENT);
  }

  /** How many frames hold the face, at places along it. */
  private void counts() {
    double y = bottom() + 36;
    svg.text(Label.small("frames that", new Point(LEFT - 10, y - 4), Anchor.END));
    svg.text(Label.small("hold it", new Point(LEFT - 10, y + 10), Anchor.END));
    int places = 12;
    for (int i = 0; i < places; i++) {
      double x = LEFT + LENGTH * (i + 0.5) / places;
      svg.text(Label.of(String.valueOf(held(x)), new Point(x, y + 2), Anchor.MIDDLE));
    }
    svg.text(
        Label.small(
            "overlap " + readings.text("aim.stripOverlap") + "; hollow: the two end frames",
            new Point(LEFT + LENGTH / 2, y + 28),
            Anchor.MIDDLE));
  }

  private int held(double x) {
    int count = 0;
    for (int i = 0; i < frames; i++) {
      count += Math.abs(x - middle(i)) < footprint / 2 - 1e-6 ? 1 : 0;
    }
    return count;
  }

  private String description() {
    List<String> counts = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      counts.add(String.valueOf(held(LEFT + LENGTH * (3 * i + 0.5) / 12)));
    }
    return "A face three footprints long and the row of "
        + frames
        + " photographs along it, each overlapping the next by "
        + readings.text("aim.stripOverlap")
        + ". The first and the last one look at the ends of the face and reach beyond them. From"
        + " end to end a spot is held by "
        + Sentence.list(counts)
        + " of them.";
  }
}
