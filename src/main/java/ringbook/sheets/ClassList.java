package ringbook.sheets;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/**
 * Who belongs to a class: one name a line, or a table with a column {@code learner}.
 *
 * <p>A name on a sheet that differs from one of the list only by capitals, accents or spaces is
 * taken for it.
 */
public final class ClassList {

  private final TreeSet<String> names = new TreeSet<>(LearnerOrder.BY_NAME);
  private final Map<String, String> byFolded = new HashMap<>();

  private ClassList() {}

  /** Reads a class list; faults go to {@code problems}. */
  public static ClassList read(Path file, Problems problems) throws IOException {
    ClassList list = new ClassList();
    Faults faults = new Faults(problems);
    String shown = file.toString();
    try (var bytes = Files.newInputStream(file)) {
      var text = SheetBytes.open(shown, bytes, faults);
      if (text.isPresent()) {
        list.read(shown, new SheetLines(text.get()), faults);
      }
    }
    if (list.names.isEmpty() && problems.isEmpty()) {
      faults.add(Position.ofFile(shown), "the class list names nobody", "write one name a line");
    }
    faults.end();
    return list;
  }

  private void read(String file, SheetLines lines, Faults faults) throws IOException {
    Optional<CsvHead> head = Optional.empty();
    boolean first = true;
    for (SheetLine line = lines.next(); line != null; line = lines.next()) {
      Position at = new Position(file, line.number(), 0);
      if (line.flaw().isPresent()) {
        faults.add(at, line.flaw().get().message(), line.flaw().get().help());
      } else if (!line.text().isBlank()) {
        if (first) {
          head = Optional.of(CsvHead.of(line.text())).filter(names -> names.place("learner") >= 0);
        }
        if (!first || head.isEmpty()) {
          add(cell(line.text(), head), at, faults);
        }
        first = false;
      }
    }
  }

  private static String cell(String line, Optional<CsvHead> head) {
    if (head.isEmpty()) {
      return line;
    }
    List<String> cells = new ArrayList<>(CsvCells.of(line, head.get().delimiter()));
    int place = head.get().place("learner");
    return place < cells.size() ? cells.get(place) : "";
  }

  private void add(String written, Position at, Faults faults) {
    String name = Intake.name(written);
    if (name.isEmpty()) {
      return;
    }
    String earlier = byFolded.putIfAbsent(LearnerOrder.folded(name), name);
    if (earlier != null) {
      faults.add(
          at,
          "the class list has '" + Quote.of(earlier) + "' and '" + Quote.of(name) + "'",
          "give each learner a name of their own, such as one with the first letter of the family"
              + " name");
    } else {
      names.add(name);
    }
  }

  /** The names in order. */
  public List<String> names() {
    return List.copyOf(names);
  }

  /** The name of the list that {@code written} stands for. */
  Optional<String> meant(String written) {
    return names.contains(written)
        ? Optional.of(written)
        : Optional.ofNullable(byFolded.get(LearnerOrder.folded(written)));
  }
}
