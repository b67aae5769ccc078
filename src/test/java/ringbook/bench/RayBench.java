package ringbook.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.openjdk.jmh.runner.RunnerException;
import ringbook.geometry.RayTree;

/**
 * Prints how fast rays are answered, ray by ray and a station at a time, over more and more
 * triangles and stations, as rows of a table. Where Embree and a C++ compiler are installed, the
 * same rays are answered by it in turn with ours; where not, its columns stay empty. One thread,
 * processor time of that thread (the machine may be shared), medians. Then {@link RayKernels} runs
 * under JMH.
 */
public final class RayBench {

  private static final int RUNS = Integer.getInteger("runs", 3);
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  /** Triangles and stations of each row. */
  private static final int[][] SIZES = {
    {2_000, 100}, {20_000, 100}, {20_000, 400}, {65_000, 100}, {196_000, 100}, {196_000, 400}
  };

  private RayBench() {}

  /** Runs the bench; "table" or "jmh" as an argument leaves the other part out. */
  public static void main(String[] arguments)
      throws IOException, InterruptedException, RunnerException {
    Locale.setDefault(Locale.ROOT);
    String only = arguments.length > 0 ? arguments[0] : "";
    if (!only.equals("jmh")) {
      table();
    }
    if (!only.equals("table")) {
      RayKernels.run();
    }
  }

  private static void table() throws IOException, InterruptedException {
    Optional<EmbreeReference> reference = EmbreeReference.built();
    System.out.println("Medians of " + RUNS + "; speeds in M a second; Embree's in brackets");
    System.out.println(
        """
        | triangles | stations | tree, ms | rays one by one | ratio \
        | pairs, a station at a time | ratio, both with the facing test | other answers |
        |--:|--:|--:|--:|--:|--:|--:|--:|\
        """);
    measure(new RayTask(20_000, 10), Optional.empty()); // warms the compiler up
    for (int[] size : SIZES) {
      System.out.println(measure(new RayTask(size[0], size[1]), reference));
    }
  }

  private static String measure(RayTask task, Optional<EmbreeReference> reference)
      throws IOException, InterruptedException {
    double[][] ours = new double[3][RUNS];
    double[][] theirs = new double[3][RUNS];
    if (reference.isPresent()) {
      reference.get().give(task);
    }
    long differ = 0;
    for (int run = 0; run < RUNS; run++) {
      RayTree[] tree = new RayTree[1];
      long[] blocked = new long[1];
      ours[0][run] = seconds(() -> tree[0] = RayTree.of(task.mesh));
      ours[1][run] = seconds(() -> blocked[0] = task.oneByOne(tree[0]));
      ours[2][run] = seconds(() -> task.stationByStation(tree[0]));
      if (reference.isPresent()) {
        EmbreeReference.Answer answer = reference.get().ask();
        theirs[0][run] = answer.build();
        theirs[1][run] = answer.all();
        theirs[2][run] = answer.facing();
        differ = Math.abs(answer.blocked() - blocked[0]);
      }
    }
    double pairs = 1e-6 * task.pairs();
    String row =
        String.format(
            Locale.ROOT,
            "| %,d | %d | %.0f (%.0f) | %.2f (%.2f) | %.2f | %.2f (%.2f) | %.2f | %.2f %% of the"
                + " rays |",
            task.mesh.triangles(),
            task.stations.size(),
            1e3 * median(ours[0]),
            1e3 * median(theirs[0]),
            pairs / median(ours[1]),
            pairs / median(theirs[1]),
            median(theirs[1]) / median(ours[1]),
            pairs / median(ours[2]),
            pairs / median(theirs[2]),
            median(theirs[2]) / median(ours[2]),
            1e-4 * differ / pairs);
    return reference.isPresent() ? row : row.replaceAll("\\((0|Infinity)\\)|\\| 0\\.00 ", "| ");
  }

  private static double seconds(Runnable work) {
    long start = CLOCK.getCurrentThreadCpuTime();
    work.run();
    return (CLOCK.getCurrentThreadCpuTime() - start) / 1e9;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
