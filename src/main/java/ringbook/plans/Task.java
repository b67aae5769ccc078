package ringbook.plans;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ringbook.plans.Bunch.Form;
import ringbook.units.Angle;

/**
 * Photographs for which an even run is sought.
 *
 * @param bunches of the plan that they are
 * @param whole all of them
 */
record Task(List<Bunch> bunches, Bunch whole) {

  /** So many are put together with others. */
  private static final int FEW = 2;

  /** As one strip if they are within so much of a turn, as one row if so much of height. */
  private static final double NARROW = Angle.ofDegrees(35).radians();

  private static final double FLAT = Angle.ofDegrees(14).radians();

  /** Ways to see a plan: uneven bunches, the largest first, then few together. */
  static List<Task> of(List<Bunch> bunches) {
    List<Task> tasks = new ArrayList<>();
    for (Bunch bunch : bunches) {
      if (!bunch.isRing()) {
        tasks.add(new Task(List.of(bunch), bunch));
      }
    }
    tasks.sort(
        Comparator.comparing((Task task) -> task.whole.isEven())
            .thenComparing(Comparator.comparingInt((Task task) -> task.whole.size()).reversed()));
    List<Task> pairs = new ArrayList<>();
    for (int a = 0; a < bunches.size(); a++) {
      for (int b = 0; b < a; b++) {
        together(bunches.get(a), bunches.get(b)).ifPresent(pairs::add);
      }
    }
    for (Bunch first : bunches) {
      near(bunches, first).ifPresent(pairs::add);
    }
    pairs.sort(Comparator.comparingInt(task -> task.whole.size()));
    tasks.addAll(pairs);
    return tasks;
  }

  /** All small ones within one turn to the left of a bunch, if they are more than two. */
  private static Optional<Task> near(List<Bunch> bunches, Bunch first) {
    double from = Arc.of(first.members()).from();
    List<Bunch> near = new ArrayList<>();
    List<Candidate> members = new ArrayList<>();
    for (Bunch bunch : bunches) {
      boolean fits = bunch.pose() == first.pose() && bunch.form() != Form.CLOSE;
      Arc arc = Arc.of(bunch.members());
      double turn = Bunch.turn(from, arc.from());
      if (fits && !bunch.isRing() && turn >= 0 && turn + arc.width() < NARROW) {
        near.add(bunch);
        members.addAll(bunch.members());
      }
    }
    return near.size() > 2
        ? Optional.of(new Task(near, new Bunch(Form.UPWARDS, "", members)))
        : Optional.empty();
  }

  /** Two that lie near to each other, one of them small: as one strip or row. */
  private static Optional<Task> together(Bunch one, Bunch other) {
    boolean small = Math.min(one.size(), other.size()) <= FEW;
    boolean fits = one.pose() == other.pose() && !one.isRing() && !other.isRing();
    if (!small || !fits || one.form() == Form.CLOSE || other.form() == Form.CLOSE) {
      return Optional.empty();
    }
    List<Candidate> members = new ArrayList<>(one.members());
    members.addAll(other.members());
    double[] heights = Bunch.heights(members);
    boolean up = Arc.of(members).width() < NARROW;
    if (!up && heights[1] - heights[0] > FLAT) {
      return Optional.empty();
    }
    Form form = up ? Form.UPWARDS : heights[0] > Gathering.STEEP ? Form.ABOVE : Form.LEVEL;
    return Optional.of(new Task(List.of(one, other), new Bunch(form, "", members)));
  }
}
