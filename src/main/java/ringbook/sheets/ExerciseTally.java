package ringbook.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.exercises.Exercise;
import ringbook.exercises.Verdict;

/** What came in for one exercise. */
public final class ExerciseTally {

  /** So many names are kept of those who made the same slip. */
  static final int NAMES = 12;

  private final Exercise exercise;
  private final Map<String, Wrong> wrong = new LinkedHashMap<>();
  private long handedIn;
  private long answered;
  private long right;
  private long quarters;

  /** What went wrong in one way, and how often. */
  public static final class Wrong {
    private final String label;
    private final Verdict verdict;
    private final List<String> names = new ArrayList<>();
    private long count;

    private Wrong(Verdict verdict) {
      this.label = verdict.label();
      this.verdict = verdict;
    }

    private void add(String learner) {
      count++;
      if (names.size() < NAMES) {
        names.add(learner);
      }
    }

    /** Its short name, such as {@code unit missing}. */
    public String label() {
      return label;
    }

    /** One of the verdicts behind it. */
    public Verdict verdict() {
      return verdict;
    }

    /** How often. */
    public long count() {
      return count;
    }

    /** The first of those it happened to, by name. */
    public List<String> names() {
      return List.copyOf(names);
    }
  }

  ExerciseTally(Exercise exercise) {
    this.exercise = exercise;
  }

  void add(String learner, OneMark mark) {
    handedIn++;
    answered += mark.answered() ? 1 : 0;
    right += mark.right() ? 1 : 0;
    quarters += mark.mark().credit().quarters();
    if (!mark.right()) {
      Verdict verdict = mark.mark().verdict();
      wrong.computeIfAbsent(verdict.label(), label -> new Wrong(verdict)).add(learner);
    }
  }

  /** The exercise with the course's own numbers. */
  public Exercise exercise() {
    return exercise;
  }

  /** How many lines came in, with those left empty. */
  public long handedIn() {
    return handedIn;
  }

  /** How many answers. */
  public long answered() {
    return answered;
  }

  /** How many are worth the whole point. */
  public long right() {
    return right;
  }

  /** All points together, in quarters. */
  public long quarters() {
    return quarters;
  }

  /** What went wrong, the most frequent first, then by the alphabet. */
  public List<Wrong> wrong() {
    List<Wrong> all = new ArrayList<>(wrong.values());
    all.sort(
        (a, b) -> a.count != b.count ? Long.compare(b.count, a.count) : a.label.compareTo(b.label));
    return all;
  }
}
