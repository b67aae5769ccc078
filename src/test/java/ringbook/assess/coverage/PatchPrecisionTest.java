package ringbook.assess.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.geometry.Ball;
import ringbook.geometry.Spread;
import ringbook.geometry.Vec3;
import ringbook.optics.Kit;
import ringbook.shots.SceneDetails;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * The covariance of a patch from its rays, against pictures measured over and over and solved by
 * least squares with Apache Commons Math.
 */
final class PatchPrecisionTest {

  private static final Ball BALL = new Ball(Length.ofCentimetres(30));
  private static final double DISTANCE = 3;

  /** A picture: where its lens is, and its axes to the right, upwards and into the scene. */
  private record Picture(Vec3 lens, Vec3 right, Vec3 up, Vec3 into) {

    static Picture of(View view, Vec3 middle) {
      Vec3 into = middle.minus(view.position()).unit();
      Vec3 right = into.cross(Vec3.UP).unit();
      return new Picture(view.position(), right, right.cross(into), into);
    }

    /** Picture coordinates as tangents of the pinhole's angles. */
    double[] of(Vec3 point) {
      Vec3 way = point.minus(lens);
      double depth = way.dot(into);
      return new double[] {way.dot(right) / depth, way.dot(up) / depth};
    }

    /** How a coordinate changes with the point. */
    double[] slope(Vec3 point, Vec3 axis) {
      Vec3 way = point.minus(lens);
      double depth = way.dot(into);
      Vec3 slope = axis.minus(into.times(way.dot(axis) / depth)).times(1 / depth);
      return new double[] {slope.x(), slope.y(), slope.z()};
    }
  }

  private final Seeing seeing = Before.seeing(Before.open(BALL, "60"), BALL, 400);

  private Coverage coverage(double elevation, int photos) {
    return Coverage.of(seeing, Before.ring(seeing, DISTANCE, elevation, photos));
  }

  /** What a picture coordinate is uncertain by, as a tangent. */
  private double sigma() {
    Kit kit = seeing.scene().kit();
    double pixels = SceneDetails.si(seeing.scene(), "aim.pointing");
    return pixels * kit.sensor().pixelPitch().over(kit.lens().focalLength());
  }

  private static List<Picture> pictures(Coverage coverage, int patch) {
    List<Picture> pictures = new ArrayList<>();
    for (int view : coverage.patch(patch).views()) {
      pictures.add(Picture.of(coverage.views().get(view), coverage.seeing().middle()));
    }
    return pictures;
  }

  private static RealMatrix slopes(List<Picture> pictures, Vec3 point) {
    double[][] rows = new double[2 * pictures.size()][];
    for (int k = 0; k < pictures.size(); k++) {
      Picture picture = pictures.get(k);
      rows[2 * k] = picture.slope(point, picture.right());
      rows[2 * k + 1] = picture.slope(point, picture.up());
    }
    return new Array2DRowRealMatrix(rows);
  }

  private static RealVector coordinates(List<Picture> pictures, Vec3 point) {
    double[] all = new double[2 * pictures.size()];
    for (int k = 0; k < pictures.size(); k++) {
      double[] both = pictures.get(k).of(point);
      all[2 * k] = both[0];
      all[2 * k + 1] = both[1];
    }
    return new ArrayRealVector(all);
  }

  private static double[][] matrix(Spread s) {
    return new double[][] {
      {s.xx(), s.xy(), s.xz()}, {s.xy(), s.yy(), s.yz()}, {s.xz(), s.yz(), s.zz()}
    };
  }

  /** Patches seen by three or more, a few over the whole ball. */
  private static List<Integer> some(Coverage coverage) {
    List<Integer> some = new ArrayList<>();
    for (int i = 0; i < coverage.patches().size(); i += 23) {
      if (coverage.patch(i).views().size() > 2) {
        some.add(i);
      }
    }
    return some;
  }

  /**
   * {@code (JᵀJ)⁻¹ σ²} of the pinhole's own picture coordinates. The rays take every coordinate as
   * measured across its ray; 3° off the middle of a picture that is off by up to 0.3 %.
   */
  @ParameterizedTest(name = "{1} photographs at {0}°")
  @CsvSource({"0, 24", "30, 36", "-2, 30", "55, 18"})
  void agrees_with_least_squares_in_the_picture(double elevation, int photos) {
    Coverage coverage = coverage(elevation, photos);
    List<Integer> some = some(coverage);
    assertThat(some).hasSizeGreaterThan(5);
    for (int patch : some) {
      Vec3 point = seeing.surface().patches().point(patch);
      RealMatrix slopes = slopes(pictures(coverage, patch), point);
      RealMatrix expected =
          MatrixUtils.inverse(slopes.transpose().multiply(slopes))
              .scalarMultiply(sigma() * sigma());
      double[][] found = matrix(coverage.precision(patch).orElseThrow());
      double size = expected.getTrace();
      for (int row = 0; row < 3; row++) {
        for (int column = 0; column < 3; column++) {
          assertThat(found[row][column])
              .as("patch %d, row %d, column %d", patch, row, column)
              .isCloseTo(expected.getEntry(row, column), within(0.012 * size));
        }
      }
    }
  }

  /** 20,000 times the same patch with errors in every picture, found again from its true place. */
  @Test
  void agrees_with_pictures_measured_over_and_over() {
    Coverage coverage = coverage(20, 30);
    int patch = some(coverage).get(3);
    Vec3 point = seeing.surface().patches().point(patch);
    List<Picture> pictures = pictures(coverage, patch);
    SplittableRandom random = new SplittableRandom(20_260);
    int rounds = 20_000;
    double[][] sums = new double[3][3];
    for (int round = 0; round < rounds; round++) {
      double[] off = found(pictures, point, noise(2 * pictures.size(), random)).toArray();
      for (int a = 0; a < 3; a++) {
        for (int b = 0; b < 3; b++) {
          sums[a][b] += off[a] * off[b] / rounds;
        }
      }
    }
    double[][] stated = matrix(coverage.precision(patch).orElseThrow());
    double size = stated[0][0] + stated[1][1] + stated[2][2];
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        assertThat(sums[a][b]).isCloseTo(stated[a][b], within(0.03 * size));
      }
    }
  }

  private RealVector noise(int size, SplittableRandom random) {
    double[] noise = new double[size];
    for (int i = 0; i < size; i++) {
      double u = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
      noise[i] = sigma() * u * Math.cos(2 * Math.PI * random.nextDouble());
    }
    return new ArrayRealVector(noise);
  }

  /** Gauss and Newton's steps to the point that fits the pictures best; how far off it is. */
  private static RealVector found(List<Picture> pictures, Vec3 truth, RealVector noise) {
    RealVector measured = coordinates(pictures, truth).add(noise);
    Vec3 at = truth;
    for (int step = 0; step < 3; step++) {
      RealVector way =
          new QRDecomposition(slopes(pictures, at))
              .getSolver()
              .solve(measured.subtract(coordinates(pictures, at)));
      at = at.plus(new Vec3(way.getEntry(0), way.getEntry(1), way.getEntry(2)));
    }
    Vec3 off = at.minus(truth);
    return new ArrayRealVector(new double[] {off.x(), off.y(), off.z()});
  }

  @Test
  void one_photograph_fixes_no_patch() {
    View view = seeing.look(Before.towards(seeing, Angle.ZERO, Angle.ZERO, DISTANCE));
    assertThat(Coverage.of(seeing, List.of(view)).precision(view.wells()[0])).isEmpty();
  }
}
