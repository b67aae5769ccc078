package ringbook.checks;

import static ringbook.units.Length.ofMillimetres;

import java.util.List;
import ringbook.Scenes;
import ringbook.assess.HoleView;
import ringbook.assess.PointPrecision;
import ringbook.assess.ScaleError;
import ringbook.assess.SeenArc;
import ringbook.assess.SharedSurface;
import ringbook.checks.CheckValues.Row;
import ringbook.geometry.Vec3;
import ringbook.ledger.Reckoning;
import ringbook.shots.Ring;
import ringbook.shots.Strip;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Whole;

/** Rings, strips, holes, precision and scale against published values and second routes. */
final class GeometryValuesTest extends CheckTable {

  @Override
  protected String file() {
    return "geometry.csv";
  }

  @Override
  protected void table() {
    rings();
    arcs();
    slopes();
    holes();
    strips();
    network();
    scale();
  }

  private static Angle degrees(Row row, String key) {
    return Angle.ofDegrees(row.number(key));
  }

  private static Length millimetres(Row row, String key) {
    return ofMillimetres(row.number(key));
  }

  private static Ring ring(double millimetres, double elevation, double photos) {
    return new Ring(
        Length.ZERO, ofMillimetres(millimetres), Angle.ofDegrees(elevation), (int) photos);
  }

  private void rings() {
    check(row -> Ring.photosFor(degrees(row, "step_deg")), "ORB-01");
    check(row -> row.number("rings") * Ring.photosFor(degrees(row, "step_deg")), "ORB-02");
    check(row -> ring(1, 0, 1 / row.number("fraction_of_turn")).step().degrees(), "ORB-03");
    check(row -> new Angle(row.number("step_rad")).degrees(), "ORB-04");
    check(
        row ->
            ring(row.number("distance_mm"), 0, Ring.photosFor(degrees(row, "step_deg")))
                .chord()
                .millimetres(),
        "ORB-05");
    check(
        row -> ring(1000, 0, Ring.photosFor(degrees(row, "step_deg"))).chord().metres(), "ORB-06");
    checkAll(
        row -> {
          Ring ring =
              new Ring(
                  millimetres(row, "target_height_mm"),
                  millimetres(row, "distance_mm"),
                  degrees(row, "elevation_deg"),
                  1);
          return new double[] {ring.lensHeight().millimetres(), ring.floorDistance().millimetres()};
        },
        "ORB-07");
    checkAll(
        row -> {
          Ring ring = ring(row.number("distance_mm"), row.number("elevation_deg"), 1);
          Vec3 lens = ring.positionAt(degrees(row, "azimuth_deg")).times(1000);
          return new double[] {lens.x(), lens.y(), lens.z()};
        },
        "ORB-08");
    check(
        row -> {
          Ring ring = ring(700, row.number("elevation_deg"), 1);
          Vec3 next = ring.positionAt(degrees(row, "step_deg"));
          return ring.positionAt(Angle.ZERO).angleTo(next).degrees();
        },
        "ORB-11");
    check(
        row -> Ring.photosForRays(degrees(row, "max_ray_angle_deg"), degrees(row, "elevation_deg")),
        "ORB-13",
        "ORB-14");
  }

  private void arcs() {
    check(
        row -> {
          Angle arc = visible(row);
          return SharedSurface.ofArcs(degrees(row, "step_deg"), arc.times(0.5)) * arc.degrees();
        },
        "ORB-15");
    check(row -> visible(row).degrees(), "VIS-07");
    check(row -> 2 * within(row).degrees(), "VIS-08");
    check(row -> Whole.up(360 / (2 * within(row).degrees())), "VIS-09");
    check(row -> heightThatSees(row.number("fraction")), "VIS-04");
    check(
        row -> {
          Length radius = new Length(1000 * row.number("radius_km"));
          Length distance = radius.plus(new Length(1000 * row.number("height_km")));
          return 100 * SeenArc.shareOfBall(radius, distance).orElseThrow();
        },
        "VIS-05",
        "VIS-06");
  }

  /** Height over a ball of radius 1 from which that share is seen, by halving. */
  private static double heightThatSees(double share) {
    double low = 0;
    double high = 100;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      Length distance = new Length(1 + middle);
      if (SeenArc.shareOfBall(new Length(1), distance).orElse(0.0) < share) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static Angle visible(Row row) {
    return SeenArc.visible(millimetres(row, "radius_mm"), millimetres(row, "distance_mm"))
        .orElseThrow();
  }

  private static Angle within(Row row) {
    return SeenArc.halfWithin(
            millimetres(row, "radius_mm"),
            millimetres(row, "distance_mm"),
            Angle.ZERO,
            degrees(row, "max_incidence_deg"))
        .orElseThrow();
  }

  private void slopes() {
    check(row -> 1 / slope(row), "VIS-01");
    check(row -> row.number("gsd_mm") * slope(row), "VIS-02");
    check(
        row -> vector(row.word("normal")).angleTo(vector(row.word("to_camera"))).degrees(),
        "VIS-03");
  }

  private static double slope(Row row) {
    String limit = row.word("incidence_deg");
    return Reckoning.of(Scenes.with(Scenes.pot(), "aim.incidenceLimit", limit))
        .si("ring.samplingLoss");
  }

  private static Vec3 vector(String text) {
    String[] parts = text.split(",", -1);
    return new Vec3(
        CheckValues.number(parts[0]), CheckValues.number(parts[1]), CheckValues.number(parts[2]));
  }

  private void holes() {
    check(
        row ->
            new HoleView(millimetres(row, "diameter_mm"), new Length(1))
                .wallSeen(degrees(row, "view_angle_from_axis_deg"))
                .millimetres(),
        "HOL-01");
    check(
        row -> hole(row).floorSeen(degrees(row, "view_angle_from_axis_deg")).millimetres(),
        "HOL-02");
    check(row -> hole(row).floorMiddle().degrees(), "HOL-03");
    check(row -> hole(row).floorShare(degrees(row, "view_angle_from_axis_deg")), "HOL-04");
    check(row -> hole(row).floorHidden().degrees(), "HOL-05");
  }

  private static HoleView hole(Row row) {
    return new HoleView(millimetres(row, "diameter_mm"), millimetres(row, "depth_mm"));
  }

  private static Strip strip(Row row) {
    return new Strip(
        millimetres(row, "field_mm"), row.number("overlap"), millimetres(row, "length_mm"));
  }

  private void strips() {
    checkAll(row -> new double[] {strip(row).base().millimetres(), strip(row).fewest()}, "STE-08");
    check(row -> strip(row).twice().orElseThrow(), "STE-09");
    check(
        row -> new Strip(new Length(1), row.number("overlap"), new Length(9)).imagesPerPoint(),
        "STE-10");
    check(row -> Strip.rayAngle(row.number("base_to_distance")).degrees(), "STE-06", "STE-07");
    check(
        row -> {
          Length ground = millimetres(row, "frame_mm").times(row.number("scale_number"));
          return new Strip(ground, row.number("overlap"), ground).base().metres();
        },
        "PHO-07");
    check(row -> lines(row.number("width_m"), row.number("line_spacing_m")), "PHO-08");
    check(row -> lines(row.number("length_m"), row.number("spacing_m")), "PHO-10");
    check(
        row ->
            100
                * Strip.overlapOf(
                    new Length(row.number("base_m")), new Length(row.number("footprint_m"))),
        "PHO-12");
  }

  private static double lines(double length, double base) {
    return Strip.centred(new Length(length), new Length(base));
  }

  private void network() {
    check(
        row -> {
          double pixel = row.number("depth_m") / row.number("focal_px");
          Length spot = new Length(row.number("sigma_parallax_px") / Math.sqrt(2) * pixel);
          double ratio = row.number("base_m") / row.number("depth_m");
          return PointPrecision.parallelDepth(spot, ratio).metres();
        },
        "STE-03");
    check(
        row ->
            PointPrecision.parallelDepth(
                    spot(row), row.number("base_mm") / row.number("distance_mm"))
                .millimetres(),
        "STE-11");
    checkAll(
        row -> {
          double n = row.number("stations");
          Angle e = degrees(row, "elevation_deg");
          double across = PointPrecision.ringAcross(spot(row), n, e).millimetres();
          return new double[] {
            across, across, PointPrecision.ringUp(spot(row), n, e).millimetres()
          };
        },
        "NET-01");
    check(
        row -> PointPrecision.networkFactor(row.number("stations"), degrees(row, "elevation_deg")),
        "NET-02",
        "NET-03");
    check(
        row -> {
          Length one = new Length(1);
          double ratio = row.number("base_to_distance");
          double depth = PointPrecision.parallelDepth(one, ratio).metres();
          return Math.sqrt((0.5 + 0.5 + depth * depth) / 3);
        },
        "NET-04");
    check(
        row -> {
          double spot = row.number("scale_number") * row.number("sigma_image_um") / 1000;
          return PointPrecision.mean(
                  row.number("q"), ofMillimetres(spot), row.number("images_per_station"))
              .millimetres();
        },
        "NET-05");
    check(row -> PointPrecision.mean(1, new Length(1), row.number("k")).metres(), "NET-06");
  }

  private static Length spot(Row row) {
    double scale = row.number("distance_mm") / row.number("principal_dist_mm");
    return ofMillimetres(scale * row.number("sigma_image_um") / 1000);
  }

  private void scale() {
    check(GeometryValuesTest::bar, "SCB-01");
    check(row -> bar(row) * row.number("object_mm"), "SCB-02");
    check(
        row -> ScaleError.betweenTargets(millimetres(row, "sigma_target_mm")).millimetres(),
        "SCB-03");
    check(
        row -> {
          Length measured = ScaleError.betweenTargets(millimetres(row, "sigma_target_mm"));
          return ScaleError.ofBar(millimetres(row, "bar_mm"), Length.ZERO, measured)
              * row.number("object_mm");
        },
        "SCB-04");
    checkAll(
        row -> {
          ScaleError.Scale mean =
              ScaleError.mean(
                  List.of(
                      new ScaleError.Scale(row.number("s1"), row.number("sigma1")),
                      new ScaleError.Scale(row.number("s2"), row.number("sigma2"))));
          return new double[] {mean.factor(), mean.sigma()};
        },
        "SCB-05");
  }

  private static double bar(Row row) {
    return ScaleError.ofBar(
        millimetres(row, "bar_mm"),
        millimetres(row, "sigma_bar_mm"),
        millimetres(row, "sigma_model_mm"));
  }
}
