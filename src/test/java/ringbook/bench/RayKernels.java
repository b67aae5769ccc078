package ringbook.bench;

import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.Statistics;
import ringbook.geometry.RayTree;

/**
 * The kernels and the building of the tree under JMH, over about 22,800 triangles, 20,000 patches
 * and ten stations. Wall time: on a shared machine look at the fastest, too.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 1,
    jvmArgs = {"-Xmx1g", "-XX:+UseSerialGC"})
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 9, time = 1)
public class RayKernels {

  private RayTask task;
  private RayTree tree;

  /** Makes mesh, patches and tree. */
  @Setup
  public void prepare() {
    task = new RayTask(20_000, 10, false);
    tree = RayTree.of(task.mesh);
  }

  /** 200,000 rays, each alone. */
  @Benchmark
  public long oneByOne() {
    return task.oneByOne(tree);
  }

  /** 200,000 pairs of patch and station, a station at a time. */
  @Benchmark
  public long stationByStation() {
    return task.stationByStation(tree);
  }

  /** The tree alone. */
  @Benchmark
  public RayTree build() {
    return RayTree.of(task.mesh);
  }

  static void run() throws RunnerException {
    System.out.println("\nJMH, wall time: ms an operation");
    System.out.println("| kernel | median | fastest | slowest |\n|---|--:|--:|--:|");
    for (RunResult result :
        new Runner(
                new OptionsBuilder()
                    .include(RayKernels.class.getName())
                    .verbosity(VerboseMode.SILENT)
                    .build())
            .run()) {
      Statistics times = result.getPrimaryResult().getStatistics();
      System.out.printf(
          Locale.ROOT,
          "| %s | %.1f | %.1f | %.1f |%n",
          result.getPrimaryResult().getLabel(),
          times.getPercentile(50),
          times.getMin(),
          times.getMax());
    }
  }
}
