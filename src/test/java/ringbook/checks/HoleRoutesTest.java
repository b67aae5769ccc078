package ringbook.checks;

/** Holes, strips and scale a second time: rays drawn in a plane, frames laid side by side. */
final class HoleRoutesTest extends RouteTable {

  private static final double HAIR = 1e-9;

  @Override
  protected void routes() {
    hole();
    strip();
    scale();
  }

  /** How deep a line of sight over the near rim meets the far wall, at an angle from the axis. */
  private static double reach(Seen s, double angle) {
    double down = s.given("subject.holeDiameter") * Math.sin(Math.PI / 2 - angle) / Math.sin(angle);
    return Math.min(down, s.given("subject.holeDepth"));
  }

  private static double best(Seen s) {
    return Math.PI / 2 - s.given("aim.incidenceLimit");
  }

  private static double halfMouth(Seen s) {
    return Math.atan2(s.given("subject.holeDiameter") / 2, s.given("subject.holeDepth"));
  }

  private static double ringAngle(Seen s) {
    double apart = s.given("aim.elevation") - s.given("subject.holeTilt");
    return apart < 0 ? -apart : apart;
  }

  private void hole() {
    // The limit is met where the normal of the wall and the line of sight make it.
    route("hole.bestAngle", s -> Math.acos(Math.sin(s.given("aim.incidenceLimit"))));
    route("hole.wallShare", s -> reach(s, best(s)) / s.given("subject.holeDepth"));
    route("hole.oneEnd", s -> yes(reach(s, best(s)) >= s.given("subject.holeDepth") * (1 - HAIR)));
    route(
        "hole.twoEnds",
        s -> yes(reach(s, best(s)) >= s.given("subject.holeDepth") / 2 * (1 - HAIR)));
    route("hole.floorRays", s -> halfMouth(s) + halfMouth(s));
    route("hole.ringAngle", HoleRoutesTest::ringAngle);
    route(
        "hole.ringWall",
        1e-8,
        s ->
            ringAngle(s) >= Math.PI / 2
                ? 0
                : Math.min(reach(s, best(s)), reach(s, ringAngle(s) + 1e-300)));
    route("hole.ringFloor", s -> yes(ringAngle(s) <= halfMouth(s) * (1 + HAIR)));
  }

  private static double wanted(Seen s) {
    return s.given("aim.detail") / s.given("aim.pixelsPerDetail");
  }

  /** From where a pixel covers no more than wanted, by halving; just beyond one focal length. */
  private static double stand(Seen s) {
    double f = s.given("kit.focalLength");
    return firstWhere(f, f + 1e6, u -> u > f && pixel(s) / picture(s, u) >= wanted(s));
  }

  private void strip() {
    route("strip.standoff", HoleRoutesTest::stand);
    route("strip.footprint", s -> s.given("kit.pixelsDown") * wanted(s));
    route("strip.across", s -> s.given("kit.pixelsAcross") * wanted(s));
    route("strip.length", HoleRoutesTest::longest);
    route(
        "strip.baseRatio",
        s -> s.given("kit.pixelsDown") * wanted(s) * (1 - s.given("aim.stripOverlap")) / stand(s));
    route(
        "strip.rows",
        s -> {
          double side = Math.min(s.given("subject.height"), s.given("subject.width"));
          double field = s.given("kit.pixelsAcross") * wanted(s);
          double covered = field;
          int rows = 1;
          while (covered < side * (1 - HAIR)) {
            covered += field * (1 - s.given("aim.stripOverlap"));
            rows++;
          }
          return rows;
        });
    route("strip.photos", s -> s.entry("strip.rows") * s.entry("strip.frames"));
  }

  private static double longest(Seen s) {
    return s.given("subject.height") > s.given("subject.width")
        ? s.given("subject.height")
        : s.given("subject.width");
  }

  private void scale() {
    route("scale.longest", HoleRoutesTest::longest);
    route(
        "scale.enough",
        s -> {
          double part = s.entry("scale.error");
          return yes(part <= s.given("aim.tolerance") / longest(s) * (1 + HAIR));
        });
    // Two bars differ by the root of the sum of both squares; three times that is an alarm.
    route("scale.alarm", s -> 3 * Math.hypot(s.entry("scale.oneBar"), s.entry("scale.oneBar")));
  }
}
