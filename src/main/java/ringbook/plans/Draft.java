package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Seeing;

/** A plan on the way: even runs, and photographs that are left over. */
final class Draft {
  /** A leg more is as bad as so many photographs more; so is an uneven step, in part. */
  private static final double LEG = 2;

  private static final double UNEVEN = 0.5;

  private final Seeing seeing;
  private final List<Bunch> even;
  private final List<Candidate> loose;
  private final List<Bunch> bunches;

  Draft(Seeing seeing, List<Bunch> even, List<Candidate> loose) {
    this.seeing = seeing;
    this.even = even;
    this.loose = loose;
    bunches = new ArrayList<>(even);
    bunches.addAll(Gathering.of(seeing, loose));
  }

  List<Bunch> even() {
    return even;
  }

  List<Candidate> loose() {
    return loose;
  }

  /** All of it, in bunches. */
  List<Bunch> bunches() {
    return bunches;
  }

  List<Candidate> all() {
    List<Candidate> all = new ArrayList<>();
    even.forEach(bunch -> all.addAll(bunch.members()));
    all.addAll(loose);
    return all;
  }

  int photos() {
    return all().size();
  }

  /** How long and how hard to say, in photographs. */
  double cost() {
    double cost = photos();
    for (Bunch bunch : bunches) {
      cost += LEG + (bunch.isEven() ? 0 : UNEVEN * bunch.size());
    }
    return cost;
  }

  Draft without(List<Bunch> gone) {
    List<Bunch> others = new ArrayList<>(even);
    others.removeAll(gone);
    List<Candidate> left = new ArrayList<>(loose);
    gone.forEach(bunch -> left.removeAll(bunch.members()));
    return new Draft(seeing, others, left);
  }
}
