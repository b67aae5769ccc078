package ringbook.course.compose;

import com.vladsch.flexmark.util.ast.Document;
import java.util.List;
import ringbook.problems.Position;

/**
 * A lesson as it was read.
 *
 * @param id its name in links
 * @param title plain text
 * @param aim one sentence, plain text
 * @param everyday words of the glossary that it uses in their everyday sense
 * @param body the Markdown below the front matter
 * @param lines finds the places of its nodes
 */
record Lesson(
    String id, String title, String aim, List<Word> everyday, Document body, Lines lines) {

  Lesson {
    everyday = List.copyOf(everyday);
  }

  /**
   * A word of the front matter.
   *
   * @param text the word
   * @param position where its line stands
   */
  record Word(String text, Position position) {}

  /** The words without their places. */
  List<String> everydayWords() {
    return everyday.stream().map(Word::text).toList();
  }
}
