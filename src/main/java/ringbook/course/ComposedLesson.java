package ringbook.course;

import java.util.List;

/**
 * One lesson, one station of the course.
 *
 * @param id its name in links and file names, such as {@code right-distance}
 * @param number its place on the ring of stations, from 1
 * @param title plain text
 * @param aim one sentence that says what the reader can do after it, plain text
 * @param blocks its content in order
 */
public record ComposedLesson(String id, int number, String title, String aim, List<Block> blocks) {

  public ComposedLesson {
    blocks = List.copyOf(blocks);
  }

  /**
   * A piece of a lesson. Links inside the course are written {@code href="course:LESSON"} or {@code
   * href="course:LESSON#ID"} (also {@code course:quantities#KEY}); each output turns them into its
   * own.
   */
  public sealed interface Block {}

  /**
   * Running text: headings from h2 down, paragraphs, lists, tables, cautions, workings.
   *
   * @param xhtml well-formed, without a common parent
   */
  public record Markup(String xhtml) implements Block {}

  /** A figure. */
  public record FigureBlock(ComposedFigure figure) implements Block {}

  /** A self-check exercise. */
  public record ExerciseBlock(ComposedExercise exercise) implements Block {}
}
