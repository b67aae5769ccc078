package ringbook.checks;

import boofcv.alg.geo.PerspectiveOps;
import boofcv.struct.calib.CameraPinhole;
import georegression.geometry.ConvertRotation3D_F64;
import georegression.struct.point.Point2D_F64;
import georegression.struct.se.Se3_F64;
import georegression.struct.so.Rodrigues_F64;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import ringbook.checks.CheckValues.Row;
import ringbook.geometry.Spread;
import ringbook.geometry.Vec3;
import ringbook.ledger.Ledger;
import ringbook.shots.Station;

/** Where stations stand and look, and where their lines of sight meet, against outside values. */
final class PoseValuesTest extends CheckTable {

  @Override
  protected String file() {
    return "poses.csv";
  }

  @Override
  protected void table() {
    checkAll(PoseValuesTest::pixel, "ORB-09");
    checkAll(PoseValuesTest::pose, "ORB-10");
    check(PoseValuesTest::turnDegrees, "ORB-12");
    checkAll(row -> millimetres(meeting(sights(row))), "OCV-11");
    checkAll(
        row -> {
          List<Sight> sights = sights(row);
          double[] meeting = millimetres(meeting(sights));
          return new double[] {meeting[0], meeting[1], meeting[2], 1000 * gap(sights)};
        },
        "INT-03");
    check(
        row ->
            Ledger.standard()
                .get("strip.photos")
                .formula()
                .orElseThrow()
                .value(key -> row.number(key.equals("strip.rows") ? "lines" : "per_line")),
        "PHO-11");
  }

  private static Station station(Row row) {
    return Cameras.station(
        row.number("azimuth_deg"), row.number("elevation_deg"), row.number("distance_mm") / 1000);
  }

  private static double[] pixel(Row row) {
    double[] k = row.numbers("K");
    double[] x = row.numbers("X_mm");
    Point2D_F64 pixel =
        PerspectiveOps.renderPixel(
            Cameras.worldToCamera(station(row)),
            new CameraPinhole(k[0], k[1], 0, k[2], k[3], 0, 0),
            Cameras.point(new Vec3(x[0], x[1], x[2]).times(0.001)),
            null);
    return new double[] {pixel.x, pixel.y};
  }

  private static double[] pose(Row row) {
    Se3_F64 pose = Cameras.worldToCamera(station(row));
    Rodrigues_F64 turn = ConvertRotation3D_F64.matrixToRodrigues(pose.R, null);
    return new double[] {
      turn.unitAxisRotation.x * turn.theta,
      turn.unitAxisRotation.y * turn.theta,
      turn.unitAxisRotation.z * turn.theta,
      pose.T.x * 1000,
      pose.T.y * 1000,
      pose.T.z * 1000
    };
  }

  private static double turnDegrees(Row row) {
    double elevation = row.number("elevation_deg");
    Se3_F64 one = Cameras.worldToCamera(Cameras.station(0, elevation, 1));
    Se3_F64 next = Cameras.worldToCamera(Cameras.station(row.number("step_deg"), elevation, 1));
    DMatrixRMaj relative = new DMatrixRMaj(3, 3);
    CommonOps_DDRM.multTransB(next.R, one.R, relative);
    return Math.toDegrees(ConvertRotation3D_F64.matrixToRodrigues(relative, null).theta);
  }

  /** A line of sight: from where, and in which direction. */
  private record Sight(Vec3 from, Vec3 direction) {}

  private static List<Sight> sights(Row row) {
    return List.of(sight(row, "cam1_az_el_D", "uv1"), sight(row, "cam2_az_el_D", "uv2"));
  }

  private static Sight sight(Row row, String camera, String pixel) {
    double[] place = row.numbers(camera);
    double[] k = row.numbers("K");
    double[] uv = row.numbers(pixel);
    Station station = Cameras.station(place[0], place[1], place[2] / 1000);
    Vec3 right = station.view().cross(Vec3.UP).unit();
    Vec3 down = station.view().cross(right);
    Vec3 direction =
        station
            .view()
            .plus(right.times((uv[0] - k[2]) / k[0]))
            .plus(down.times((uv[1] - k[3]) / k[1]));
    return new Sight(station.position(), direction.unit());
  }

  /** The point with the least sum of squared distances, by the weights the ledger adds up. */
  private static Vec3 meeting(List<Sight> sights) {
    Spread sum = Spread.ZERO;
    Vec3 right = Vec3.ZERO;
    for (Sight sight : sights) {
      Spread across = Spread.across(sight.direction());
      sum = sum.plus(across);
      right = right.plus(times(across, sight.from()));
    }
    return times(sum.inverse().orElseThrow(), right);
  }

  private static Vec3 times(Spread m, Vec3 v) {
    return new Vec3(
        m.xx() * v.x() + m.xy() * v.y() + m.xz() * v.z(),
        m.xy() * v.x() + m.yy() * v.y() + m.yz() * v.z(),
        m.xz() * v.x() + m.yz() * v.y() + m.zz() * v.z());
  }

  private static double gap(List<Sight> sights) {
    Vec3 normal = sights.get(0).direction().cross(sights.get(1).direction()).unit();
    return Math.abs(normal.dot(sights.get(1).from().minus(sights.get(0).from())));
  }

  private static double[] millimetres(Vec3 metres) {
    return new double[] {metres.x() * 1000, metres.y() * 1000, metres.z() * 1000};
  }
}
