package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.assess.Standing;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Ring;
import ringbook.shots.Scene;
import ringbook.shots.Station;
import ringbook.shots.Subject;
import ringbook.units.Length;
import ringbook.units.Num;

/** The ring seen from above: stations as numbered ticks that point at the object. */
final class RingPlan {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 490;
  private static final double RADIUS = 160;
  private static final double NUMBER_ROOM = 17;
  private static final double NUMBER_GAP = 25;

  private final Readings readings;
  private final Scene scene;
  private final SvgWriter svg;
  private final LabelPlacer placer;
  private final View view;
  private final double radius;
  private final List<Station> stations;
  private final List<Integer> blocked = new ArrayList<>();
  private final List<String> inTheWay = new ArrayList<>();

  private RingPlan(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    scene = reckoning.scene();
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    placer = new LabelPlacer(svg.paper().grown(-4));
    double floor = readings.si("ring.floorDistance");
    double reach = Math.max(floor, SubjectOutline.reach(scene.subject()) * 0.8);
    view = new View(RADIUS / reach, new Point(WIDTH / 2, HEIGHT / 2 - 6));
    radius = view.scale() * floor;
    stations =
        new Ring(
                new Length(readings.si("ring.middleHeight")),
                new Length(readings.si("ring.radius")),
                scene.aim().elevation(),
                (int) readings.si("ring.photos"))
            .stations();
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new RingPlan(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    List<List<Label>> names = drawObstacles();
    svg.circle(view.origin(), radius, Stroke.GUIDE, Fill.NONE);
    SubjectOutline.draw(svg, view, scene.subject());
    drawStations();
    drawTurn();
    drawNumbers();
    drawRadius();
    nameSubject();
    Plan.write(names, svg, placer);
    ScaleBar.draw(svg, readings.lengths(), placer, new Point(16, HEIGHT - 16), view.scale());
    if (!blocked.isEmpty()) {
      drawKey();
    }
    tabulate();
    return readings.figure(svg, "The ring seen from above", description());
  }

  private List<List<Label>> drawObstacles() {
    List<List<Label>> names = new ArrayList<>();
    for (Obstacle obstacle : scene.place().obstacles()) {
      List<Label> places = Plan.body(obstacle, view, svg.paper(), svg, placer);
      names.add(places.isEmpty() ? pointOff(obstacle) : places);
    }
    return names;
  }

  /** An arrow at the edge of the paper towards something that lies beyond it. */
  private List<Label> pointOff(Obstacle obstacle) {
    Point nearest = Plan.nearest(Plan.outline(obstacle.corners(), view), view.origin());
    double direction = view.origin().directionTo(nearest);
    Box edge = svg.paper().grown(-6);
    double across = Math.abs(Num.cos(direction)) * HEIGHT;
    double up = Math.abs(Num.sin(direction)) * WIDTH;
    double reach =
        across > up
            ? edge.width() / 2 / Math.abs(Num.cos(direction))
            : (edge.height() / 2 - 8) / Math.abs(Num.sin(direction));
    Point tip = view.origin().towards(direction, reach);
    svg.line(tip.towards(direction, -16), tip, Stroke.THIN);
    svg.arrowHead(tip, direction);
    placer.keepOff(tip.towards(direction, -16), tip);
    Point beside = tip.towards(direction, -8).plus(8, 4);
    return LabelPlacer.around(Label.small(obstacle.name(), beside, Anchor.START), 0);
  }

  private void drawStations() {
    double crowd = 2 * Math.PI * radius / stations.size();
    double size = Math.max(1, Math.min(3.2, crowd / 3.4));
    for (Station station : stations) {
      Point at = view.at(station.position().x(), station.position().y());
      double inwards = at.directionTo(view.origin());
      boolean free = free(station);
      svg.open("station", String.valueOf(station.number()));
      svg.line(
          at.towards(inwards, size),
          at.towards(inwards, size + 10),
          Stroke.solid(Ink.ACCENT, Math.min(2.5, size)));
      if (free) {
        svg.dot(at, size, Fill.ACCENT);
      } else {
        svg.circle(at, size + 0.8, Stroke.solid(Ink.ACCENT, Math.min(1.6, size)), Fill.PAPER);
      }
      svg.close();
      placer.keepOff(at, at.towards(inwards, size + 10));
    }
  }

  private boolean free(Station station) {
    Length room = new Length(readings.si("room.standing"));
    List<String> names = Standing.inTheWay(scene.place(), room, station.azimuth());
    if (names.isEmpty()) {
      return true;
    }
    blocked.add(station.number());
    for (String name : names) {
      if (!inTheWay.contains(name)) {
        inTheWay.add(name);
      }
    }
    return false;
  }

  private void drawNumbers() {
    double around = 2 * Math.PI * (radius + NUMBER_ROOM);
    int every = Thinning.every(stations.size(), around / NUMBER_GAP);
    for (Station station : stations) {
      boolean closing = stations.size() - station.number() + 1 < every;
      if ((station.number() == 1 || station.number() % every == 0) && !closing) {
        Point at = view.origin().towards(station.azimuth().radians(), radius + NUMBER_ROOM);
        String number = String.valueOf(station.number());
        svg.text(placer.fixed(Label.small(number, at.plus(0, 4), Anchor.MIDDLE)));
      }
    }
  }

  /** The turn between the first two stations, and the straight way between them. */
  private void drawTurn() {
    Point middle = view.origin();
    double first = stations.get(0).azimuth().radians();
    double second = stations.get(1).azimuth().radians();
    Point a = middle.towards(first, radius);
    Point b = middle.towards(second, radius);
    Stroke ray = Stroke.solid(Ink.INK, 0.8);
    svg.line(middle, middle.towards(first, radius - 16), ray);
    svg.line(middle, middle.towards(second, radius - 16), ray);
    placer.keepOff(middle, a);
    placer.keepOff(middle, b);
    double arc = 0.64 * radius;
    svg.arc(middle, arc, new Sweep(first, second), Stroke.solid(Ink.INK, 1.3));
    double across = (first + second) / 2;
    Label turn = Label.of("turn " + readings.text("ring.realStep"), middle, Anchor.START);
    Label after = turn.movedTo(middle.towards(second, arc).plus(8, 6), Anchor.START);
    Label before = turn.movedTo(middle.towards(first, arc).plus(-8, 6), Anchor.END);
    svg.text(placer.place(turn, List.of(after, before)));
    double outside = NUMBER_ROOM + 15;
    Point from = a.towards(across, outside);
    Point to = b.towards(across, outside);
    svg.line(a.towards(across, outside - 6), a.towards(across, outside + 4), ray);
    svg.line(b.towards(across, outside - 6), b.towards(across, outside + 4), ray);
    Dimension chord = new Dimension(from, to, readings.text("ring.chord"));
    chord.drawLine(svg, placer);
    Label text = Label.of(chord.text(), to, Anchor.START);
    Point end = to.towards(from.directionTo(to), 18).plus(0, 5);
    svg.text(placer.place(text, List.of(text.movedTo(end, Anchor.START))));
  }

  private void drawRadius() {
    double direction = stations.get(0).azimuth().radians();
    double wanted = Math.PI * 1.12;
    for (Station station : stations) {
      boolean nearer =
          Math.abs(station.azimuth().radians() - wanted) < Math.abs(direction - wanted);
      direction =
          nearer && !blocked.contains(station.number()) ? station.azimuth().radians() : direction;
    }
    Point middle = view.origin();
    svg.dot(middle, 2, Fill.TEXT);
    Point end = middle.towards(direction, radius - 15);
    Point on = middle.towards(direction, 0.6 * radius);
    Label label = Label.of(readings.text("ring.floorDistance"), on.plus(0, 5), Anchor.MIDDLE);
    svg.lineAround(middle, end, label.box().grown(2), Stroke.THIN);
    svg.arrowHead(end, direction);
    placer.keepOff(middle, end);
    svg.text(placer.fixed(label));
  }

  private void nameSubject() {
    double below = SubjectOutline.halfDepth(scene.subject()) * view.scale();
    Label name = Label.of(scene.subject().name(), view.origin(), Anchor.MIDDLE).bold();
    svg.text(
        placer.place(
            name,
            List.of(
                name.movedTo(view.origin().plus(0, -below - 8), Anchor.MIDDLE),
                name.movedTo(view.origin().plus(0, below + 17), Anchor.MIDDLE),
                name.movedTo(view.origin().plus(0, -below - 28), Anchor.MIDDLE))));
  }

  private void drawKey() {
    String words = blockedWords();
    List<String> lines = Sentence.lines(words, Label.SMALL, 300);
    double top = HEIGHT - 14 - 15.0 * (lines.size() - 1);
    double left = WIDTH - 330;
    svg.circle(new Point(left, top - 4), 4, Stroke.solid(Ink.ACCENT, 1.6), Fill.PAPER);
    for (int i = 0; i < lines.size(); i++) {
      Point at = new Point(left + 10, top + 15.0 * i);
      svg.text(placer.fixed(Label.small(lines.get(i), at, Anchor.START)));
    }
  }

  private String blockedWords() {
    return "blocked by "
        + Sentence.list(inTheWay)
        + ": "
        + (blocked.size() == 1 ? "station " : "stations ")
        + Sentence.runs(blocked);
  }

  private void tabulate() {
    readings.tabulate(
        "ring.photos", "ring.realStep", "ring.floorDistance", "ring.chord", "subject.width");
    if (scene.subject().outline() == Subject.Outline.RECTANGULAR) {
      readings.tabulate("subject.depth");
    }
    readings.row("Blocked stations", blocked.isEmpty() ? "none" : Sentence.runs(blocked));
  }

  private String description() {
    return "Seen from above: "
        + readings.text("ring.photos")
        + " numbered stations lie evenly on a circle round the "
        + scene.subject().name()
        + ", which is "
        + readings.text("subject.width")
        + " wide, each pointing at its middle. The circle has a radius of "
        + readings.text("ring.floorDistance")
        + "; from one station to the next it is a turn of "
        + readings.text("ring.realStep")
        + ", "
        + readings.text("ring.chord")
        + " in a straight line. "
        + (blocked.isEmpty()
            ? "No station is blocked."
            : "Hollow marks are " + blockedWords() + ".");
  }
}
