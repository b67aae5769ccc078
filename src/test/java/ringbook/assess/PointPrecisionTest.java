package ringbook.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.assess.PointPrecision.Ray;
import ringbook.geometry.Spread;
import ringbook.geometry.Vec3;
import ringbook.shots.Ring;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;

/** Closed forms against the covariance, the covariance against many simulated measurements. */
final class PointPrecisionTest {

  private static List<Ray> rays(Ring ring, double sigma) {
    List<Ray> rays = new ArrayList<>();
    for (Station station : ring.stations()) {
      rays.add(new Ray(station.view(), sigma));
    }
    return rays;
  }

  private static Ring ring(double elevationDegrees, int photos) {
    return new Ring(Length.ZERO, new Length(1), Angle.ofDegrees(elevationDegrees), photos);
  }

  @ParameterizedTest(name = "{1} stations at {0}°")
  @CsvSource({"0, 3", "30, 8", "45, 5", "-20, 12", "70, 30"})
  void closed_forms_of_a_ring_agree_with_the_covariance(double elevation, int photos) {
    Ring ring = ring(elevation, photos);
    Spread spread = PointPrecision.covariance(rays(ring, 0.001)).orElseThrow();
    Length spot = new Length(0.001);
    double across = PointPrecision.ringAcross(spot, photos, ring.elevation()).metres();
    double up = PointPrecision.ringUp(spot, photos, ring.elevation()).metres();
    assertThat(Math.sqrt(spread.xx())).isCloseTo(across, within(1e-12));
    assertThat(Math.sqrt(spread.yy())).isCloseTo(across, within(1e-12));
    assertThat(Math.sqrt(spread.zz())).isCloseTo(up, within(1e-12));
    double mean = PointPrecision.networkFactor(photos, ring.elevation()) * 0.001;
    assertThat(Math.sqrt(spread.trace() / 3)).isCloseTo(mean, within(1e-12));
  }

  @Test
  void depth_of_a_pair_agrees_with_the_covariance() {
    Angle half = Angle.ofDegrees(6);
    List<Ray> rays = new ArrayList<>();
    for (Angle azimuth : List.of(half, half.times(-1))) {
      rays.add(new Ray(Vec3.towards(azimuth, Angle.ZERO).times(-1), 0.001));
    }
    Spread spread = PointPrecision.covariance(rays).orElseThrow();
    assertThat(Math.sqrt(spread.xx()))
        .isCloseTo(
            PointPrecision.convergentDepth(new Length(0.001), half.times(2)).metres(),
            within(1e-12));
  }

  @Test
  void parallel_and_convergent_pairs_agree_where_the_base_is_small() {
    Length spot = new Length(0.001);
    double parallel = PointPrecision.parallelDepth(spot, 0.02).metres();
    double convergent =
        PointPrecision.convergentDepth(spot, new Angle(2 * Math.atan(0.01))).metres();
    assertThat(parallel).isCloseTo(convergent, within(1e-4 * convergent));
  }

  /** Measures the same point 20,000 times with random errors and solves each by least squares. */
  @Test
  void covariance_agrees_with_simulated_measurements() {
    SplittableRandom random = new SplittableRandom(7);
    Ring ring = ring(25, 4);
    double sigma = 1e-3;
    Spread spread = PointPrecision.covariance(rays(ring, sigma)).orElseThrow();
    double[] sum = new double[3];
    int rounds = 20_000;
    for (int round = 0; round < rounds; round++) {
      RealVector found = measured(ring, sigma, random);
      for (int i = 0; i < 3; i++) {
        sum[i] += found.getEntry(i) * found.getEntry(i);
      }
    }
    assertThat(Math.sqrt(sum[0] / rounds)).isCloseTo(Math.sqrt(spread.xx()), within(2e-5));
    assertThat(Math.sqrt(sum[1] / rounds)).isCloseTo(Math.sqrt(spread.yy()), within(2e-5));
    assertThat(Math.sqrt(sum[2] / rounds)).isCloseTo(Math.sqrt(spread.zz()), within(2e-5));
  }

  private static RealVector measured(Ring ring, double sigma, SplittableRandom random) {
    int n = ring.photos();
    double[][] rows = new double[2 * n][];
    double[] errors = new double[2 * n];
    int row = 0;
    for (Station station : ring.stations()) {
      Vec3 right = station.view().cross(Vec3.UP).unit();
      Vec3 down = station.view().cross(right);
      for (Vec3 axis : List.of(right, down)) {
        rows[row] = new double[] {axis.x(), axis.y(), axis.z()};
        errors[row++] = sigma * gaussian(random);
      }
    }
    return new QRDecomposition(new Array2DRowRealMatrix(rows))
        .getSolver()
        .solve(new ArrayRealVector(errors));
  }

  private static double gaussian(SplittableRandom random) {
    double u = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
    return u * Math.cos(2 * Math.PI * random.nextDouble());
  }

  @Test
  void one_line_of_sight_fixes_no_point() {
    assertThat(PointPrecision.covariance(List.of(new Ray(Vec3.UP, 1)))).isEmpty();
  }
}
