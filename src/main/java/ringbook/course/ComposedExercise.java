package ringbook.course;

import java.util.List;

/**
 * A self-check exercise with its worked solution.
 *
 * @param id as in answer sheets, such as {@code distance-owl}; unique in the course
 * @param number counted through its lesson, from 1
 * @param title a few words, plain text
 * @param questionXhtml the question, well-formed XHTML blocks
 * @param options what to choose from, in order; empty for a number question
 * @param answerHint what an answer looks like ("a length, with its unit"), plain text; empty where
 *     nothing is handed in
 * @param answer the right answer in a few words, plain text
 * @param solutionXhtml the worked solution, well-formed XHTML blocks
 * @param kind how it is answered: {@code number}, {@code choice}, {@code several}, {@code order},
 *     {@code pairs}, {@code fault}, {@code mend} (a fault with its right value) or {@code plan};
 *     empty where nothing is handed in
 */
public record ComposedExercise(
    String id,
    int number,
    String title,
    String questionXhtml,
    List<Option> options,
    String answerHint,
    String answer,
    String solutionXhtml,
    String kind) {

  public ComposedExercise {
    options = List.copyOf(options);
  }

  /** The same exercise with its question and its solution written in another way. */
  public ComposedExercise withTexts(String question, String solution) {
    return new ComposedExercise(
        id, number, title, question, options, answerHint, answer, solution, kind);
  }

  /**
   * One thing to choose.
   *
   * @param letter {@code a}, {@code b}, …
   * @param textXhtml inline XHTML
   */
  public record Option(String letter, String textXhtml) {}
}
