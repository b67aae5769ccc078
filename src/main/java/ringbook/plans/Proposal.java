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

  /** How many photographs, and how far from the shortest that may be, in plain words. */
  public String proof() {
    int photos = plan.photos();
    String all = Sentences.capital(Sentences.photographs(photos)) + ". ";
    if (photos <= bound) {
      return all + "From the " + tried + " stations tried, no plan of fewer sees as much.";
    }
    return all
        + "From the "
        + tried
        + " stations tried, no plan of fewer than "
        + bound
        + " sees as much (a lower bound; the shortest may well need more), so this one is at most "
        + Sentences.photographs(photos - bound)
        + " longer than the shortest they allow.";
  }
}
