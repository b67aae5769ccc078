package ringbook.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import ringbook.course.ComposedCourse;
import ringbook.problems.Problem;

/**
 * Runs the outputs and puts their files in place in one step: whoever opens the folder finds the
 * whole old course or the whole new one, never a mixture.
 */
public final class Publisher {

  private final List<Output> outputs;

  /** A publisher that runs these outputs in this order. */
  public Publisher(List<Output> outputs) {
    this.outputs = List.copyOf(outputs);
  }

  /**
   * Writes the course into {@code folder}, in place of the course that was made there before. If
   * anything goes wrong, the folder is as it was.
   *
   * @return why the folder may not be replaced; empty if the course is in place
   * @throws IOException if a file cannot be written
   */
  public List<Problem> publish(ComposedCourse course, Path folder) throws IOException {
    return publish(
        folder,
        making -> {
          for (Output output : outputs) {
            output.write(course, making);
          }
        });
  }

  /** Writes all files of a folder. */
  @FunctionalInterface
  public interface FolderWriter {

    /** Writes into {@code making}, which is empty but for our marker. */
    void write(Path making) throws IOException;
  }

  /**
   * Lets {@code writer} write {@code folder}, in place of what was made there before. If anything
   * goes wrong, the folder is as it was.
   *
   * @return why the folder may not be replaced; empty if all is in place
   * @throws IOException if a file cannot be written
   */
  public static List<Problem> publish(Path folder, FolderWriter writer) throws IOException {
    Path target = Files.exists(folder) ? folder.toRealPath() : folder.toAbsolutePath().normalize();
    if (target.getFileName() == null) {
      return List.of(CourseFolder.problem(folder, "the top of a disk cannot hold a course", ""));
    }
    Swap swap = new Swap(target);
    List<Problem> inTheWay = CourseFolder.objections(folder, List.of(swap.making(), swap.old()));
    if (!inTheWay.isEmpty()) {
      return inTheWay;
    }
    swap.clearUp();
    List<Problem> problems = CourseFolder.objections(folder, List.of(target));
    if (problems.isEmpty()) {
      makeAside(writer, swap);
    }
    return problems;
  }

  private static void makeAside(FolderWriter writer, Swap swap) throws IOException {
    CourseFolder.begin(swap.making());
    boolean done = false;
    try {
      writer.write(swap.making());
      CourseFolder.list(swap.making());
      swap.putInPlace();
      done = true;
    } finally {
      if (!done) {
        swap.dropMaking();
      }
    }
  }
}
