package ringbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import ringbook.Scenes;
import ringbook.assess.HoleView;
import ringbook.ledger.Reckoning;
import ringbook.optics.Framing;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.Strip;
import ringbook.units.Angle;
import ringbook.units.Length;

/** What is in the way in plan, by a library for plane geometry: JTS Topology Suite 1.20. */
final class PlanRoutesTest extends RouteTable {

  private static final GeometryFactory PLANE = new GeometryFactory();
  private static final Point MIDDLE = PLANE.createPoint(new Coordinate(0, 0));
  private static final int DIRECTIONS = 360;

  /** Random scenes with one to three boxes and wedges about where the person would stand. */
  @Override
  protected List<Scene> scenes() {
    List<Scene> scenes = new ArrayList<>();
    Scenes.seeds()
        .forEach(
            seed -> {
              Scene plain = Scenes.random(seed);
              double reach = Reckoning.of(plain).si("room.standing");
              scenes.add(SceneDraft.of(plain).obstacles(furniture(seed, reach)).build());
            });
    return scenes;
  }

  private static List<Obstacle> furniture(long seed, double reach) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Obstacle> furniture = new ArrayList<>();
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      double away = reach * random.nextDouble(0.3, 1.6);
      double where = random.nextDouble(2 * Math.PI);
      double turned = random.nextDouble(2 * Math.PI);
      double size = reach * random.nextDouble(0.05, 0.5);
      int corners = 3 + random.nextInt(3);
      List<Corner> outline = new ArrayList<>();
      for (int c = 0; c < corners; c++) {
        double angle = turned + 2 * Math.PI * c / corners;
        outline.add(
            new Corner(
                new Length(away * Math.cos(where) + size * Math.cos(angle)),
                new Length(away * Math.sin(where) + size * Math.sin(angle))));
      }
      furniture.add(new Obstacle("thing " + i, outline));
    }
    return furniture;
  }

  @Override
  protected void routes() {
    blocked();
    stations();
    raised();
    wider();
  }

  private static List<Polygon> outlines(Seen s) {
    List<Polygon> polygons = new ArrayList<>();
    for (Obstacle obstacle : s.scene().place().obstacles()) {
      List<Corner> corners = obstacle.corners();
      Coordinate[] ring = new Coordinate[corners.size() + 1];
      for (int i = 0; i < ring.length; i++) {
        Corner corner = corners.get(i % corners.size());
        ring[i] = new Coordinate(corner.x().metres(), corner.y().metres());
      }
      polygons.add(PLANE.createPolygon(ring));
    }
    return polygons;
  }

  private static double nearest(Seen s) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Polygon polygon : outlines(s)) {
      nearest = Math.min(nearest, polygon.distance(MIDDLE));
    }
    return nearest;
  }

  private static double reach(Seen s) {
    return s.entry("ring.radius") * Math.cos(s.given("aim.elevation")) + s.given("place.bodyRoom");
  }

  private static boolean meets(List<Polygon> outlines, double reach, double direction) {
    Geometry line =
        PLANE.createLineString(
            new Coordinate[] {
              new Coordinate(0, 0),
              new Coordinate(reach * Math.cos(direction), reach * Math.sin(direction))
            });
    return outlines.stream().anyMatch(line::intersects);
  }

  /** Even directions and both sides of every corner, from 0 to a full turn. */
  private static List<Double> directions(List<Polygon> outlines) {
    List<Double> directions = new ArrayList<>();
    for (int i = 0; i <= DIRECTIONS; i++) {
      directions.add(2 * Math.PI * i / DIRECTIONS);
    }
    for (Polygon outline : outlines) {
      for (Coordinate corner : outline.getCoordinates()) {
        double towards = (Math.atan2(corner.y, corner.x) + 2 * Math.PI) % (2 * Math.PI);
        directions.add(Math.max(0, towards - 1e-7));
        directions.add(Math.min(2 * Math.PI, towards + 1e-7));
      }
    }
    directions.sort(Double::compare);
    return directions;
  }

  /** Lengths of the blocked pieces: directions tried one by one, changes found by halving. */
  private static List<Double> blockedPieces(Seen s) {
    List<Polygon> outlines = outlines(s);
    double reach = reach(s);
    List<Double> tries = directions(outlines);
    List<Double> starts = new ArrayList<>();
    List<Double> ends = new ArrayList<>();
    for (int i = 0; i + 1 < tries.size(); i++) {
      boolean before = meets(outlines, reach, tries.get(i));
      if (before != meets(outlines, reach, tries.get(i + 1))) {
        double edge =
            firstWhere(tries.get(i), tries.get(i + 1), a -> meets(outlines, reach, a) != before);
        (before ? ends : starts).add(edge);
      }
    }
    List<Double> pieces = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      double start = starts.get(i);
      double end =
          ends.stream().filter(e -> e > start).findFirst().orElse(ends.get(0) + 2 * Math.PI);
      pieces.add(end - start);
    }
    if (pieces.isEmpty() && meets(outlines, reach, 0)) {
      pieces.add(2 * Math.PI);
    }
    return pieces;
  }

  private void blocked() {
    route("room.standing", PlanRoutesTest::reach);
    route("room.free", 1e-9, s -> Math.max(0, nearest(s) - s.given("place.bodyRoom")));
    route(
        "room.blockedArc", 1e-6, s -> blockedPieces(s).stream().mapToDouble(piece -> piece).sum());
    route(
        "room.widestBlock",
        1e-6,
        s -> blockedPieces(s).stream().mapToDouble(piece -> piece).max().orElse(0));
    route("room.turntable", s -> yes(!blockedPieces(s).equals(List.of(2 * Math.PI))));
  }

  private static boolean[] free(Seen s) {
    List<Polygon> outlines = outlines(s);
    boolean[] free = new boolean[(int) s.entry("ring.photos")];
    for (int i = 0; i < free.length; i++) {
      free[i] = !meets(outlines, reach(s), 2 * Math.PI * i / free.length - Math.PI / 2);
    }
    return free;
  }

  /** The longest way from a free station to the next free one, walked twice round. */
  private static double longestTurn(Seen s) {
    boolean[] free = free(s);
    int last = -1;
    int longest = 0;
    for (int i = 0; i < 2 * free.length; i++) {
      if (free[i % free.length]) {
        longest = last < 0 ? longest : Math.max(longest, i - last);
        last = i;
      }
    }
    return longest * 2 * Math.PI / free.length;
  }

  private void stations() {
    route(
        "room.stationsLost",
        s -> {
          int lost = 0;
          for (boolean free : free(s)) {
            lost += free ? 0 : 1;
          }
          return lost;
        });
    route("room.gapTurn", PlanRoutesTest::longestTurn);
    route("room.closes", s -> yes(longestTurn(s) <= s.given("aim.stepLimit") * (1 + 1e-9)));
  }

  private static double clear(Seen s) {
    return firstWhere(
        0,
        Math.PI / 2,
        e ->
            s.entry("ring.radius") * Math.cos(e) + s.given("place.bodyRoom")
                <= Math.max(nearest(s), s.given("place.bodyRoom")));
  }

  private static double height(Seen s) {
    double flat = Math.min(s.entry("ring.radius"), s.entry("room.free"));
    double rise = Math.sqrt(s.entry("ring.radius") * s.entry("ring.radius") - flat * flat);
    return s.given("place.tableHeight") + s.given("subject.height") / 2 + rise;
  }

  private void raised() {
    // Where the ring is almost free at its own height, the elevation is all cancellation.
    route("room.raised", 1e-6, s -> clear(s) < 1e-12 ? 0 : clear(s));
    route("room.raisedHeight", 1e-8, PlanRoutesTest::height);
    route("room.raisedReach", s -> yes(height(s) <= s.given("place.highestLens") * (1 + 1e-9)));
    route(
        "room.raisedSees",
        s -> {
          double e = s.entry("room.raised");
          double x = s.entry("ring.radius") * Math.cos(e) - s.entry("distance.turningWidth") / 2;
          double z = s.entry("ring.radius") * Math.sin(e);
          return yes(x > 0 && Math.atan2(z, x) <= s.given("aim.incidenceLimit"));
        });
  }

  /** How far out the corners reach of all that comes within the room needed. */
  private static double beyond(Seen s) {
    double beyond = reach(s);
    for (Polygon polygon : outlines(s)) {
      if (polygon.distance(MIDDLE) <= reach(s)) {
        for (Coordinate corner : polygon.getCoordinates()) {
          beyond = Math.max(beyond, corner.distance(new Coordinate(0, 0)));
        }
      }
    }
    return beyond;
  }

  private static double coarse(Seen s) {
    return pixel(s) / picture(s, beyond(s) / Math.cos(s.given("aim.elevation")));
  }

  private void wider() {
    route("room.wider", PlanRoutesTest::beyond);
    route("room.widerSampling", PlanRoutesTest::coarse);
    route("room.widerLoss", s -> coarse(s) / (pixel(s) / picture(s, s.entry("distance.middle"))));
    route(
        "room.widerFine",
        s -> yes(s.given("aim.detail") / coarse(s) >= s.given("aim.pixelsPerDetail")));
    route(
        "room.widerFree",
        s -> {
          Geometry room = MIDDLE.buffer(beyond(s) + s.given("place.bodyRoom"), 4096);
          return yes(
              outlines(s).stream()
                  .noneMatch(p -> p.distance(MIDDLE) > reach(s) && p.intersects(room)));
        });
  }

  @ParameterizedTest(name = "{0} wide, {1} deep, seen from {2}°")
  @CsvSource({"0.04, 0.06, 5", "0.04, 0.06, 12", "0.04, 0.06, 30", "0.1, 0.02, 60", "0.3, 0.3, 45"})
  void floor_seen_is_the_area_common_to_two_circles(double wide, double deep, double degrees) {
    Geometry floor = MIDDLE.buffer(wide / 2, 2048);
    double aside = deep * Math.tan(Math.toRadians(degrees));
    Geometry mouth = PLANE.createPoint(new Coordinate(aside, 0)).buffer(wide / 2, 2048);
    double share = floor.intersection(mouth).getArea() / floor.getArea();
    assertThat(
            new HoleView(new Length(wide), new Length(deep)).floorShare(Angle.ofDegrees(degrees)))
        .isCloseTo(share, within(1e-6));
  }

  @ParameterizedTest(name = "field {0}, overlap {1}, length {2}")
  @CsvSource({"0.3, 0.8, 1", "0.3, 0.6, 1.3", "1, 0.7, 0.9", "0.25, 0.5, 4", "0.11, 0.9, 2"})
  void frames_of_a_strip_cover_it_and_overlap_so(double field, double overlap, double length) {
    Strip strip = new Strip(new Length(field), overlap, new Length(length));
    Geometry covered = PLANE.createPolygon();
    Geometry last = PLANE.createPolygon();
    for (int i = 0; i < strip.fewest(); i++) {
      Geometry frame = box(i * strip.base().metres(), field);
      if (i > 0) {
        assertThat(frame.intersection(last).getArea() / frame.getArea())
            .isCloseTo(overlap, within(1e-9));
      }
      covered = covered.union(frame);
      last = frame;
    }
    assertThat(box(0, length).difference(covered).getArea()).isLessThan(1e-9);
    assertThat(Framing.frames(new Length(length), new Length(field), overlap))
        .isEqualTo(strip.fewest());
  }

  private static Geometry box(double from, double width) {
    Geometry box =
        PLANE.createPolygon(
            new Coordinate[] {
              new Coordinate(from, 0),
              new Coordinate(from + width, 0),
              new Coordinate(from + width, 1),
              new Coordinate(from, 1),
              new Coordinate(from, 0)
            });
    return box;
  }
}
