package ringbook.sheets;

import java.util.ArrayList;
import java.util.List;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;

/**
 * The questions of one learner with the learner's own numbers, and their answers.
 *
 * @param learner whose numbers they are
 * @param lines one for each exercise, in the order of the course
 */
public record AnswerKey(String learner, List<Line> lines) {

  public AnswerKey {
    lines = List.copyOf(lines);
  }

  /**
   * One question.
   *
   * @param exercise its id
   * @param title its title
   * @param question the question, plain text
   * @param listed options, steps or items below it
   * @param answerWith what an answer looks like
   * @param answer the right answer
   * @param working how it comes about, line by line
   */
  public record Line(
      String exercise,
      String title,
      String question,
      List<String> listed,
      String answerWith,
      String answer,
      List<String> working) {

    public Line {
      listed = List.copyOf(listed);
      working = List.copyOf(working);
    }
  }

  /** The key of {@code learner}. */
  public static AnswerKey of(String learner, List<ExerciseSource> exercises) {
    List<Line> lines = new ArrayList<>();
    for (ExerciseSource source : exercises) {
      Exercise exercise = source.forLearner(learner);
      lines.add(
          new Line(
              exercise.id(),
              exercise.title(),
              source.question(exercise),
              exercise.listed(),
              exercise.answerHint(),
              exercise.answerText(),
              exercise.solution()));
    }
    return new AnswerKey(learner, lines);
  }
}
