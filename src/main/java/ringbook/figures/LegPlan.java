package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import ringbook.figures.Label.Anchor;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg;
import ringbook.shots.Scene;
import ringbook.shots.Station;
import ringbook.units.Num;
import ringbook.units.Words;

/**
 * One leg of a plan seen from above, to walk by: every station with its number, on the face of a
 * clock that lies on the floor with 6 on the door side.
 */
public final class LegPlan {

  private static final double WIDTH = 400;
  private static final double HEIGHT = 330;
  private static final double FACE = 146;
  private static final double STATIONS = 112;

  /** Letters a number takes along the ring, in drawing units. */
  private static final double NUMBER_ROOM = 17;

  private final Scene scene;
  private final Leg leg;
  private final List<Integer> blocked;
  private final SvgWriter svg;
  private final LabelPlacer placer;
  private final View view;

  private LegPlan(Scene scene, Leg leg, List<Integer> blocked, String idPrefix) {
    this.scene = scene;
    this.leg = leg;
    this.blocked = blocked;
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    placer = new LabelPlacer(svg.paper().grown(-2));
    double farthest = SubjectOutline.reach(scene.subject());
    for (Station station : leg.stations()) {
      farthest = Math.max(farthest, floor(station));
    }
    view = new View(STATIONS / farthest, new Point(WIDTH / 2, HEIGHT / 2));
  }

  /**
   * The drawing.
   *
   * @param blocked numbers of stations where something is in the way; they are drawn hollow
   * @param idPrefix put before every id
   */
  public static Figure draw(Scene scene, Leg leg, List<Integer> blocked, String idPrefix) {
    return new LegPlan(scene, leg, blocked, idPrefix).figure();
  }

  private static double floor(Station station) {
    return Num.hypot(station.position().x(), station.position().y());
  }

  private Figure figure() {
    List<List<Label>> names = Plan.bodies(scene.place(), view, svg.paper(), svg, placer);
    face();
    SubjectOutline.draw(svg, view, scene.subject());
    placer.keepOff(SubjectOutline.box(view, scene.subject()));
    int every = every();
    for (Station station : leg.stations()) {
      station(station, every);
    }
    Plan.write(names, svg, placer);
    String title = leg.name() + " from above";
    List<String> head = List.of("Station", "From the middle");
    List<List<String>> rows = new ArrayList<>();
    for (Station station : leg.stations()) {
      String away = scene.aim().lengths().closely(floor(station), 0) + " along the floor";
      rows.add(List.of(String.valueOf(station.number()), away));
    }
    return new Figure(title, description(), svg.svg(title, description()), head, rows);
  }

  private String description() {
    return "A clock face on the floor, 6 on the door side, with the object in its middle and "
        + Words.count(leg.stations().size(), "station")
        + " by number"
        + (blocked.isEmpty() ? "." : "; hollow ones have something in the way.");
  }

  private void face() {
    svg.circle(view.origin(), FACE, Stroke.GUIDE, Fill.NONE);
    placer.keepOff(view.origin(), FACE);
    for (int hour = 1; hour <= 12; hour++) {
      double direction = Math.PI / 2 - hour * Math.PI / 6;
      boolean large = hour % 3 == 0;
      Point rim = view.origin().towards(direction, FACE);
      svg.line(
          rim.towards(direction, large ? -8 : -4), rim, Stroke.solid(Ink.INK, large ? 1.5 : 1));
      Point at = view.origin().towards(direction, FACE + 10).plus(0, 5);
      Label name = Label.small(String.valueOf(hour), at, Anchor.MIDDLE);
      svg.text(placer.fixed(large ? name.bold() : name));
    }
  }

  /** How many stations share one number, so that numbers do not touch. */
  private int every() {
    double nearest = Double.POSITIVE_INFINITY;
    Station before = null;
    for (Station station : leg.stations()) {
      if (before != null) {
        nearest = Math.min(nearest, outside(station).distanceTo(outside(before)));
      }
      before = station;
    }
    for (int every : new int[] {1, 2, 5}) {
      if (nearest * every >= NUMBER_ROOM) {
        return every;
      }
    }
    return 10;
  }

  private Point outside(Station station) {
    double away = view.scale() * floor(station);
    return view.origin().towards(station.azimuth().radians(), away + 16);
  }

  private void station(Station station, int every) {
    Point at = view.at(station.position().x(), station.position().y());
    Vec3 looks = station.target().minus(station.position());
    if (Num.hypot(looks.x(), looks.y()) > 1e-6) {
      double inwards = Num.atan2(looks.y(), looks.x());
      svg.line(at, at.towards(inwards, 11), Stroke.solid(Ink.ACCENT, 2));
    }
    placer.keepOff(at, at);
    if (blocked.contains(station.number())) {
      svg.circle(at, 3.6, Stroke.solid(Ink.ACCENT, 1.4), Fill.PAPER);
    } else {
      svg.dot(at, 3.2, Fill.ACCENT);
    }
    int number = station.number();
    boolean first = station.equals(leg.stations().get(0));
    if (first || number % every == 0) {
      Label label = Label.small(String.valueOf(number), outside(station).plus(0, 4), Anchor.MIDDLE);
      svg.text(placer.fixed(first ? label.bold() : label));
    }
  }
}
