package ringbook.course.compose;

import com.vladsch.flexmark.ext.footnotes.FootnoteBlock;
import java.util.ArrayList;
import java.util.List;

/** The footnotes of a lesson, numbered in the order they are first referred to. */
final class Footnotes {

  private final List<FootnoteBlock> notes = new ArrayList<>();
  private final List<Scope> scopes = new ArrayList<>();

  /** The number of {@code note}, from 1; negative if it has been referred to before. */
  int number(FootnoteBlock note, Scope scope) {
    int known = notes.indexOf(note);
    if (known >= 0) {
      return -(known + 1);
    }
    notes.add(note);
    scopes.add(scope);
    return notes.size();
  }

  /** All that were referred to. */
  List<FootnoteBlock> notes() {
    return notes;
  }

  /** What the note with that number, from 1, is written with. */
  Scope scope(int number) {
    return scopes.get(number - 1);
  }
}
