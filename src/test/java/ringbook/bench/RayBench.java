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
 * same rays are answered by it in turn with ours, once so that no ray slips through an edge, as
 * ours, and once its fastest way; where not, its columns stay empty. One thread, processor time of
 * that thread (the machine may be shared), medians. Then {@link RayKernels} runs under JMH.
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
    System.out.println(
        "Medians of " + RUNS + "; speeds in M a second; Embree's in brackets, robust / fast");
    System.out.println(
        """
        | triangles | stations | tree, ms | rays one by one | ratio \
        | pairs, a station at a time | ratio, both with the facing test | other answers |
        |--:|--:|--:|--:|--:|--:|--:|--:|\
        """);
    measure(new RayTask(20_000, 10, false), Optional.empty()); // warms the compiler up
    measure(new RayTask(20_000, 10, true), Optional.empty());
    for (int[] size : SIZES) {
      System.out.println(measure(new RayTask(size[0], size[1], false), reference));
    }
    System.out.println("The same with one triangle left out, so that the mesh is open:");
    System.out.println(measure(new RayTask(20_000, 100, true), reference));
  }

  /** Seconds of each run for the tree, the rays one by one, and the pairs. */
  private static final class Times {
    private final double[] tree = new double[RUNS];
    private final double[] rays = new double[RUNS];
    private final double[] pairs = new double[RUNS];

    void take(int run, EmbreeReference.Answer answer) {
      tree[run] = answer.build();
      rays[run] = answer.all();
      pairs[run] = answer.facing();
    }
  }

  private static String measure(RayTask task, Optional<EmbreeReference> reference)
      throws IOException, InterruptedException {
    Times ours = new Times();
    Times robust = new Times();
    Times fast = new Times();
    if (reference.isPresent()) {
      reference.get().give(task);
    }
    long differ = 0;
    for (int run = 0; run < RUNS; run++) {
      RayTree[] tree = new RayTree[1];
      long[] blocked = new long[1];
      ours.tree[run] = seconds(() -> tree[0] = RayTree.of(task.mesh));
      ours.rays[run] = seconds(() -> blocked[0] = task.oneByOne(tree[0]));
      ours.pairs[run] = seconds(() -> task.stationByStation(tree[0]));
      if (reference.isPresent()) {
        EmbreeReference.Answer answer = reference.get().ask(true);
        robust.take(run, answer);
        fast.take(run, reference.get().ask(false));
        differ = Math.abs(answer.blocked() - blocked[0]);
      }
    }
    double pairs = 1e-6 * task.pairs();
    String row =
        String.format(
            Locale.ROOT,
            "| %,d | %d | %.0f%s | %.2f%s | %s | %.2f%s | %s | %s |",
            task.mesh.triangles(),
            task.stations.size(),
            1e3 * median(ours.tree),
            both("%.0f", 1e3 * median(robust.tree), 1e3 * median(fast.tree)),
            pairs / median(ours.rays),
            both("%.2f", pairs / median(robust.rays), pairs / median(fast.rays)),
            ratios(ours.rays, robust.rays, fast.rays),
            pairs / median(ours.pairs),
            both("%.2f", pairs / median(robust.pairs), pairs / median(fast.pairs)),
            ratios(ours.pairs, robust.pairs, fast.pairs),
            String.format(Locale.ROOT, "%.2f %% of the rays", 1e-4 * differ / pairs));
    return reference.isPresent()
        ? row
        : row.replaceAll(" \\([^)]*\\)|0\\.00 / 0\\.00|0\\.00 % of the rays", "");
  }

  private static String both(String format, double robust, double fast) {
    return String.format(Locale.ROOT, " (" + format + " / " + format + ")", robust, fast);
  }

  private static String ratios(double[] ours, double[] robust, double[] fast) {
    double own = median(ours);
    return String.format(Locale.ROOT, "%.2f / %.2f", median(robust) / own, median(fast) / own);
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
