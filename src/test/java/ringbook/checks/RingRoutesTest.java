package ringbook.checks;

/** Rings, poses and the job a second time: by searching, by counting and with other functions. */
final class RingRoutesTest extends RouteTable {

  private static final double HAIR = 1e-9;

  @Override
  protected void routes() {
    ring();
    rings();
    low();
    pose();
    job();
    light();
  }

  private static double middle(Seen s) {
    return s.given("place.tableHeight") + 0.5 * s.given("subject.height");
  }

  private static double radius(Seen s) {
    return (s.entry("distance.standoff") + s.entry("distance.far")) / 2;
  }

  private static double lens(Seen s) {
    return middle(s) + radius(s) * Math.sin(s.given("aim.elevation"));
  }

  /** The elevation at which the lens comes up to a height, by halving from straight down. */
  private static double elevationAt(Seen s, double height) {
    return firstWhere(
        -Math.PI / 2, Math.PI / 2, e -> middle(s) + radius(s) * Math.sin(e) >= height);
  }

  private static double lowestLens(Seen s) {
    return Math.max(
        s.given("place.lowestLens"), s.given("place.tableHeight") + s.given("kit.lensOffset"));
  }

  private void ring() {
    route("ring.radius", RingRoutesTest::radius);
    route("ring.middleHeight", RingRoutesTest::middle);
    route("ring.lensAboveTable", 1e-8, s -> lens(s) - s.given("place.tableHeight"));
    // Near straight up and down the height hardly changes with the elevation.
    route("ring.lowestElevation", 1e-6, s -> elevationAt(s, s.given("place.lowestLens")));
    route("ring.highestElevation", 1e-6, s -> elevationAt(s, s.given("place.highestLens")));
    route(
        "ring.reachable",
        s ->
            yes(
                s.given("place.lowestLens") <= lens(s)
                    && lens(s) <= s.given("place.highestLens")
                    && lens(s) > s.given("place.tableHeight")));
    route(
        "ring.views",
        s -> {
          double arc = 2 * s.entry("ring.halfArc");
          int turns = 0;
          while ((turns + 1) * s.entry("ring.realStep") <= arc * (1 + HAIR)) {
            turns++;
          }
          return turns;
        });
  }

  private void rings() {
    route("rings.lowest", 1e-6, s -> elevationAt(s, lowestLens(s)));
    route(
        "rings.highest",
        1e-6,
        s -> Math.min(s.given("aim.topElevation"), elevationAt(s, s.given("place.highestLens"))));
    route("rings.count", RingRoutesTest::ringsNeeded);
    route(
        "rings.spacing",
        s -> {
          double gaps = ringsNeeded(s) - 1;
          return gaps == 0 ? 0 : (s.entry("rings.highest") - s.entry("rings.lowest")) / gaps;
        });
    route(
        "rings.tied", s -> yes(s.entry("rings.spacing") <= s.given("aim.stepLimit") * (1 + HAIR)));
    route(
        "rings.topViews",
        s -> {
          double over = Math.PI - 2 * s.entry("rings.highest");
          int steps = 1;
          while (over / steps > s.given("aim.ringSpacing") * (1 + HAIR)) {
            steps++;
          }
          return Math.max(1, steps - 1);
        });
    route("rings.topHeight", s -> middle(s) + radius(s));
    route("rings.topReachable", s -> yes(middle(s) + radius(s) <= s.given("place.highestLens")));
  }

  /** Rings, one more until no gap is wider than the spacing allows. */
  private static double ringsNeeded(Seen s) {
    double span = s.entry("rings.highest") - s.entry("rings.lowest");
    int gaps = 0;
    while (gaps == 0 ? span > HAIR : span / gaps > s.given("aim.ringSpacing") * (1 + HAIR)) {
      gaps++;
    }
    return gaps + 1;
  }

  private static double standing(Seen s, String offset) {
    return s.given("place.tableHeight") + s.given(offset);
  }

  /** Elevation of a height over the middle, by the two short sides of the triangle. */
  private static double elevation(Seen s, double height) {
    double rise = height - middle(s);
    return Math.atan2(rise, Math.sqrt(radius(s) * radius(s) - rise * rise));
  }

  private void low() {
    route("low.turnedHeight", s -> standing(s, "kit.lensOffset"));
    route("low.uprightHeight", s -> standing(s, "kit.lensFarOffset"));
    route("low.gain", 1e-8, s -> s.given("kit.lensFarOffset") - s.given("kit.lensOffset"));
    route("low.turnedElevation", 1e-7, s -> elevation(s, standing(s, "kit.lensOffset")));
    route("low.uprightElevation", 1e-7, s -> elevation(s, standing(s, "kit.lensFarOffset")));
    route(
        "low.gainAngle",
        1e-6,
        s ->
            elevation(s, standing(s, "kit.lensFarOffset"))
                - elevation(s, standing(s, "kit.lensOffset")));
  }

  /** Turned over, a ring at elevation e sees what a ring at −e saw: the band turns into itself. */
  private static double common(Seen s) {
    double low = s.entry("rings.lowest");
    double high = s.entry("rings.highest");
    return Math.min(high, -low) - Math.max(low, -high);
  }

  private void pose() {
    route("pose.apart", s -> Math.max(0, s.entry("rings.lowest") - -s.entry("rings.lowest")));
    route("pose.band", s -> common(s) > 0 ? common(s) : 0);
    route(
        "pose.tied",
        s -> yes(s.entry("rings.lowest") <= s.given("aim.stepLimit") / 2 * (1 + HAIR)));
    route("pose.wide", s -> yes(Math.max(0, common(s)) >= s.entry("rings.spacing") * (1 - HAIR)));
    route(
        "pose.rings",
        s -> {
          // What the first pose left unseen reaches from its lowest ring, mirrored, to its highest.
          double high = s.entry("rings.highest");
          double unseen = high + Math.min(s.entry("rings.lowest"), high);
          int rings = 1;
          while ((rings - 1) * s.given("aim.ringSpacing") < unseen - HAIR) {
            rings++;
          }
          return rings;
        });
    route("pose.photos", RingRoutesTest::photosOfPose);
  }

  private static double photosOfPose(Seen s) {
    double photos = s.entry("rings.topViews");
    for (int ring = 0; ring < s.entry("pose.rings"); ring++) {
      photos += s.entry("ring.photos") * s.given("aim.repeats");
    }
    return photos;
  }

  private static double photos(Seen s) {
    double photos = s.entry("rings.photos") + s.entry("rings.topViews");
    for (int pose = 1; pose < s.given("aim.poses"); pose++) {
      photos += photosOfPose(s);
    }
    return Math.ceil(photos + photos * s.given("aim.spare") - 1e-6);
  }

  private void job() {
    route("job.photos", RingRoutesTest::photos);
    route("job.time", s -> photos(s) / (1 / s.given("aim.secondsPerPhoto")));
    route("job.storage", s -> photos(s) / (1 / s.given("kit.fileSize")));
    route(
        "job.fits",
        s -> yes(photos(s) <= s.given("kit.freeStorage") / s.given("kit.fileSize") * (1 + HAIR)));
    route(
        "job.charges",
        s -> {
          int charges = 0;
          while (charges * s.given("kit.photosPerCharge") < photos(s) - 1e-6) {
            charges++;
          }
          return charges;
        });
  }

  private void light() {
    route(
        "fitness.stepKept",
        s ->
            yes(
                s.entry("ring.photos") * s.entry("fitness.stepAdvised")
                    >= 2 * Math.PI * (1 - HAIR)));
    route(
        "motion.tripod",
        s -> yes(s.entry("light.timeHighest") / s.entry("motion.byTremor") > 1 + HAIR));
    route(
        "motion.stopsShort",
        1e-8,
        s -> {
          double times = s.entry("light.timeHighest") / s.entry("motion.byTremor");
          return Math.log(times) / Math.log(2);
        });
    route(
        "motion.time",
        s -> {
          double base = s.entry("light.timeBase");
          double tremor = s.entry("motion.byTremor");
          return s.entry("motion.tripod") == 1 || base < tremor ? base : tremor;
        });
    route(
        "flicker.steady",
        s -> yes(Math.pow(2, s.entry("flicker.swingStops")) <= Math.pow(2, 0.1) * (1 + HAIR)));
  }
}
