package ringbook.assess.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.geometry.Lathe;
import ringbook.geometry.Mesh;
import ringbook.geometry.Solid;
import ringbook.geometry.Torus;
import ringbook.units.Angle;
import ringbook.units.Length;

/** Bodies that hide a part of themselves, seen from far away, as patches get finer. */
final class HollowShareTest {

  private static final int[] NUMBERS = {125, 500, 2000};

  /** Half a hollow ball, open upwards: 12 cm inside, 13 cm outside. */
  private static Lathe bowl() {
    List<Lathe.Point> outside = new ArrayList<>();
    List<Lathe.Point> inside = new ArrayList<>();
    int steps = 72;
    for (int k = 0; k <= steps; k++) {
      double up = Math.PI / 2 * k / steps;
      outside.add(at(0.13 * Math.sin(up), 0.13 - 0.13 * Math.cos(up)));
      inside.add(0, at(0.12 * Math.sin(up), 0.13 - 0.12 * Math.cos(up)));
    }
    return new Lathe(outside, inside);
  }

  private static Lathe.Point at(double radius, double height) {
    return new Lathe.Point(new Length(radius), new Length(Math.max(0, height)));
  }

  private static double inside(Seeing seeing, double degrees, double azimuth) {
    View view =
        seeing.look(
            Before.towards(seeing, Angle.ofDegrees(azimuth), Angle.ofDegrees(90 - degrees), 60));
    double in = 0;
    double all = 0;
    for (int i = 0; i < seeing.surface().count(); i++) {
      String part = seeing.surface().patches().parts().get(seeing.surface().patches().part(i));
      if (part.equals("inside") || part.equals("floor")) {
        double area = seeing.surface().patches().area(i);
        all += area;
        in += view.look(i).inPicture() ? area : 0;
      }
    }
    return in / all;
  }

  private static Seeing seeing(Solid solid, int patches) {
    return Before.seeing(Before.open(solid, "60"), solid.mesh(Length.ofMillimetres(3)), patches);
  }

  /**
   * Looked at θ off its axis, {@code 1 − 2θ/π} of the inside of half a ball is in sight. A line of
   * sight from p meets the ball again at p mirrored in the plane across it, which must lie above
   * the mouth: both conditions are half spaces through the middle, so what is in sight is the wedge
   * between two great circles.
   */
  @ParameterizedTest
  @ValueSource(doubles = {5, 20, 45, 60, 80})
  void the_inside_of_a_bowl(double degrees) {
    assertThat(inside(seeing(bowl(), 10_000), degrees, 33))
        .isCloseTo(1 - degrees / 90, within(0.01));
  }

  @Test
  void the_inside_of_a_bowl_comes_nearer_with_more_patches() {
    double[] errors = new double[NUMBERS.length];
    for (int k = 0; k < NUMBERS.length; k++) {
      Seeing seeing = seeing(bowl(), NUMBERS[k]);
      for (int turn = 0; turn < 20; turn++) {
        double degrees = 10 + 3.6 * turn;
        double off = inside(seeing, degrees, 17.3 * turn) - (1 - degrees / 90);
        errors[k] += off * off / 20;
      }
    }
    nearer(errors);
  }

  /** Along its axis: half in sight, {@code i/π} within the limit i; see SeenShareTest. */
  @Test
  void a_torus_comes_nearer_with_more_patches() {
    Torus torus = new Torus(Length.ofCentimetres(20), Length.ofCentimetres(6));
    double[] errors = new double[NUMBERS.length];
    Mesh mesh = torus.mesh(Length.ofMillimetres(4));
    for (int k = 0; k < NUMBERS.length; k++) {
      for (int limit = 30; limit <= 60; limit += 5) {
        Seeing seeing = Before.seeing(Before.open(torus, String.valueOf(limit)), mesh, NUMBERS[k]);
        View view = seeing.look(Before.towards(seeing, Angle.ZERO, Angle.RIGHT, 60));
        double off = view.area() / seeing.surface().patches().area() - limit / 180.0;
        errors[k] += off * off / 7;
      }
    }
    nearer(errors);
  }

  /** From sums of squares: falls about as n^(−3/4), as edges are crossed without pattern. */
  private static void nearer(double[] squares) {
    double first = Math.sqrt(squares[0]);
    double last = Math.sqrt(squares[2]);
    double order = Math.log(first / last) / Math.log(16);
    assertThat(last).isLessThan(0.008);
    assertThat(order)
        .as("errors %.5f, %.5f, %.5f, order %.2f", first, Math.sqrt(squares[1]), last, order)
        .isBetween(0.4, 1.3);
  }
}
