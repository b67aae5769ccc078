package ringbook.output.site;

import freemarker.core.TemplateXMLOutputModel;
import java.util.List;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedFigure;
import ringbook.course.ComposedLesson;

/**
 * A block of a lesson as the page template takes it.
 *
 * @param kind {@code text}, {@code figure} or {@code exercise}
 * @param block the figure or exercise for its plain texts; null for text
 * @param body the text, the drawing or the question
 * @param more the caption or the worked solution; null for text
 * @param options what to choose from
 */
public record Piece(
    String kind,
    Object block,
    TemplateXMLOutputModel body,
    TemplateXMLOutputModel more,
    List<Choice> options) {

  /** Keeps the options. */
  public Piece {
    options = List.copyOf(options);
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
    ComposedLesson.Markup text = (ComposedLesson.Markup) block;
    return new Piece("text", null, fragments.ready(text.xhtml()), null, List.of());
  }
}
