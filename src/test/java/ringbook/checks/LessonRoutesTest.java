package ringbook.checks;

import ringbook.shots.Aim.Hold;

/** Numbers of the first lessons a second time: through the pictures that a lens draws. */
final class LessonRoutesTest extends RouteTable {

  @Override
  protected void routes() {
    route("kit.sameView", LessonRoutesTest::sameView);
    route("sharp.refocus", 1e-6, LessonRoutesTest::refocus);
    route("sharp.refocusPixels", 1e-6, s -> s.given("kit.sensorWidth") / 2 * refocus(s) / pixel(s));
    route("light.pairSpread", 1e-6, LessonRoutesTest::pairSpread);
    route(
        "fitness.thinnestShown",
        s -> pixel(s) * s.given("aim.pixelsPerDetail") / picture(s, s.entry("distance.far")));
    route("fitness.smallestAcross", 1e-7, s -> smallest(s, Hold.LEVEL));
    route("fitness.smallestUp", 1e-7, s -> smallest(s, Hold.UPRIGHT));
  }

  /** The focal length at which half a full frame's diagonal subtends half the angle of this kit. */
  private static double sameView(Seen s) {
    double half = Math.atan2(s.entry("kit.diagonal") / 2, s.given("kit.focalLength"));
    return Math.hypot(0.018, 0.012) / Math.tan(half);
  }

  /** The same thing far away, drawn by the lens at its two settings. */
  private static double refocus(Seen s) {
    double near = s.entry("sharp.near") * picture(s, s.entry("sharp.near"));
    double far = s.entry("sharp.far") * picture(s, s.entry("sharp.far"));
    return (near - far) / far;
  }

  /** Two lamps of one candela each, at either end of a line; light in the middle and at a side. */
  private static double pairSpread(Seen s) {
    double lamp = s.given("place.lampDistance");
    double side = s.entry("distance.turningWidth") / 2;
    double atSide = Math.pow(lamp - side, -2) + Math.pow(lamp + side, -2);
    return Math.log(atSide / (2 * Math.pow(lamp, -2))) / Math.log(2);
  }

  /**
   * What takes up the share of a side, by trying sizes; the long side is the one across if level.
   */
  private static double smallest(Seen s, Hold longSide) {
    boolean isLong = s.scene().aim().hold() == longSide;
    double side = s.given(isLong ? "kit.sensorWidth" : "kit.sensorHeight");
    double scale = picture(s, s.given("kit.closestFocus"));
    return firstWhere(0, 1e6, size -> size * scale >= s.given("aim.fill") * side);
  }
}
