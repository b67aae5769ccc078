package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import ringbook.figures.Label.Anchor;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.Scene;
import ringbook.shots.ShotPlan;
import ringbook.shots.ShotPlan.Shot;
import ringbook.shots.Station;
import ringbook.units.Num;

/** A plan of several legs: all stations seen from above, or from the side. */
public final class ShotRings {

  private static final double TICK = 11;

  /** Height of a line of the list below. */
  private static final double ROW = 17;

  private static final Box LARGE = new Box(0, 0, 560, 490);

  /** For half the width of a page, where the letters of a large one could not be read. */
  private static final Box SMALL = new Box(0, 0, 360, 330);

  private final double width;
  private final double height;

  /** Whether legs stand by number, with their names in a list below. */
  private final boolean isListed;

  private final Scene scene;
  private final ShotPlan plan;
  private final SvgWriter svg;
  private final LabelPlacer placer;

  private ShotRings(Scene scene, ShotPlan plan, Box paper, String idPrefix) {
    this.scene = scene;
    this.plan = plan;
    width = paper.width();
    height = paper.height();
    isListed = paper.equals(LARGE);
    int rows = (plan.legs().size() + 1) / 2;
    double list = isListed ? ROW * rows + 8 : 0;
    svg = new SvgWriter(width, height + list, idPrefix);
    placer = new LabelPlacer(paper.grown(-4));
  }

  /**
   * Seen from above: every station a tick that points where it looks, legs numbered at their first
   * and named in a list below.
   *
   * @param idPrefix put before every id
   */
  public static Figure above(Scene scene, ShotPlan plan, String idPrefix) {
    return new ShotRings(scene, plan, LARGE, idPrefix).fromAbove();
  }

  /** As {@link #above} on a smaller paper, beside {@link #smallSide}, which names the legs. */
  public static Figure smallAbove(Scene scene, ShotPlan plan, String idPrefix) {
    return new ShotRings(scene, plan, SMALL, idPrefix).fromAbove();
  }

  /**
   * Seen from the side: how high and how far from the middle each leg is.
   *
   * @param idPrefix put before every id
   */
  public static Figure side(Scene scene, ShotPlan plan, String idPrefix) {
    return new ShotRings(scene, plan, LARGE, idPrefix).fromTheSide();
  }

  /** As {@link #side} on a smaller paper. */
  public static Figure smallSide(Scene scene, ShotPlan plan, String idPrefix) {
    return new ShotRings(scene, plan, SMALL, idPrefix).fromTheSide();
  }

  private static double floor(Station station) {
    return Num.hypot(station.position().x(), station.position().y());
  }

  private double farthest() {
    double farthest = SubjectOutline.reach(scene.subject());
    for (Shot shot : plan.shots()) {
      farthest = Math.max(farthest, floor(shot.station()));
    }
    return farthest;
  }

  private Figure fromAbove() {
    double half = height / 2 - 42;
    View view = new View(half / farthest(), new Point(width / 2, height / 2 - 4));
    List<List<Label>> names =
        Plan.bodies(scene.place(), view, new Box(0, 0, width, height), svg, placer);
    SubjectOutline.draw(svg, view, scene.subject());
    for (Leg leg : plan.legs()) {
      for (Station station : leg.stations()) {
        tick(view, station, leg.setup().pose());
      }
    }
    for (int i = 0; isListed && i < plan.legs().size(); i++) {
      Station first = plan.legs().get(i).stations().get(0);
      Point at = view.at(first.position().x(), first.position().y());
      svg.text(placer.beside(Label.small(String.valueOf(i + 1), at, Anchor.MIDDLE).bold(), 5));
    }
    list();
    Plan.write(names, svg, placer);
    ScaleBar.draw(svg, scene.aim().lengths(), placer, new Point(16, height - 16), view.scale());
    String text =
        "Seen from above, the door side below: the stations of all legs, each a tick that points"
            + " where it looks"
            + (isListed ? ", with the number of the leg at its first" : "")
            + "; hollow ones are for the object turned over.";
    return figure("All stations seen from above", text);
  }

  private void tick(View view, Station station, Pose pose) {
    Vec3 looks = station.target().minus(station.position());
    Point at = view.at(station.position().x(), station.position().y());
    double flat = Num.hypot(looks.x(), looks.y());
    Point to = view.at(station.target().x(), station.target().y());
    if (flat > 1e-6) {
      double length = TICK * flat / looks.norm();
      svg.line(at, at.towards(at.directionTo(to), length), Stroke.solid(Ink.ACCENT, 1.4));
    }
    mark(at, pose);
  }

  private void mark(Point at, Pose pose) {
    if (pose == Pose.STANDING) {
      svg.dot(at, 2.4, Fill.ACCENT);
    } else {
      svg.circle(at, 2.6, Stroke.solid(Ink.ACCENT, 1.2), Fill.PAPER);
    }
    placer.keepOff(at, at);
  }

  private Figure fromTheSide() {
    double table = scene.place().tableHeight().metres();
    double top = table + scene.subject().height().metres();
    double half = SubjectOutline.reach(scene.subject());
    double high = top;
    double low = table;
    for (Shot shot : plan.shots()) {
      high = Math.max(high, shot.station().position().z());
      low = Math.min(low, shot.station().position().z());
    }
    double room = 0.06 * (high - low);
    Box metres = new Box(-half, low - room, farthest(), high + room);
    View view = View.showing(metres, new Box(20, 30, width - 130, height - 40));
    Point left = view.at(-1.3 * half, table);
    Point right = view.at(1.3 * half, table);
    svg.box(
        new Box(left.x(), left.y(), right.x(), left.y() + 7),
        Stroke.solid(Ink.FAINT, 1),
        Fill.FAINT);
    Point corner = view.at(-half, top);
    Point foot = view.at(half, table);
    Box body = new Box(corner.x(), corner.y(), foot.x(), foot.y());
    svg.box(body, Stroke.OUTLINE, Fill.FAINT);
    placer.keepOff(body);
    for (Leg leg : plan.legs()) {
      for (Station station : leg.stations()) {
        mark(view.at(floor(station), station.position().z()), leg.setup().pose());
      }
    }
    for (int i = 0; i < plan.legs().size(); i++) {
      Station first = plan.legs().get(i).stations().get(0);
      Point at = view.at(floor(first), first.position().z());
      String text = isListed ? (i + 1) + ": " + height(first) : name(i) + ", " + height(first);
      Label name = Label.small(text, at, Anchor.START);
      List<Label> places = new ArrayList<>();
      for (int row = 0; row < 6; row++) {
        places.add(name.movedTo(at.plus(9, 4 + 13 * row), Anchor.START));
        places.add(name.movedTo(at.plus(9, 4 - 13 * row), Anchor.START));
      }
      svg.text(placer.place(name, places));
    }
    list();
    ScaleBar.draw(svg, scene.aim().lengths(), placer, new Point(16, height - 10), view.scale());
    String description =
        "Seen from the side: the object on its table, and every station by its height and its"
            + " distance along the floor"
            + (isListed ? ", with the number of the leg at its first" : "")
            + "; hollow ones are for the object turned over.";
    return figure("Heights and distances of all legs", description);
  }

  /** Which number is which leg, in two columns. */
  private void list() {
    int half = (plan.legs().size() + 1) / 2;
    for (int i = 0; isListed && i < plan.legs().size(); i++) {
      double x = i < half ? 16 : width / 2 + 8;
      Point at = new Point(x, height + ROW * (i % half + 1) - 4);
      svg.text(Label.small(name(i), at, Anchor.START));
    }
  }

  /** {@code 1: ring A}, or the name alone. */
  private String name(int leg) {
    return (isListed ? (leg + 1) + ": " : "") + plan.legs().get(leg).name();
  }

  private String told(double metres) {
    return scene.aim().lengths().closely(metres, 0).replace('\u00a0', ' ');
  }

  private String height(Station station) {
    return told(station.lensHeight().metres()) + " high";
  }

  private Figure figure(String title, String description) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < plan.legs().size(); i++) {
      Leg leg = plan.legs().get(i);
      Station first = leg.stations().get(0);
      rows.add(
          List.of(
              name(i),
              String.valueOf(leg.photos()),
              height(first),
              told(floor(first)) + " along the floor"));
    }
    List<String> head = List.of("Leg", "Photographs", "First lens", "From the middle");
    return new Figure(title, description, svg.svg(title, description), head, rows);
  }
}
