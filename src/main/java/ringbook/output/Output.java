package ringbook.output;

import java.io.IOException;
import java.nio.file.Path;
import ringbook.course.ComposedCourse;

/** One format the course is written in. */
public interface Output {

  /** Its name in messages and timings, such as {@code site}. */
  String name();

  /**
   * Writes the course below {@code folder}, which exists and is empty or holds other outputs'
   * files.
   *
   * @throws IOException if a file cannot be written
   */
  void write(ComposedCourse course, Path folder) throws IOException;
}
