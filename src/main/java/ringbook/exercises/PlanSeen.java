package ringbook.exercises;

import java.util.List;
import ringbook.assess.coverage.Coverage;

/**
 * What the photographs of a plan see.
 *
 * @param coverage by all of them
 * @param loose how many do not hang together with most
 * @param shown share of what can be seen at all that all of them see well, 0 to 1
 * @param together share that those which hang together see well, 0 to 1
 */
record PlanSeen(Coverage coverage, int loose, double shown, double together) {

  static PlanSeen of(PlanGround ground, Coverage coverage) {
    double shown = ground.shown(coverage);
    List<Integer> joined = coverage.graph().pieces().get(0);
    int loose = coverage.views().size() - joined.size();
    double together = loose == 0 ? shown : ground.shown(only(coverage, joined));
    return new PlanSeen(coverage, loose, shown, together);
  }

  /** What some of the photographs see without the others. */
  private static Coverage only(Coverage coverage, List<Integer> numbers) {
    return Coverage.of(coverage.seeing(), numbers.stream().map(coverage.views()::get).toList());
  }
}
