package ringbook.problems;

import java.util.ArrayList;
import java.util.List;

/** Gathers the problems of one piece of work, so that all are told at once. */
public final class Problems {

  private final List<Problem> found = new ArrayList<>();
  private final List<Problem> notes = new ArrayList<>();

  /** Adds a problem; {@code help} may be empty. */
  public void add(Position position, String message, String help) {
    found.add(new Problem(position, message, help));
  }

  /** Adds every problem of another collection. */
  public void addAll(List<Problem> others) {
    found.addAll(others);
  }

  /** Adds something a person should know but need not mend; {@code help} may be empty. */
  public void note(Position position, String message, String help) {
    notes.add(new Problem(position, message, help));
  }

  /** All notes by file, line and column, each once. */
  public List<Problem> notes() {
    return notes.stream().distinct().sorted().toList();
  }

  /** Whether nothing has been found yet. */
  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** How many have been found. */
  public int size() {
    return found.size();
  }

  /** All problems by file, line and column, each once. */
  public List<Problem> sorted() {
    return found.stream().distinct().sorted().toList();
  }
}
