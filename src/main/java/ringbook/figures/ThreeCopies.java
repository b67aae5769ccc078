package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/** Three copies, two kinds of storage, one of them in another building. */
final class ThreeCopies {

  private static final double WIDTH = 560;
  private static final double GROUND = 214;
  private static final double WALL = 96;
  private static final double ROOF = 44;

  private final Readings readings;
  private final SvgWriter svg;

  private ThreeCopies(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, GROUND + 56, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new ThreeCopies(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    house(20, 336, "where you work");
    house(386, 540, "another building");
    copy(98, "1 computer");
    copy(258, "2 loose disk");
    copy(463, "3 far away");
    Point from = new Point(160, 150);
    arrow(from, new Point(200, 150));
    arrow(new Point(316, 150), new Point(408, 150));
    svg.line(new Point(8, GROUND), new Point(WIDTH - 8, GROUND), Stroke.solid(Ink.FAINT, 3));
    readings.tabulate("job.files", "job.storage", "handover.copies", "handover.storage");
    return readings.figure(svg, "Three copies", description());
  }

  private void house(double left, double right, String name) {
    double eaves = GROUND - WALL - 24;
    svg.polygon(
        List.of(
            new Point(left, GROUND),
            new Point(left, eaves),
            new Point((left + right) / 2, eaves - ROOF),
            new Point(right, eaves),
            new Point(right, GROUND)),
        Stroke.OUTLINE,
        Fill.FAINT);
    Point under = new Point((left + right) / 2, GROUND + 24);
    svg.text(Label.of(name, under, Anchor.MIDDLE).bold());
  }

  private void copy(double middle, String name) {
    Box box = new Box(middle - 50, 116, middle + 50, 186);
    svg.box(box, Stroke.solid(Ink.ACCENT, 2), Fill.PAPER);
    svg.text(Label.of(name, new Point(middle, 145), Anchor.MIDDLE).bold());
    svg.text(Label.of(readings.text("job.storage"), new Point(middle, 168), Anchor.MIDDLE));
  }

  private void arrow(Point from, Point to) {
    svg.line(from, to.plus(-6, 0), Stroke.solid(Ink.INK, 2));
    svg.arrowHead(to, 0);
  }

  private String description() {
    return "Two houses. In the first, where you work, stand the first two copies: one on the"
        + " computer, one on a loose disk. In the other building is the third. Each copy takes "
        + readings.text("job.storage")
        + ", all "
        + readings.text("handover.copies")
        + " take "
        + readings.text("handover.storage")
        + ".";
  }
}
