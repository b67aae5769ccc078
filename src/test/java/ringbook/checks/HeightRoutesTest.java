package ringbook.checks;

/** Heights of the rings and slants a second time: with points, square roots and dot products. */
final class HeightRoutesTest extends RouteTable {

  @Override
  protected void routes() {
    route("ring.wallSlant", 1e-6, s -> between(s.given("aim.elevation"), 0));
    route("ring.topSlant", 1e-6, s -> between(s.given("aim.elevation"), Math.PI / 2));
    route("rings.topSlant", 1e-6, s -> between(s.entry("rings.highest"), Math.PI / 2));
    route(
        "rings.topSeen",
        s ->
            yes(
                between(s.entry("rings.highest"), Math.PI / 2)
                    <= s.given("aim.incidenceLimit") + 1e-9));
    route("rings.overhang", 1e-6, HeightRoutesTest::overhang);
    route("rings.lowestHeight", 1e-6, s -> height(s, "rings.lowest"));
    route("rings.highestHeight", 1e-6, s -> height(s, "rings.highest"));
    route("rings.highestFloor", 1e-6, s -> floor(s, "rings.highest"));
  }

  /** Angle between the line of sight at an elevation and a normal that rises by an angle. */
  private static double between(double elevation, double rise) {
    double dot = Math.cos(elevation) * Math.cos(rise) + Math.sin(elevation) * Math.sin(rise);
    double cross = Math.cos(elevation) * Math.sin(rise) - Math.sin(elevation) * Math.cos(rise);
    return Math.atan2(Math.abs(cross), dot);
  }

  /** The steepest normal, pointing down, that the limit still allows: by halving. */
  private static double overhang(Seen s) {
    double limit = s.given("aim.incidenceLimit");
    double lowest = s.entry("rings.lowest");
    double down = firstWhere(-lowest, Math.PI / 2, d -> between(lowest, -d) > limit);
    return Double.isNaN(down) ? Math.PI / 2 : down;
  }

  private static double radius(Seen s) {
    return (s.entry("distance.standoff") + s.entry("distance.far")) / 2;
  }

  private static double floor(Seen s, String elevation) {
    double slope = Math.tan(s.entry(elevation));
    return radius(s) / Math.sqrt(1 + slope * slope);
  }

  private static double height(Seen s, String elevation) {
    double middle = s.given("place.tableHeight") + s.given("subject.height") / 2;
    return middle + floor(s, elevation) * Math.tan(s.entry(elevation));
  }
}
