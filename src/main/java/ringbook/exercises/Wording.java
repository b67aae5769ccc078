package ringbook.exercises;

import ringbook.problems.Position;

/**
 * A piece of text an author wrote in an exercise: Markdown that may hold values of the ledger.
 *
 * @param markdown as written
 * @param at where it begins in the exercise file
 */
public record Wording(String markdown, Position at) {

  /** The same place with other words, such as the words with the values put in. */
  public Wording with(String words) {
    return new Wording(words, at);
  }
}
