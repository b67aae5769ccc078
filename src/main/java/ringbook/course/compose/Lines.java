package ringbook.course.compose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;
import ringbook.problems.Position;

/** Finds the line and the column of a place in a file's text. */
final class Lines implements IntFunction<Position> {

  private final String file;
  private final List<Integer> starts = new ArrayList<>();

  Lines(String file, String text) {
    this.file = file;
    starts.add(0);
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\n') {
        starts.add(i + 1);
      }
    }
  }

  /** Where the character at {@code offset} stands. */
  @Override
  public Position apply(int offset) {
    int found = Collections.binarySearch(starts, offset);
    int line = found >= 0 ? found : -found - 2;
    return new Position(file, line + 1, offset - starts.get(line) + 1);
  }
}
