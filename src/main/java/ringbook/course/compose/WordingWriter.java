package ringbook.course.compose;

import com.vladsch.flexmark.util.sequence.BasedSequence;
import ringbook.course.markdown.Markdown;
import ringbook.exercises.Wording;
import ringbook.ledger.Reckoning;
import ringbook.problems.Position;

/** Writes the texts of an exercise, with the values of the exercise's own scene. */
final class WordingWriter {

  private final Scope lesson;
  private final Reckoning reckoning;

  WordingWriter(Scope lesson, Reckoning reckoning) {
    this.lesson = lesson;
    this.reckoning = reckoning;
  }

  /** The text as blocks. */
  String blocks(Wording wording) {
    return new BlockWriter(scope(wording))
        .inside(Markdown.parse(BasedSequence.of(wording.markdown())));
  }

  /** The text as one line. */
  String line(Wording wording) {
    return OneParagraph.write(BasedSequence.of(wording.markdown()), scope(wording));
  }

  private Scope scope(Wording wording) {
    return new Scope(
        lesson.page(),
        offset -> place(wording, offset),
        lesson.values().over(reckoning),
        lesson.dropped());
  }

  /** In block style every line of a text begins in the column of its first. */
  private static Position place(Wording wording, int offset) {
    String before = wording.markdown().substring(0, Math.min(offset, wording.markdown().length()));
    int line = (int) before.chars().filter(c -> c == '\n').count();
    int column = before.length() - 1 - before.lastIndexOf('\n');
    Position at = wording.at();
    return new Position(at.file(), at.line() + line, at.column() + column);
  }
}
