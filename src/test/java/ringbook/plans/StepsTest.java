package ringbook.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Vec3;
import ringbook.plans.Bunch.Form;
import ringbook.shots.Aim.Hold;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.units.Angle;
import ringbook.units.Length;

/** One step or none: rows, rings and strips written down by hand. */
final class StepsTest {

  private static final double DEGREE = Math.PI / 180;

  private static Candidate at(double azimuth, double elevation) {
    Length distance = new Length(0.5);
    RingShape shape =
        new RingShape(Pose.STANDING, Angle.ofDegrees(elevation), distance, new Vec3(0, 0, 1));
    Setup setup = new Setup(Pose.STANDING, Hold.UPRIGHT, distance, 1);
    return new Candidate(new Viewpoint(shape.at(1, Angle.ofDegrees(azimuth)), setup), shape, null);
  }

  private static List<Candidate> level(double... azimuths) {
    List<Candidate> all = new ArrayList<>();
    for (double azimuth : azimuths) {
      all.add(at(azimuth, 20));
    }
    return all;
  }

  private static Bunch strip(double... pairs) {
    List<Candidate> all = new ArrayList<>();
    for (int i = 0; i < pairs.length; i += 2) {
      all.add(at(pairs[i], pairs[i + 1]));
    }
    return new Bunch(Form.UPWARDS, "", all);
  }

  @Test
  void a_closed_ring_has_one_step_and_no_gap() {
    Steps steps = Steps.of(level(-170, 70, -50));
    assertThat(steps.areEven()).isTrue();
    assertThat(steps.gaps()).isEmpty();
    assertThat(steps.step()).isCloseTo(120 * DEGREE, within(1e-9));
    assertThat(new Bunch(Form.LEVEL, "", level(-170, 70, -50)).isEven()).isTrue();
  }

  @Test
  void a_ring_with_something_in_the_way_has_one_gap() {
    Steps steps = Steps.of(level(0, 30, 60, 90, 120, 150, 180, 210, 240, 300, 330));
    assertThat(steps.areEven()).isTrue();
    assertThat(steps.step()).isCloseTo(30 * DEGREE, within(1e-9));
    assertThat(steps.gaps()).hasSize(1);
    assertThat(steps.gaps().get(0)[0]).isCloseTo(240 * DEGREE, within(1e-9));
    assertThat(steps.gaps().get(0)[1]).isCloseTo(300 * DEGREE, within(1e-9));
  }

  @Test
  void a_row_has_its_gap_outside() {
    Steps steps = Steps.of(level(350, 5, 20, 35));
    assertThat(steps.areEven()).isTrue();
    assertThat(steps.step()).isCloseTo(15 * DEGREE, within(1e-9));
    assertThat(steps.gaps()).hasSize(1);
    Arc arc = Arc.of(level(350, 5, 20, 35));
    assertThat(arc.isRound()).isFalse();
    assertThat(arc.width()).isCloseTo(45 * DEGREE, within(1e-9));
    assertThat(arc.from() % (2 * Math.PI)).isCloseTo(350 * DEGREE, within(1e-9));
  }

  @Test
  void photographs_here_and_there_have_no_step() {
    assertThat(Steps.of(level(0, 10, 50, 60, 130, 200, 300)).areEven()).isFalse();
    assertThat(Steps.of(level(0, 3, 150)).areEven()).as("two close, one far").isFalse();
    List<Candidate> slanting = level(0, 30, 60);
    slanting.add(at(90, 25));
    assertThat(new Bunch(Form.LEVEL, "", slanting).isEven()).as("not level").isFalse();
  }

  @Test
  void a_strip_goes_straight_up_in_even_steps() {
    assertThat(strip(40, 0, 40, 12, 40, 24).isEven()).isTrue();
    assertThat(strip(40, 0, 40, 12, 40, 24).abreast()).isEqualTo(1);
    assertThat(strip(40, 0, 40, 6, 40, 24).isEven()).as("uneven").isFalse();
    assertThat(strip(40, 0, 48, 12, 40, 24).isEven()).as("not straight").isFalse();
  }

  @Test
  void or_two_side_by_side_at_each_height() {
    Bunch twofold = strip(35, 0, 45, 0, 35, 12, 45, 12, 35, 24, 45, 24);
    assertThat(twofold.abreast()).isEqualTo(2);
    assertThat(twofold.isEven()).isTrue();
    assertThat(strip(35, 0, 45, 0, 40, 12).abreast()).as("two, then one").isZero();
  }
}
