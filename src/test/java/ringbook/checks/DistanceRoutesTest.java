package ringbook.checks;

import ringbook.shots.Aim.Hold;
import ringbook.shots.Subject.Outline;

/** Distance, framing, sampling and sharpness a second time, through pictures of the object. */
final class DistanceRoutesTest extends RouteTable {

  @Override
  protected void routes() {
    frame();
    standoff();
    sampling();
    twice();
    raised();
    sharp();
  }

  private static double turning(Seen s) {
    return s.scene().subject().outline() == Outline.ROUND
        ? s.given("subject.width")
        : Math.hypot(s.given("subject.width"), s.given("subject.depth"));
  }

  private static boolean upright(Seen s) {
    return s.scene().aim().hold() == Hold.UPRIGHT;
  }

  private static double up(Seen s) {
    return s.given(upright(s) ? "kit.sensorWidth" : "kit.sensorHeight");
  }

  private static double across(Seen s) {
    return s.given(upright(s) ? "kit.sensorHeight" : "kit.sensorWidth");
  }

  /** Whether the picture of the object keeps to the share of the frame it may fill. */
  private static boolean fits(Seen s, double distance) {
    double size = picture(s, distance);
    return size * turning(s) <= s.given("aim.fill") * across(s)
        && size * s.given("subject.height") <= s.given("aim.fill") * up(s);
  }

  private static double stand(Seen s) {
    double closest = s.given("kit.closestFocus");
    return fits(s, closest) ? closest : firstWhere(closest, 1e9, u -> fits(s, u));
  }

  private static double far(Seen s) {
    return stand(s) + turning(s);
  }

  /** Widest shadow of a rectangle as it turns, by trying every direction of a quarter turn. */
  private static double widestShadow(Seen s) {
    double widest = 0;
    for (int i = 0; i <= 20_000; i++) {
      double angle = Math.PI / 2 * i / 20_000;
      double shadow =
          s.given("subject.width") * Math.cos(angle) + s.given("subject.depth") * Math.sin(angle);
      widest = Math.max(widest, shadow);
    }
    return widest;
  }

  private void frame() {
    route(
        "kit.megapixels", s -> s.given("kit.pixelsAcross") / 1e3 * s.given("kit.pixelsDown") / 1e3);
    route(
        "distance.turningWidth",
        1e-8,
        s -> s.scene().subject().outline() == Outline.ROUND ? turning(s) : widestShadow(s));
    route("distance.sideUp", DistanceRoutesTest::up);
    route("distance.sideAcross", DistanceRoutesTest::across);
    route("distance.alongLong", s -> upright(s) ? s.given("subject.height") : turning(s));
    route("distance.alongShort", s -> upright(s) ? turning(s) : s.given("subject.height"));
  }

  private void standoff() {
    route("distance.standoff", DistanceRoutesTest::stand);
    route("distance.heldOff", s -> yes(fits(s, s.given("kit.closestFocus") * (1 - 1e-12))));
    route("distance.middle", s -> (stand(s) + far(s)) / 2);
    route("distance.far", DistanceRoutesTest::far);
    route(
        "distance.filledLong",
        s ->
            picture(s, stand(s))
                * (upright(s) ? s.given("subject.height") : turning(s))
                / s.given("kit.sensorWidth"));
    route(
        "distance.filledShort",
        s ->
            picture(s, stand(s))
                * (upright(s) ? turning(s) : s.given("subject.height"))
                / s.given("kit.sensorHeight"));
    route("distance.tileStandoff", s -> Math.min(stand(s), s.entry("distance.largest")));
    route(
        "distance.tilesTotal", s -> s.entry("distance.tilesUp") * s.entry("distance.tilesAcross"));
  }

  private void sampling() {
    route(
        "distance.samplingWanted",
        s -> 1 / (s.given("aim.pixelsPerDetail") / s.given("aim.detail")));
    route("distance.pixelsOnDetail", s -> s.given("aim.detail") * picture(s, far(s)) / pixel(s));
    route(
        "distance.fine",
        s ->
            yes(
                s.given("aim.detail") * picture(s, far(s)) / pixel(s)
                    >= s.given("aim.pixelsPerDetail")));
    route("distance.pixelsAcross", s -> turning(s) * picture(s, stand(s)) / pixel(s));
    route("distance.pixelsUp", s -> s.given("subject.height") * picture(s, stand(s)) / pixel(s));
    route(
        "distance.fineSlope",
        s -> {
          double middle = (stand(s) + far(s)) / 2;
          double shortened = Math.sin(Math.PI / 2 - s.given("aim.incidenceLimit"));
          return yes(
              s.given("aim.detail") * shortened * picture(s, middle) / pixel(s)
                  >= s.given("aim.pixelsPerDetail"));
        });
  }

  private void twice() {
    route("distance.twice", s -> stand(s) + stand(s));
    route("distance.coarserTwice", s -> picture(s, stand(s)) / picture(s, 2 * stand(s)));
    route(
        "distance.filledTwice",
        s -> {
          double size = picture(s, 2 * stand(s));
          double object = size * turning(s) * size * s.given("subject.height");
          return object / (s.given("kit.sensorWidth") * s.given("kit.sensorHeight"));
        });
  }

  /** Height of the upright box around the object as a tilted camera sees it, corner by corner. */
  private static double tilted(Seen s) {
    double e = s.given("aim.elevation");
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int corner = 0; corner < 4; corner++) {
      double x = (corner % 2 - 0.5) * turning(s);
      double z = (corner < 2 ? -0.5 : 0.5) * s.given("subject.height");
      double height = z * Math.cos(e) - x * Math.sin(e);
      low = Math.min(low, height);
      high = Math.max(high, height);
    }
    return high - low;
  }

  private void raised() {
    route("distance.raisedHeight", DistanceRoutesTest::tilted);
    route("distance.raisedFits", s -> yes(tilted(s) * picture(s, stand(s)) <= up(s)));
  }

  private static double spot(Seen s) {
    return pixel(s) * s.given("aim.blurLimit");
  }

  private void sharp() {
    route("sharp.near", DistanceRoutesTest::stand);
    route("sharp.far", s -> stand(s) + s.given("aim.sharpShare") * turning(s));
    route("sharp.blurSpot", DistanceRoutesTest::spot);
    route(
        "sharp.windowFrom",
        s ->
            s.entry("sharp.open") < s.given("kit.widest")
                ? s.given("kit.widest")
                : s.entry("sharp.open"));
    route(
        "sharp.windowTo",
        s ->
            s.entry("sharp.closed") > s.given("kit.narrowest")
                ? s.given("kit.narrowest")
                : s.entry("sharp.closed"));
    route(
        "sharp.window",
        s ->
            yes(
                s.entry("sharp.open") <= s.entry("sharp.closed")
                    && s.entry("sharp.open") <= s.given("kit.narrowest")
                    && s.given("kit.widest") <= s.entry("sharp.closed")));
    // First zero of the Bessel function J1 over pi: 1.219670 (textbooks of optics).
    route(
        "sharp.airyPixels",
        1e-6,
        s -> 2 * 1.219670 * 550e-9 * s.entry("sharp.effective") / pixel(s));
    // A point at infinity, lens focused at the hyperfocal distance: its cone is cut as wide as c.
    route(
        "sharp.aperture",
        s -> {
          double f = s.given("kit.focalLength");
          return spot(s) * (s.entry("sharp.hyperfocal") - f) / f;
        });
    // The cone behind the lens, cut where it is as wide as c.
    route(
        "sharp.focusTolerance",
        s -> {
          double image = picture(s, s.entry("sharp.focus")) * s.entry("sharp.focus");
          return spot(s) * image / s.entry("sharp.aperture");
        });
    route(
        "sharp.sliceBlur",
        s -> {
          double opening = s.given("kit.focalLength") / s.entry("sharp.windowTo");
          return spot(s) * s.given("kit.focalLength") / opening;
        });
    route(
        "sharp.printPixels",
        s -> Math.hypot(s.given("kit.sensorWidth"), s.given("kit.sensorHeight")) / pixel(s) / 1500);
  }
}
