package ringbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import ringbook.course.ComposedCourse;
import ringbook.course.compose.CourseSources;
import ringbook.ledger.Reckoning;
import ringbook.output.Output;
import ringbook.output.book.BookOutput;
import ringbook.output.site.SiteOutput;
import ringbook.problems.Problems;

/**
 * Prints how long making the demo course takes, by its parts: once cold, then the median of warm
 * runs. The last column sets each part against a fixed piece of arithmetic timed in the same run,
 * so that figures of two machines compare.
 */
public final class MakeBench {

  private static final int WARM_RUNS = 7;
  private static final Path COURSE = Path.of("lessons/course.yaml");

  private final Map<String, List<Double>> times = new LinkedHashMap<>();

  private MakeBench() {}

  /** Runs the bench; no arguments. */
  public static void main(String[] arguments) throws IOException {
    Locale.setDefault(Locale.ROOT);
    new MakeBench().run();
  }

  @FunctionalInterface
  private interface Part<T> {
    T run() throws IOException;
  }

  private void run() throws IOException {
    for (int i = 0; i <= WARM_RUNS; i++) {
      once();
    }
    double unit = median(times.get("reference arithmetic"));
    System.out.println("part                     cold      warm   warm / reference");
    for (Map.Entry<String, List<Double>> part : times.entrySet()) {
      List<Double> all = part.getValue();
      double warm = median(all.subList(1, all.size()));
      System.out.printf(
          Locale.ROOT,
          "%-20s %6.0f ms %6.0f ms %10.2f%n",
          part.getKey(),
          all.get(0),
          warm,
          warm / unit);
    }
  }

  private void once() throws IOException {
    Path folder = Files.createTempDirectory("ringbook-bench");
    try {
      CourseSources sources =
          timed("read the files", () -> CourseSources.read(COURSE, new Problems()).orElseThrow());
      timed("work the ledger out", () -> all(Reckoning.of(sources.file().scene())));
      ComposedCourse course = timed("compose", () -> sources.compose(new Problems()).orElseThrow());
      for (Output output : List.of(new SiteOutput(), new BookOutput())) {
        timed(
            "write the " + output.name(),
            () -> {
              output.write(course, folder);
              return course;
            });
      }
      timed("reference arithmetic", MakeBench::reference);
    } finally {
      delete(folder);
    }
  }

  private <T> T timed(String part, Part<T> work) throws IOException {
    long start = System.nanoTime();
    T result = work.run();
    times.computeIfAbsent(part, name -> new ArrayList<>()).add((System.nanoTime() - start) / 1e6);
    return result;
  }

  private static int all(Reckoning reckoning) {
    reckoning.ledger().keys().forEach(reckoning::of);
    return reckoning.ledger().keys().size();
  }

  /** About a tenth of a second of square roots that depend on each other. */
  private static double reference() {
    double x = 2;
    for (int i = 0; i < 10_000_000; i++) {
      x = Math.sqrt(x + i);
    }
    return x;
  }

  private static double median(List<Double> values) {
    double[] sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
