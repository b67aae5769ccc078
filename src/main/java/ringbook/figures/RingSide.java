package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;

/**
 * One station of the ring seen from the side: floor, table, object and the camera at its height.
 * Where the ring is small against the table, the floor is left out and told in words.
 */
final class RingSide {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 420;
  private static final double LEAST_RADIUS = 95;
  private static final double LOW_TABLE = 0.03;
  private static final double FAR_OFF = 1.25;

  private final Readings readings;
  private final Scene scene;
  private final SvgWriter svg;
  private final LabelPlacer placer;
  private final double table;
  private final double halfWidth;
  private final double middle;
  private final double lens;
  private final double floor;
  private final boolean whole;
  private final View view;

  private RingSide(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    scene = reckoning.scene();
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    placer = new LabelPlacer(svg.paper().grown(-4));
    table = readings.si("place.tableHeight");
    halfWidth = readings.si("subject.width") / 2;
    middle = readings.si("ring.middleHeight");
    lens = readings.si("ring.lensHeight");
    floor = readings.si("ring.floorDistance");
    View room = View.showing(room(), new Box(120, 28, WIDTH - 130, HEIGHT - 26));
    whole = room.scale() * readings.si("ring.radius") >= LEAST_RADIUS;
    view = whole ? room : View.showing(near(), new Box(120, 50, WIDTH - 130, HEIGHT - 70));
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new RingSide(reckoning, idPrefix).figure();
  }

  private Box room() {
    double needed = Math.max(top(), lens);
    double highest = readings.si("place.highestLens");
    double high = highest <= FAR_OFF * needed ? Math.max(highest, needed) : needed;
    return new Box(-halfWidth, Math.min(0, lens), Math.max(floor, halfWidth), high);
  }

  private Box near() {
    return new Box(
        -halfWidth, Math.min(table, lens), Math.max(floor, halfWidth), Math.max(top(), lens));
  }

  private double top() {
    return table + readings.si("subject.height");
  }

  private Figure figure() {
    drawFurniture();
    drawSubject();
    drawSight();
    drawHeights();
    if (whole) {
      drawReach();
    }
    nameSubject();
    if (!whole) {
      tellFloor();
      ScaleBar.draw(
          svg, readings.lengths(), placer, new Point(WIDTH - 140, HEIGHT - 14), view.scale());
    } else {
      ScaleBar.draw(
          svg, readings.lengths(), placer, new Point(WIDTH - 140, HEIGHT - 6), view.scale());
    }
    readings.tabulate(
        "ring.radius",
        "aim.elevation",
        "ring.rise",
        "ring.floorDistance",
        "ring.lensHeight",
        "subject.height",
        "place.tableHeight",
        "place.lowestLens",
        "place.highestLens",
        "ring.reachable");
    return readings.figure(svg, "One station seen from the side", description());
  }

  private void drawFurniture() {
    double side = halfWidth + Math.max(0.25 * halfWidth, 14 / view.scale());
    Point left = view.at(-side, table);
    Point right = view.at(side, table);
    double ground = view.at(0, 0).y();
    if (whole) {
      svg.line(new Point(14, ground), new Point(WIDTH - 14, ground), Stroke.OUTLINE);
      placer.keepOff(new Point(14, ground), new Point(WIDTH - 14, ground));
      svg.text(placer.fixed(Label.small("floor", new Point(16, ground + 14), Anchor.START)));
    }
    if (table < LOW_TABLE) {
      return;
    }
    double foot = whole ? ground : Math.min(HEIGHT - 34, left.y() + 46);
    Stroke leg = Stroke.solid(Ink.FAINT, 4);
    double under = Math.min(left.y() + 7, foot);
    svg.line(new Point(left.x() + 8, under), new Point(left.x() + 8, foot), leg);
    svg.line(new Point(right.x() - 8, under), new Point(right.x() - 8, foot), leg);
    Box slab = new Box(left.x(), left.y(), right.x(), under);
    svg.box(slab, Stroke.solid(Ink.FAINT, 1), Fill.FAINT);
    placer.keepOff(slab);
  }

  private void drawSubject() {
    Point corner = view.at(-halfWidth, top());
    Point foot = view.at(halfWidth, table);
    Box body = new Box(corner.x(), corner.y(), foot.x(), foot.y());
    svg.box(body, Stroke.OUTLINE, Fill.FAINT);
    svg.dot(view.at(0, middle), 2.5, Fill.TEXT);
    placer.keepOff(body);
  }

  private void drawSight() {
    Point target = view.at(0, middle);
    Point camera = view.at(floor, lens);
    double direction = target.directionTo(camera);
    Point level = view.at(floor, middle);
    svg.line(target, level, Stroke.GUIDE);
    svg.line(target, camera, Stroke.solid(Ink.ACCENT, 1.6));
    svg.arrowHead(target, camera.directionTo(target));
    CameraMark.draw(
        svg,
        camera,
        camera.directionTo(target),
        readings.yes("ring.reachable") ? Fill.FAINT : Fill.PAPER);
    placer.keepOff(new Box(camera.x(), camera.y(), camera.x(), camera.y()).grown(22));
    placer.keepOff(target, level);
    placer.keepOff(target, camera);
    double sight = target.distanceTo(camera);
    double clear = view.scale() * halfWidth + 22;
    double arc = Math.min(Math.max(clear, Math.min(0.55 * sight, 90)), 0.75 * sight);
    double low = Math.min(0, direction);
    double high = Math.max(0, direction);
    svg.arc(target, arc, new Sweep(low, high), Stroke.solid(Ink.INK, 1.3));
    Point on = target.towards((low + high) / 2, arc);
    Label angle = Label.of(readings.text("aim.elevation"), on, Anchor.START);
    svg.text(
        placer.place(
            angle,
            List.of(
                angle.movedTo(on.plus(5, 5), Anchor.START),
                angle.movedTo(target.towards(low, arc).plus(4, 18), Anchor.START),
                angle.movedTo(target.towards(low, arc).plus(4, 30), Anchor.START))));
    Point half = target.between(camera, 0.6);
    Label text = Label.of(readings.text("ring.radius"), half, Anchor.MIDDLE);
    svg.text(
        placer.place(
            text,
            List.of(
                text.movedTo(half.plus(0, -14), Anchor.MIDDLE),
                text.movedTo(half.plus(-4, -8), Anchor.END),
                text.movedTo(half.plus(0, -26), Anchor.MIDDLE),
                text.movedTo(half.plus(0, 26), Anchor.MIDDLE))));
  }

  private void drawHeights() {
    Point foot = view.at(-halfWidth, table);
    Point head = view.at(-halfWidth, top());
    double beside = foot.x() - 26;
    heightLine(new Point(beside, foot.y()), new Point(beside, head.y()), "subject.height", -1);
    if (whole) {
      double ground = view.at(0, 0).y();
      if (table >= LOW_TABLE) {
        heightLine(new Point(beside, ground), new Point(beside, foot.y()), "place.tableHeight", -1);
      }
      Point camera = view.at(floor, lens);
      Point below = new Point(camera.x() + 9, ground);
      heightLine(below, new Point(camera.x() + 9, camera.y()), "ring.lensHeight", 1);
    }
  }

  private void heightLine(Point low, Point high, String key, int side) {
    if (low.distanceTo(high) < 3) {
      return;
    }
    new Dimension(low, high, "").drawLine(svg, placer);
    Point half = low.between(high, 0.5).plus(side * 6, 5);
    Label text = Label.of(readings.text(key), half, side < 0 ? Anchor.END : Anchor.START);
    svg.text(
        placer.place(
            text,
            List.of(
                text,
                text.movedTo(half.plus(0, 20), text.anchor()),
                text.movedTo(half.plus(0, -20), text.anchor()))));
  }

  private void drawReach() {
    reachLine("place.highestLens", "highest", -5);
    reachLine("place.lowestLens", "lowest", 14);
    if (!readings.yes("ring.reachable")) {
      Point camera = view.at(floor, lens);
      svg.text(placer.beside(Label.of("out of reach", camera, Anchor.MIDDLE).bold(), 24));
    }
  }

  private void reachLine(String key, String word, double shift) {
    double y = view.at(0, readings.si(key)).y();
    if (y < 0) {
      Label over = Label.small(word + " reach " + readings.text(key), new Point(0, 0), Anchor.END);
      svg.text(placer.fixed(over.movedTo(new Point(WIDTH - 30, 20), Anchor.END)));
      svg.line(new Point(WIDTH - 20, 24), new Point(WIDTH - 20, 12), Stroke.THIN);
      svg.arrowHead(new Point(WIDTH - 20, 8), Math.PI / 2);
      return;
    }
    double left = Math.min(view.at(floor, 0).x() - 24, WIDTH - 150);
    svg.line(new Point(left, y), new Point(WIDTH - 14, y), Stroke.dashed(Ink.SECOND, 1.2, "6 4"));
    placer.keepOff(new Point(left, y), new Point(WIDTH - 14, y));
    Point end = new Point(WIDTH - 14, y + shift);
    Label text = Label.small(word + " reach " + readings.text(key), end, Anchor.END);
    svg.text(
        placer.place(
            text, List.of(text, text.movedTo(new Point(end.x(), y + 9 - shift), Anchor.END))));
  }

  private void nameSubject() {
    Point above = view.at(0, top()).plus(0, -9);
    Label name = Label.of(scene.subject().name(), above, Anchor.MIDDLE).bold();
    svg.text(
        placer.place(
            name,
            List.of(
                name,
                name.movedTo(view.at(halfWidth, top()).plus(0, -9), Anchor.END),
                name.movedTo(above.plus(0, -18), Anchor.MIDDLE),
                name.movedTo(above.plus(0, -36), Anchor.MIDDLE))));
  }

  private void tellFloor() {
    String words =
        "table "
            + readings.text("place.tableHeight")
            + " and lens "
            + readings.text("ring.lensHeight")
            + " above the floor; "
            + reachWords();
    List<String> lines = Sentence.lines(words, Label.SMALL, WIDTH - 170);
    double y = HEIGHT - 14.0 * lines.size();
    for (String line : lines) {
      svg.text(placer.fixed(Label.small(line, new Point(14, y), Anchor.START)));
      y += 14;
    }
  }

  private String reachWords() {
    return (readings.yes("ring.reachable") ? "within reach (" : "out of reach (")
        + readings.text("place.lowestLens")
        + " to "
        + readings.text("place.highestLens")
        + ")";
  }

  private String description() {
    return "Seen from the side: the "
        + scene.subject().name()
        + ", "
        + readings.text("subject.height")
        + " tall, stands on a table "
        + readings.text("place.tableHeight")
        + " high. The lens is "
        + readings.text("ring.lensHeight")
        + " above the floor and looks at the middle of the object at an angle of "
        + readings.text("aim.elevation")
        + " from "
        + readings.text("ring.radius")
        + " away. That is "
        + reachWords()
        + ".";
  }
}
