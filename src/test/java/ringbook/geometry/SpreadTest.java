package ringbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against the matrices of Commons Math. */
final class SpreadTest {

  private static RealMatrix matrix(Spread s) {
    return new Array2DRowRealMatrix(
        new double[][] {
          {s.xx(), s.xy(), s.xz()}, {s.xy(), s.yy(), s.yz()}, {s.xz(), s.yz(), s.zz()}
        });
  }

  private static Vec3 direction(SplittableRandom random) {
    return new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(0.01, 1))
        .unit();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void inverts_like_another_library(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Spread sum = Spread.ZERO;
    for (int i = 0; i < 3; i++) {
      sum = sum.plus(Spread.across(direction(random)).times(random.nextDouble(0.1, 10)));
    }
    RealMatrix theirs = new LUDecomposition(matrix(sum)).getSolver().getInverse();
    RealMatrix ours = matrix(sum.inverse().orElseThrow());
    assertThat(ours.subtract(theirs).getNorm()).isLessThan(1e-7 * theirs.getNorm());
    assertThat(sum.determinant())
        .isCloseTo(
            new LUDecomposition(matrix(sum)).getDeterminant(),
            within(1e-9 * Math.abs(sum.determinant()) + 1e-12));
    Vec3 u = direction(random);
    double[] column = {u.x(), u.y(), u.z()};
    double along =
        new Array2DRowRealMatrix(column).transpose().multiply(matrix(sum)).operate(column)[0];
    assertThat(sum.along(u)).isCloseTo(along, within(1e-12 * (1 + along)));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void sums_what_lies_across_lines_like_another_library(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Spread ours = Spread.ZERO;
    RealMatrix theirs = new Array2DRowRealMatrix(3, 3);
    for (int i = 0; i < 3; i++) {
      Vec3 u = direction(random);
      ours = ours.plus(Spread.across(u));
      RealVector column = new ArrayRealVector(new double[] {u.x(), u.y(), u.z()});
      RealMatrix one = MatrixUtils.createRealIdentityMatrix(3);
      theirs = theirs.add(one.subtract(column.outerProduct(column)));
    }
    assertThat(matrix(ours).subtract(theirs).getNorm()).isLessThan(1e-12);
    assertThat(ours.trace()).isCloseTo(6, within(1e-12)); // two directions across each line
  }

  /** Trust is a matter of shape, not of size: micrometres squared invert as well as metres. */
  @Test
  void trusts_small_and_large_alike() {
    Spread round = new Spread(2, 0, 0, 4, 0, 8);
    for (double k : new double[] {1e-12, 1e-3, 1, 1e3, 1e12}) {
      Spread inverse = round.times(k).inverse().orElseThrow();
      assertThat(inverse.times(8 * k).xx()).isCloseTo(4, within(1e-9));
      assertThat(inverse.times(8 * k).zz()).isCloseTo(1, within(1e-9));
      Spread flat = new Spread(1, 0, 0, 1, 0, 1e-14);
      assertThat(flat.times(k).inverse()).as("flat, times %s", k).isEmpty();
    }
  }

  @Test
  void has_no_inverse_where_all_lines_run_alike() {
    Spread twice = Spread.across(Vec3.UP).plus(Spread.across(Vec3.UP));
    assertThat(twice.inverse()).isEmpty();
    assertThat(Spread.ZERO.inverse()).isEmpty();
  }
}
