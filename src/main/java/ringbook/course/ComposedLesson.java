package ringbook.course;

import java.util.List;

/**
 * One lesson, one station of the course.
 *
 * @param id its name in links and file names, such as {@code right-distance}
 * @param number its place on the ring of stations, from 1
 * @param title plain text
 * @param aim one sentence that says what the reader can do after it, plain text
 * @param blocks its content in order, for the course's own scene
 * @param live the same, and with it what the lesson says for other scenes: with {@link Branch}
 *     blocks, and {@code div.branch} inside markup
 */
public record ComposedLesson(
    String id, int number, String title, String aim, List<Block> blocks, List<Block> live) {

  public ComposedLesson {
    blocks = List.copyOf(blocks);
    live = List.copyOf(live);
  }

  /** A lesson that says the same for every scene. */
  public ComposedLesson(String id, int number, String title, String aim, List<Block> blocks) {
    this(id, number, title, aim, blocks, blocks);
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

  /**
   * What the lesson says only for some scenes.
   *
   * @param condition an expression; see {@link ringbook.values}
   * @param wanted whether it stands where the condition holds, or where it does not
   * @param shown whether it stands in the course's own scene
   * @param blocks what it says; where it is not shown, figures have no drawing and workings no
   *     lines yet
   */
  public record Branch(String condition, boolean wanted, boolean shown, List<Block> blocks)
      implements Block {
    public Branch {
      blocks = List.copyOf(blocks);
    }
  }

  /** A self-check exercise. */
  public record ExerciseBlock(ComposedExercise exercise) implements Block {}
}
