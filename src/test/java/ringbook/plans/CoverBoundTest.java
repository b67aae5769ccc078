package ringbook.plans;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;

/**
 * The bound holds: against the linear program solved by Apache Commons Math, and against the true
 * least number found by trying every set of stations.
 */
final class CoverBoundTest {

  private static final int VIEWS = 3;

  static LongStream seeds() {
    return Scenes.seeds();
  }

  /** Patches seen by random stations, each by at least three. */
  private static List<int[]> random(SplittableRandom random, int patches, int stations) {
    List<int[]> seers = new ArrayList<>();
    for (int p = 0; p < patches; p++) {
      double share = 0.2 + 0.6 * random.nextDouble();
      int[] of = new int[0];
      while (of.length < VIEWS) {
        of =
            java.util.stream.IntStream.range(0, stations)
                .filter(s -> random.nextDouble() < share)
                .toArray();
      }
      seers.add(of);
    }
    return seers;
  }

  /**
   * The optimum, from the dual program, which needs no starting point: on the primal one the solver
   * stops above the optimum for some of these instances, whatever its rule.
   */
  private static double linear(List<int[]> seers, int stations) {
    double[] ones = new double[seers.size()];
    Arrays.fill(ones, 1);
    double[][] rows = new double[stations][seers.size()];
    for (int p = 0; p < seers.size(); p++) {
      for (int s : seers.get(p)) {
        rows[s][p] = 1;
      }
    }
    List<LinearConstraint> constraints = new ArrayList<>();
    for (double[] row : rows) {
      constraints.add(new LinearConstraint(row, Relationship.LEQ, 1));
    }
    return new SimplexSolver()
        .optimize(
            new LinearObjectiveFunction(ones, 0),
            new LinearConstraintSet(constraints),
            GoalType.MAXIMIZE,
            new NonNegativeConstraint(true))
        .getValue();
  }

  private static int exhaustive(List<int[]> seers, int stations) {
    int least = stations;
    for (int set = 0; set < 1 << stations; set++) {
      if (Integer.bitCount(set) < least && enough(seers, set)) {
        least = Integer.bitCount(set);
      }
    }
    return least;
  }

  private static boolean enough(List<int[]> seers, int set) {
    for (int[] of : seers) {
      int count = 0;
      for (int s : of) {
        count += set >> s & 1;
      }
      if (count < VIEWS) {
        return false;
      }
    }
    return true;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void never_exceeds_the_least_number_of_stations(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int stations = 5 + random.nextInt(8);
    List<int[]> seers = random(random, 1 + random.nextInt(12), stations);
    int bound = new CoverBound(seers, stations).stations(VIEWS);
    assertThat(bound).isBetween(VIEWS, exhaustive(seers, stations));
  }

  /** Weak duality from above, and near the optimum from below: within a tenth. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void comes_near_the_optimum_of_the_linear_program(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int stations = 5 + random.nextInt(25);
    List<int[]> seers = random(random, 2 + random.nextInt(25), stations);
    double optimum = linear(seers, stations);
    assertThat(new CoverBound(seers, stations).weight())
        .isLessThanOrEqualTo(optimum * (1 + 1e-9))
        .isGreaterThan(optimum * 0.9);
  }

  /** By hand: four patches side by side, each seen by stations of its own. */
  @Test
  void adds_up_what_has_nothing_in_common() {
    List<int[]> seers =
        List.of(
            new int[] {0, 1, 2}, new int[] {3, 4, 5, 6}, new int[] {7, 8, 9}, new int[] {0, 1, 2});
    CoverBound bound = new CoverBound(seers, 10);
    assertThat(bound.stations(VIEWS)).isEqualTo(9);
    assertThat(new CoverBound(List.of(), 4).stations(VIEWS)).isZero();
  }
}
