package ringbook.shots;

import java.util.List;
import ringbook.units.Details;
import ringbook.units.Length;

/**
 * Where the photographs are taken. Plan positions are metres from the middle of the object: x to
 * the right, y away from the door side, both as drawn in the ring plan.
 *
 * @param tableHeight floor to table top
 * @param lowestLens lowest lens height above the floor that the group can hold
 * @param highestLens highest lens height above the floor that the group can hold, standing on the
 *     floor
 * @param obstacles walls and furniture in plan
 * @param details what else is stated about it
 */
public record Place(
    Length tableHeight,
    Length lowestLens,
    Length highestLens,
    List<Obstacle> obstacles,
    Details details) {

  public Place {
    obstacles = List.copyOf(obstacles);
  }

  /**
   * A wall or a piece of furniture seen from above.
   *
   * @param name as the plan labels it
   * @param corners at least three, in order round the outline
   */
  public record Obstacle(String name, List<Corner> corners) {
    public Obstacle {
      corners = List.copyOf(corners);
    }
  }

  /** A corner in plan. */
  public record Corner(Length x, Length y) {}
}
