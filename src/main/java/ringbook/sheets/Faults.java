package ringbook.sheets;

import java.util.Map;
import java.util.TreeMap;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** The faults of answer sheets: all are counted, and of each file as many told as can be read. */
final class Faults {

  /** So many faults of a file are told one by one. */
  static final int MOST = 100;

  private final Problems problems;
  private final Map<String, Integer> counts = new TreeMap<>();

  Faults(Problems problems) {
    this.problems = problems;
  }

  void add(Position at, String message, String help) {
    if (counts.merge(at.file(), 1, Integer::sum) <= MOST) {
      problems.add(at, message, help);
    }
  }

  /** Says how many were not told. */
  void end() {
    counts.forEach(
        (file, count) -> {
          if (count > MOST) {
            problems.add(
                Position.ofFile(file),
                "the file has " + (count - MOST) + " more faults than are listed here",
                "mend those that are listed, then mark again");
          }
        });
    counts.clear();
  }
}
