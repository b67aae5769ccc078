package ringbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against Apache Commons Math. */
final class PointsTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(1, Integer.getInteger("seeds", 200));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void agree_with_a_statistics_library(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int exercises = random.nextInt(1, 30);
    long[] counts = new long[4 * exercises + 1];
    DescriptiveStatistics library = new DescriptiveStatistics();
    int learners = random.nextInt(2, 60);
    for (int i = 0; i < learners; i++) {
      int quarters = random.nextInt(counts.length);
      counts[quarters]++;
      library.addValue(quarters / 4.0);
    }
    Points points = new Points(counts, exercises);
    assertThat(points.mean()).isCloseTo(library.getMean(), within(1e-12));
    assertThat(points.deviation()).isCloseTo(library.getStandardDeviation(), within(1e-12));
    Percentile percentile = new Percentile().withEstimationType(EstimationType.R_6);
    percentile.setData(library.getValues());
    for (double share : new double[] {0.01, 0.25, 0.5, 0.75, 0.9, 1}) {
      assertThat(points.quantile(share)).isCloseTo(percentile.evaluate(100 * share), within(1e-12));
    }
    assertThat(points.classes(10).stream().mapToLong(Long::longValue).sum()).isEqualTo(learners);
  }

  @Test
  void a_class_holds_its_lower_end_and_the_last_one_all_points() {
    long[] counts = new long[41];
    counts[4] = 3;
    counts[3] = 1;
    counts[40] = 2;
    assertThat(new Points(counts, 10).classes(10))
        .containsExactly(1L, 3L, 0L, 0L, 0L, 0L, 0L, 0L, 0L, 2L);
  }
}
