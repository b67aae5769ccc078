package ringbook.checks;

/** Holes and thin edges a second time: by searching and by walking in steps. */
final class EdgeRoutesTest extends RouteTable {

  private static final double HAIR = 1e-9;

  @Override
  protected void routes() {
    route("hole.deepest", 1e-6, EdgeRoutesTest::deepest);
    route("strip.edgeBlind", 1e-6, EdgeRoutesTest::blind);
    route("strip.edgeLost", s -> Math.floor(steps(s, s.entry("ring.realStep"), HAIR)));
    route("strip.edgePhotos", s -> Math.ceil(steps(s, s.entry("ring.realStep") / 2, -HAIR)) + 1);
  }

  /**
   * The depth at which a line over the rim meets the far wall, in unit vectors: its slant on the
   * wall, whose normal points across, is the limit.
   */
  private static double deepest(Seen s) {
    double across = Math.cos(s.given("aim.incidenceLimit"));
    double down = Math.sqrt(1 - across * across);
    return s.given("subject.holeDiameter") * down / across;
  }

  /** Directions from the front to the back of a plate that see neither within the limit. */
  private static double blind(Seen s) {
    double limit = Math.cos(s.given("aim.incidenceLimit"));
    double front = firstWhere(0, Math.PI, a -> Math.cos(a) < limit);
    double back = firstWhere(0, Math.PI, a -> -Math.cos(a) >= limit);
    return back - front;
  }

  private static double steps(Seen s, double step, double hair) {
    return (Math.PI - 2 * s.given("aim.incidenceLimit")) / step + hair;
  }
}
