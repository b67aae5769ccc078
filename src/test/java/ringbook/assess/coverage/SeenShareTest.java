package ringbook.assess.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.assess.SeenArc;
import ringbook.geometry.Ball;
import ringbook.geometry.Cylinder;
import ringbook.geometry.Torus;
import ringbook.shots.Scene;
import ringbook.units.Angle;
import ringbook.units.Length;

/** What one station sees of solids, against closed forms. */
final class SeenShareTest {

  private static final Ball BALL = new Ball(Length.ofCentimetres(30));

  /** Cap of half angle {@code i − asin((R/D) sin i)}; spherical trigonometry. */
  @ParameterizedTest
  @CsvSource({"0.4,60", "0.4,80", "0.8,45", "2,60", "0.3,70"})
  void the_cap_of_a_ball_within_the_limit(double metres, String limit) {
    Scene scene = Before.open(BALL, limit);
    Seeing seeing = Before.seeing(scene, BALL, 20_000);
    double i = Math.toRadians(Double.parseDouble(limit));
    double cap = i - Math.asin(0.15 / metres * Math.sin(i));
    View view =
        seeing.look(Before.towards(seeing, Angle.ofDegrees(37), Angle.ofDegrees(25), metres));
    assertThat(view.area() / seeing.surface().patches().area())
        .isCloseTo((1 - Math.cos(cap)) / 2, within(0.002));
  }

  @ParameterizedTest
  @CsvSource({"0.3", "0.6", "2"})
  void the_share_of_a_ball_in_sight(double metres) {
    Scene scene = Before.open(BALL, "60");
    Seeing seeing = Before.seeing(scene, BALL, 20_000);
    View view =
        seeing.look(Before.towards(seeing, Angle.ofDegrees(200), Angle.ofDegrees(10), metres));
    double expected =
        SeenArc.shareOfBall(Length.ofCentimetres(15), new Length(metres)).orElseThrow();
    assertThat(Before.share(seeing, view, Look::inPicture)).isCloseTo(expected, within(0.003));
  }

  /** In sight: the arc between two tangent planes. Within the limit: counted on a fine grid. */
  @ParameterizedTest
  @CsvSource({"0.4,60", "0.7,50", "3,70"})
  void the_arc_of_an_upright_wall(double metres, String limit) {
    Cylinder wall = new Cylinder(Length.ofCentimetres(20), Length.ofCentimetres(24));
    Scene scene = Before.open(wall, limit);
    Seeing seeing = Before.seeing(scene, wall, 20_000);
    View view = seeing.look(Before.towards(seeing, Angle.ofDegrees(100), Angle.ZERO, metres));
    double side = 0.2 * Math.PI * 0.24;
    double all = seeing.surface().patches().area();
    double arc =
        SeenArc.visible(Length.ofCentimetres(10), new Length(metres)).orElseThrow().radians();
    assertThat(Before.share(seeing, view, Look::inPicture) * all / side)
        .isCloseTo(arc / (2 * Math.PI), within(0.005));
    assertThat(view.area() / side)
        .isCloseTo(gridded(metres, Math.toRadians(Double.parseDouble(limit))), within(0.004));
  }

  private static double gridded(double metres, double limit) {
    int in = 0;
    int steps = 700;
    for (int a = 0; a < steps; a++) {
      double turn = 2 * Math.PI * (a + 0.5) / steps;
      for (int h = 0; h < steps; h++) {
        double z = 0.24 * ((h + 0.5) / steps - 0.5);
        double x = metres - 0.1 * Math.cos(turn);
        double y = -0.1 * Math.sin(turn);
        double facing = x * Math.cos(turn) + y * Math.sin(turn);
        in += facing >= Math.cos(limit) * Math.sqrt(x * x + y * y + z * z) ? 1 : 0;
      }
    }
    return in / (double) (steps * steps);
  }

  /**
   * Along its axis from far away half of a torus is in sight, and a share of {@code i/π} no more
   * slanted than i: the area of the strip of the tube between −i and i about its top is {@code 2π R
   * · 2 i r}, that of the whole {@code 4π² R r} (Pappus).
   */
  @ParameterizedTest
  @CsvSource({"30", "45", "60"})
  void a_torus_from_above(String limit) {
    Torus torus = new Torus(Length.ofCentimetres(20), Length.ofCentimetres(6));
    Scene scene = Before.open(torus, limit);
    Seeing seeing = Before.seeing(scene, torus, 10_000);
    View view = seeing.look(Before.towards(seeing, Angle.ZERO, Angle.RIGHT, 60));
    assertThat(Before.share(seeing, view, Look::inPicture)).isCloseTo(0.5, within(0.01));
    assertThat(view.area() / seeing.surface().patches().area())
        .isCloseTo(Double.parseDouble(limit) / 180, within(0.005));
  }

  /**
   * Patches are tried as points: those on the edge of what is seen err by their size at random, so
   * the error of a share falls with their number n as n^(−3/4) where edges are crossed without
   * pattern. Measured here over 24 directions; the order is in the message.
   */
  @Test
  void shares_come_nearer_with_more_patches() {
    Scene scene = Before.open(BALL, "60");
    double i = Math.toRadians(60);
    double cap = (1 - Math.cos(i - Math.asin(0.15 / 0.5 * Math.sin(i)))) / 2;
    double[] errors = new double[3];
    int[] numbers = {250, 1000, 4000};
    for (int k = 0; k < 3; k++) {
      Seeing seeing = Before.seeing(scene, BALL.mesh(Length.ofMillimetres(3)), numbers[k]);
      for (int turn = 0; turn < 24; turn++) {
        Viewpoint from =
            Before.towards(seeing, Angle.ofDegrees(15.7 * turn), Angle.ofDegrees(3.5 * turn), 0.5);
        double off = seeing.look(from).area() / seeing.surface().patches().area() - cap;
        errors[k] += off * off / 24;
      }
      errors[k] = Math.sqrt(errors[k]);
    }
    double order = Math.log(errors[0] / errors[2]) / Math.log(4000.0 / 250);
    assertThat(order)
        .as(
            "errors %s, order %.2f in the number of patches",
            List.of(errors[0], errors[1], errors[2]), order)
        .isBetween(0.5, 1.1);
  }
}
