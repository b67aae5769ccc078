package ringbook.bench;

import java.io.IOException;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringbook.course.compose.CourseSources;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.problems.Problems;
import ringbook.sheets.AnswerSheets;
import ringbook.sheets.ClassTally;
import ringbook.sheets.GradeBook;
import ringbook.sheets.LearnerMarks;
import ringbook.sheets.MadeSheet;
import ringbook.sheets.MarkSink;
import ringbook.sheets.Marking;
import ringbook.sheets.SheetRules;

/**
 * Prints how many number answers are marked in a second on one core, from the file to grade book
 * and summary, and how much memory is in use after a collection amid the work. The last column sets
 * the time of 100,000 answers against a fixed piece of arithmetic timed in the same run.
 */
public final class MarkBench {

  private static final int RUNS = 3;
  private static final String[] SIZES = {"1000", "100000", "1000000"};

  private MarkBench() {}

  /** Runs the bench for so many answers each; 1,000, 100,000 and 1,000,000 if none are named. */
  public static void main(String[] arguments) throws IOException {
    Locale.setDefault(Locale.ROOT);
    System.out.println(
        "numbers     answers   answers a second   heap in use   100,000 / reference");
    for (boolean own : new boolean[] {false, true}) {
      for (String count : arguments.length == 0 ? SIZES : arguments) {
        line(own, Integer.parseInt(count));
      }
    }
  }

  /** Read anew for every run, so that no variant is known yet. */
  private static List<ExerciseSource> course() throws IOException {
    return CourseSources.read(Path.of("lessons/course.yaml"), new Problems())
        .orElseThrow()
        .plainSources(new Problems());
  }

  private static void line(boolean own, int count) throws IOException {
    Path sheet = Files.createTempFile("ringbook-bench", ".csv");
    try {
      new MadeSheet(course(), 1).write(sheet, count, own);
      double best = Double.POSITIVE_INFINITY;
      double reference = Double.POSITIVE_INFINITY;
      for (int i = 0; i < RUNS; i++) {
        reference = Math.min(reference, reference());
        best = Math.min(best, seconds(own, sheet, new Nothing()));
      }
      HeapProbe probe = new HeapProbe(count);
      seconds(own, sheet, probe);
      System.out.printf(
          Locale.ROOT,
          "%-7s %,11d %,18.0f %10.1f MB %21.2f%n",
          own ? "own" : "book",
          count,
          count / best,
          probe.bytes / 1e6,
          best * 100_000 / count / reference);
    } finally {
      Files.delete(sheet);
    }
  }

  private static double seconds(boolean own, Path sheet, MarkSink probe) throws IOException {
    List<ExerciseSource> exercises = course();
    long start = cpu();
    List<String> ids = exercises.stream().map(ExerciseSource::id).toList();
    List<Exercise> plain = exercises.stream().map(ExerciseSource::own).toList();
    try (AnswerSheets sheets =
        new AnswerSheets(new SheetRules(ids, Optional.empty(), own), new Problems())) {
      sheets.read(sheet);
      GradeBook book = new GradeBook(Writer.nullWriter(), plain, false);
      new Marking(exercises).run(sheets, Optional.empty(), List.of(book, probe));
    }
    return (cpu() - start) / 1e9;
  }

  /** The time this thread has worked: other work on the machine does not count. */
  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static double reference() {
    long start = cpu();
    double x = 2;
    for (int i = 0; i < 10_000_000; i++) {
      x = Math.sqrt(x + i);
    }
    return x > 0 ? (cpu() - start) / 1e9 : 0;
  }

  private static class Nothing implements MarkSink {
    @Override
    public void learner(LearnerMarks marks) throws IOException {
      // The bench marks only.
    }

    @Override
    public void end(ClassTally tally) {
      // Nothing is kept.
    }
  }

  /** Collects and looks once, when half of the answers are marked. */
  private static final class HeapProbe extends Nothing {
    private final int count;
    private int seen;
    private long bytes;

    private HeapProbe(int count) {
      this.count = count;
    }

    @Override
    public void learner(LearnerMarks marks) throws IOException {
      seen += marks.marks().size();
      if (bytes == 0 && seen >= count / 2) {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        bytes = runtime.totalMemory() - runtime.freeMemory();
      }
    }
  }
}
