package ringbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.units.Angle;

/** Against the vectors of Commons Math. */
final class Vec3Test {

  private static Vec3 vector(double[] c) {
    return new Vec3(c[0], c[1], c[2]);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void agrees_with_another_library(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] a = {random.nextDouble(-5, 5), random.nextDouble(-5, 5), random.nextDouble(-5, 5)};
    double[] b = {random.nextDouble(-5, 5), random.nextDouble(-5, 5), random.nextDouble(-5, 5)};
    Vector3D p = new Vector3D(a);
    Vector3D q = new Vector3D(b);
    assertThat(vector(a).dot(vector(b))).isCloseTo(p.dotProduct(q), within(1e-12));
    assertThat(vector(a).angleTo(vector(b)).radians())
        .isCloseTo(Vector3D.angle(p, q), within(1e-12));
    Vector3D cross = p.crossProduct(q);
    assertThat(vector(a).cross(vector(b)).minus(vector(cross.toArray())).norm()).isLessThan(1e-12);
    Vector3D towards = new Vector3D(a[0], b[0] / 4);
    Vec3 ours = Vec3.towards(new Angle(a[0]), new Angle(b[0] / 4));
    assertThat(ours.minus(vector(towards.toArray())).norm()).isLessThan(1e-12);
  }

  @Test
  void refuses_a_direction_of_no_length() {
    assertThatThrownBy(Vec3.ZERO::unit).hasMessageContaining("length of a direction");
  }
}
