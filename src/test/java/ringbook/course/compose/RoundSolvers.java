package ringbook.course.compose;

import java.util.function.BiConsumer;
import java.util.function.ToDoubleFunction;

/** The part of {@link Solvers} for the lessons on rings at heights, the room and holes. */
final class RoundSolvers {

  private final BiConsumer<String, ToDoubleFunction<QuestionText>> to;

  private RoundSolvers(BiConsumer<String, ToDoubleFunction<QuestionText>> to) {
    this.to = to;
  }

  static void add(BiConsumer<String, ToDoubleFunction<QuestionText>> to) {
    RoundSolvers all = new RoundSolvers(to);
    all.heights();
    all.room();
    all.holes();
  }

  private void solve(String id, ToDoubleFunction<QuestionText> way) {
    to.accept(id, way);
  }

  /** An upright triangle from the middle of the object to the lens; lowest rings lie below 0. */
  private void heights() {
    solve( // lowest, highest, step
        "heights-count", q -> Math.ceil((q.number(2) + q.number(1)) / q.number(3) - 1e-9) + 1);
    solve( // middle, distance, elevation
        "heights-lens", q -> q.number(1) + q.number(2) * Math.sin(q.number(3)));
    solve("heights-floor", q -> q.number(1) * Math.cos(q.number(2)));
    solve( // highest ring, step
        "heights-over", q -> Math.ceil((Math.PI - 2 * q.number(1)) / q.number(2) - 1e-9) - 1);
    solve("heights-overhang", q -> Math.min(Math.PI / 2, q.number(2) + q.number(1)));
  }

  private void room() {
    solve("room-standing", q -> q.number(1) + q.number(2));
    solve("room-missing", q -> q.number(1) - q.number(2));
    solve("room-gap", q -> (q.number(3) + 1) * q.number(2)); // photographs, step, lost
    solve("room-raised", q -> Math.acos(q.number(2) / q.number(1)));
    solve("room-disc", q -> Math.PI * q.number(1) / q.number(2));
    solve("room-behind", q -> 1 - q.number(1) * q.number(2));
  }

  private void holes() {
    solve("hole-wall", q -> Math.min(q.number(2), q.number(1) / Math.tan(q.number(3))));
    solve("hole-floor", q -> Math.atan2(q.number(1) / 2, q.number(2)));
    solve("hole-deepest", q -> q.number(1) / Math.tan(q.number(2)));
    solve("strip-move", q -> q.number(1) * (1 - q.number(2)));
    solve("strip-frames", q -> Math.ceil(q.number(1) / q.number(2) - 1e-9) + 1);
    solve("edge-photos", q -> Math.ceil(q.number(1) / (q.number(2) / 2) - 1e-9) + 1);
  }
}
