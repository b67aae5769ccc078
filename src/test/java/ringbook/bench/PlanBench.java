package ringbook.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Surface;
import ringbook.assess.findings.Assessment;
import ringbook.course.compose.CourseSources;
import ringbook.ledger.Reckoning;
import ringbook.plans.Planner;
import ringbook.plans.Proposal;
import ringbook.problems.Problems;
import ringbook.shots.Scene;
import ringbook.units.Length;

/**
 * Prints how long a plan takes, by its parts, in time of the processor: once cold, then the median
 * of warm runs. The reference is ten million square roots that hang on each other, in the same run.
 */
public final class PlanBench {

  private static final int WARM_RUNS = 5;
  private static final int PATCHES = 1000;

  private final Map<String, List<Double>> times = new LinkedHashMap<>();

  private PlanBench() {}

  /** Runs the bench over course files; the demo's if none is named. */
  public static void main(String[] arguments) throws IOException {
    Locale.setDefault(Locale.ROOT);
    String[] files = arguments.length == 0 ? new String[] {"lessons/course.yaml"} : arguments;
    for (String file : files) {
      new PlanBench().run(Path.of(file));
    }
  }

  private void run(Path file) throws IOException {
    Proposal proposal = null;
    for (int i = 0; i <= WARM_RUNS; i++) {
      proposal = once(file);
    }
    System.out.println(file + ": " + proposal.proof());
    double unit = warm(times.get("reference"));
    for (Map.Entry<String, List<Double>> part : times.entrySet()) {
      double warm = warm(part.getValue());
      System.out.printf(
          Locale.ROOT,
          "  %-22s cold %6.0f ms  warm %6.0f ms  warm / reference %7.2f%n",
          part.getKey(),
          part.getValue().get(0),
          warm,
          warm / unit);
    }
  }

  private Proposal once(Path file) throws IOException {
    long start = time();
    Problems problems = new Problems();
    Scene scene = CourseSources.courseFile(file, problems).orElseThrow().scene();
    start = lap("read the course", start);
    double size = Math.max(scene.subject().height().metres(), scene.subject().width().metres());
    Surface surface = Surface.of(scene.standing(new Length(size / 40)), PATCHES);
    Reckoning reckoning = Reckoning.of(scene);
    Seeing seeing = new Seeing(scene, surface, reckoning.fNumber("sharp.fNumber"));
    start = lap("shape and patches", start);
    Proposal proposal = Planner.plan(seeing, reckoning).orElseThrow();
    start = lap("plan", start);
    Assessment.of(seeing, proposal.plan(), proposal.views());
    start = lap("judge", start);
    double x = 2;
    for (int i = 0; i < 10_000_000; i++) {
      x = Math.sqrt(x + 1);
    }
    times.computeIfAbsent("root", key -> new ArrayList<>()).add(x);
    times.remove("root");
    lap("reference", start);
    return proposal;
  }

  private static long time() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private long lap(String part, long start) {
    long now = time();
    times.computeIfAbsent(part, key -> new ArrayList<>()).add((now - start) / 1e6);
    return now;
  }

  private static double warm(List<Double> all) {
    double[] warm = all.subList(1, all.size()).stream().mapToDouble(t -> t).sorted().toArray();
    return Arrays.stream(warm).skip(warm.length / 2).findFirst().orElse(0);
  }
}
