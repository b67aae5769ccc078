package ringbook.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ringbook.Scenes;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Surface;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.assess.findings.Assessment;
import ringbook.ledger.Reckoning;
import ringbook.plans.StandardPlan;
import ringbook.shots.Scene;
import ringbook.shots.ShotPlan;

/**
 * Prints the processor time of judging the demo's standard plan on one thread: medians of warm
 * runs, each also as a ratio to ten million square roots that hang on each other, timed in the same
 * run.
 */
public final class SeeingBench {

  private static final int RUNS = 9;
  private static final int WARM_UP = 4;

  private SeeingBench() {}

  /** Runs the bench; the number of patches may be given, 1500 without. */
  public static void main(String[] arguments) {
    int patches = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1500;
    Scene scene = Scenes.pot();
    Reckoning reckoning = Reckoning.of(scene);
    ShotPlan plan = StandardPlan.of(reckoning).orElseThrow();
    Seeing seeing =
        new Seeing(scene, Surface.standing(scene, patches), reckoning.fNumber("sharp.fNumber"));
    double[][] times = new double[4][RUNS];
    for (int run = -WARM_UP; run < RUNS; run++) {
      double[] now = once(seeing, plan);
      for (int k = 0; k < 4 && run >= 0; k++) {
        times[k][run] = now[k];
      }
    }
    String[] names = {"look from every station", "put the views together", "all, with findings"};
    double unit = median(times[3]);
    System.out.printf(
        Locale.ROOT, "%d patches, %d stations%n", seeing.surface().count(), plan.shots().size());
    for (int k = 0; k < 3; k++) {
      double warm = median(times[k]);
      System.out.printf(Locale.ROOT, "%-26s %6.0f ms %6.2f%n", names[k], warm, warm / unit);
    }
  }

  private static double[] once(Seeing seeing, ShotPlan plan) {
    double start = cpu();
    List<View> views = new ArrayList<>();
    for (ShotPlan.Shot shot : plan.shots()) {
      views.add(seeing.look(Viewpoint.of(shot)));
    }
    double looked = cpu();
    Coverage.of(seeing, views).graph().splitters();
    double covered = cpu();
    Assessment.of(seeing, plan);
    double judged = cpu();
    double x = 2;
    for (int i = 0; i < 10_000_000; i++) {
      x = Math.sqrt(x + i);
    }
    double counted = cpu() + (x < 0 ? 1 : 0);
    return new double[] {looked - start, covered - looked, judged - covered, counted - judged};
  }

  private static double cpu() {
    return java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e6;
  }

  private static double median(double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
