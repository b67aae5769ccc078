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
      makeAside(course, swap);
    }
    return problems;
  }

  private void makeAside(ComposedCourse course, Swap swap) throws IOException {
    CourseFolder.begin(swap.making());
    boolean done = false;
    try {
      for (Output output : outputs) {
        output.write(course, swap.making());
      }
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
