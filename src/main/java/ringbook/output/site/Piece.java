package ringbook.output.site;

import freemarker.core.TemplateXMLOutputModel;
import java.util.List;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedFigure;
import ringbook.course.ComposedLesson;
import ringbook.course.compose.Branches;

/**
 * A block of a lesson as the page template takes it.
 *
 * @param kind {@code text}, {@code figure}, {@code exercise} or {@code branch}
 * @param block the figure or exercise for its plain texts; null for others
 * @param body the text, the drawing, the question or the start tag of the branch
 * @param more the caption or the worked solution; null for text
 * @param options what to choose from
 * @param pieces what the branch holds
 */
public record Piece(
    String kind,
    Object block,
    TemplateXMLOutputModel body,
    TemplateXMLOutputModel more,
    List<Choice> options,
    List<Piece> pieces) {

  /** Keeps the lists. */
  public Piece {
    options = List.copyOf(options);
    pieces = List.copyOf(pieces);
  }

  private Piece(
      String kind,
      Object block,
      TemplateXMLOutputModel body,
      TemplateXMLOutputModel more,
      List<Choice> options) {
    this(kind, block, body, more, options, List.of());
  }

  /** All blocks, in order. */
  static List<Piece> all(List<ComposedLesson.Block> blocks, Fragments fragments) {
    return blocks.stream().map(block -> of(block, fragments)).toList();
  }

  /**
   * One thing to choose.
   *
   * @param letter its letter
   * @param text its words
   */
  public record Choice(String letter, TemplateXMLOutputModel text) {}

  static Piece of(ComposedLesson.Block block, Fragments fragments) {
    if (block instanceof ComposedLesson.FigureBlock drawn) {
      ComposedFigure figure = drawn.figure();
      return new Piece(
          "figure",
          figure,
          fragments.ready(figure.svg()),
          fragments.ready(figure.captionXhtml()),
          List.of());
    }
    if (block instanceof ComposedLesson.ExerciseBlock asked) {
      ComposedExercise exercise = asked.exercise();
      return new Piece(
          "exercise",
          exercise,
          fragments.ready(exercise.questionXhtml()),
          fragments.ready(exercise.solutionXhtml()),
          exercise.options().stream()
              .map(o -> new Choice(o.letter(), fragments.ready(o.textXhtml())))
              .toList());
    }
    if (block instanceof ComposedLesson.Branch branch) {
      return new Piece(
          "branch",
          null,
          fragments.ready(Branches.open(branch)),
          null,
          List.of(),
          all(branch.blocks(), fragments));
    }
    ComposedLesson.Markup text = (ComposedLesson.Markup) block;
    return new Piece("text", null, fragments.ready(text.xhtml()), null, List.of());
  }
}
