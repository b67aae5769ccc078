package ringbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
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

  @Test
  void has_no_inverse_where_all_lines_run_alike() {
    Spread twice = Spread.across(Vec3.UP).plus(Spread.across(Vec3.UP));
    assertThat(twice.inverse()).isEmpty();
    assertThat(Spread.ZERO.inverse()).isEmpty();
  }
}
