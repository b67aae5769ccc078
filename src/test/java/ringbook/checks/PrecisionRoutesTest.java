package ringbook.checks;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Precision a second time: the equations of all picture coordinates, solved by the library Apache
 * Commons Math 3.6.
 */
final class PrecisionRoutesTest extends RouteTable {

  /** A lens and the standard deviation of one of its coordinates at the point. */
  private record Lens(Vector3D position, double sigma) {}

  @Override
  protected void routes() {
    route("precision.spot", PrecisionRoutesTest::spot);
    route("precision.pairDepth", 1e-7, s -> Math.sqrt(pair(s).getEntry(0, 0)));
    route("precision.pairAcross", 1e-7, s -> Math.sqrt(pair(s).getEntry(2, 2)));
    route("precision.wallDepth", 1e-6, s -> Math.sqrt(wall(s).getEntry(0, 0)));
    route("precision.wallMean", 1e-6, s -> Math.sqrt(wall(s).getTrace() / 3));
    route(
        "precision.parts",
        1e-6,
        s ->
            Math.max(s.given("subject.height"), s.entry("distance.turningWidth"))
                / Math.sqrt(wall(s).getTrace() / 3));
    route(
        "precision.enough",
        s -> yes(Math.sqrt(wall(s).getEntry(0, 0)) <= s.given("aim.tolerance") / 3 * (1 + 1e-9)));
    route(
        "precision.setGain",
        1e-6,
        s -> {
          double ring = Math.cos(s.given("aim.elevation"));
          double all = 0;
          for (int i = 0; i < s.entry("rings.count"); i++) {
            double e = s.entry("rings.lowest") + i * s.entry("rings.spacing");
            all += Math.cos(e) * Math.cos(e);
          }
          return Math.sqrt(all) / ring;
        });
  }

  private static double spot(Seen s) {
    return s.given("aim.pointing") * pixel(s) / picture(s, s.entry("distance.middle"));
  }

  /** Two lenses, their lines of sight apart by the ray angle, midway along x. */
  private static RealMatrix pair(Seen s) {
    double half = s.entry("ring.rayAngle") / 2;
    List<Lens> lenses = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      lenses.add(new Lens(new Vector3D(Math.cos(half), side * Math.sin(half), 0), spot(s)));
    }
    return covariance(Vector3D.ZERO, lenses);
  }

  /** A spot of a round wall and all stations of the ring that see it no more slanted than asked. */
  private static RealMatrix wall(Seen s) {
    Vector3D point = new Vector3D(s.entry("distance.turningWidth") / 2, 0, 0);
    List<Lens> lenses = new ArrayList<>();
    double photos = s.entry("ring.photos");
    for (int i = 0; i < photos; i++) {
      Vector3D lens =
          new Vector3D(2 * Math.PI * i / photos, s.given("aim.elevation"))
              .scalarMultiply(s.entry("ring.radius"));
      Vector3D line = lens.subtract(point);
      if (Vector3D.angle(line, Vector3D.PLUS_I) <= s.given("aim.incidenceLimit") + 1e-9) {
        double sampling = pixel(s) / picture(s, line.getNorm());
        double sigma = s.given("aim.pointing") * sampling / Math.sqrt(s.given("aim.repeats"));
        lenses.add(new Lens(lens, sigma));
      }
    }
    return covariance(point, lenses);
  }

  /** Inverse of AᵀA; A has one row for each of the two coordinates of every lens. */
  private static RealMatrix covariance(Vector3D point, List<Lens> lenses) {
    double[][] rows = new double[2 * lenses.size()][];
    for (int i = 0; i < lenses.size(); i++) {
      Vector3D view = point.subtract(lenses.get(i).position()).normalize();
      Vector3D one = view.orthogonal();
      Vector3D other = view.crossProduct(one);
      double weight = 1 / lenses.get(i).sigma();
      rows[2 * i] = one.scalarMultiply(weight).toArray();
      rows[2 * i + 1] = other.scalarMultiply(weight).toArray();
    }
    RealMatrix design = new Array2DRowRealMatrix(rows);
    return new LUDecomposition(design.transpose().multiply(design), 1e-300)
        .getSolver()
        .getInverse();
  }
}
