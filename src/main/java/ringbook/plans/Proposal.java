package ringbook.plans;

import java.util.List;
import ringbook.assess.coverage.View;
import ringbook.shots.ShotPlan;
import ringbook.units.Length;

/**
 * A plan worked out for an object in a room.
 *
 * @param plan the photographs
 * @param views what they see, in the order of the plan
 * @param bound so many photographs any plan from the stations tried has at least that sees as much
 * @param tried how many stations were tried
 * @param walk how far the lens is carried from the first station to the last, in plan
 * @param reachable share of the surface that can be seen well at all within room and reach, 0 to 1
 * @param seen share of the surface that the plan sees well, 0 to 1
 */
public record Proposal(
    ShotPlan plan,
    List<View> views,
    int bound,
    int tried,
    Length walk,
    double reachable,
    double seen) {

  public Proposal {
    views = List.copyOf(views);
  }

  /** One sentence on how good the plan is at best. */
  public String proof() {
    int photos = plan.photos();
    String others = ": of the " + tried + " stations tried, ";
    if (photos <= bound) {
      return Sentences.capital(Sentences.photographs(photos)) + others + "no fewer see as much.";
    }
    return Sentences.capital(Sentences.photographs(photos))
        + others
        + "fewer than "
        + bound
        + " cannot see as much under the same limits, so at most "
        + (photos - bound)
        + " could be saved.";
  }
}
