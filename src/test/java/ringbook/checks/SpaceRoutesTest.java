package ringbook.checks;

/** Missing room and the turning disc a second time: through the picture, radii and chords. */
final class SpaceRoutesTest extends RouteTable {

  @Override
  protected void routes() {
    route("room.missing", 1e-6, SpaceRoutesTest::missing);
    route("room.behind", 1e-6, SpaceRoutesTest::behind);
    route("room.discDiameter", s -> 3 * s.entry("distance.turningWidth") / 2);
    route("room.discMark", 1e-6, SpaceRoutesTest::mark);
  }

  /** By how much to shrink the ring until it is free. */
  private static double missing(Seen s) {
    double floor = s.entry("ring.radius") * Math.cos(s.given("aim.elevation"));
    double free = s.entry("room.free");
    return floor <= free ? 0 : firstWhere(0, floor, less -> floor - less <= free);
  }

  /** Areas on the sensor: what the picture of the object leaves of it. */
  private static double behind(Seen s) {
    double scale = picture(s, s.entry("distance.standoff"));
    double width = s.entry("distance.turningWidth") * scale;
    double height = s.given("subject.height") * scale;
    double sensor = s.given("kit.sensorWidth") * s.given("kit.sensorHeight");
    return (sensor - width * height) / sensor;
  }

  /** A thousand short chords of the edge, from one mark to the next. */
  private static double mark(Seen s) {
    int pieces = 1000;
    double turn = 2 * Math.PI / s.entry("ring.photos") / pieces;
    double radius = 0.75 * s.entry("distance.turningWidth");
    return pieces * 2 * radius * Math.sin(turn / 2);
  }
}
