package ringbook.assess;

import java.util.ArrayList;
import java.util.List;
import ringbook.geometry.ArcSet;
import ringbook.geometry.Fence;
import ringbook.shots.Place;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * Where in the room a person can stand with the camera. Obstacles have no height here: one that
 * comes between the object and the back of the person counts as in the way, whether it keeps the
 * feet out or hides the object.
 */
public final class Standing {

  private Standing() {}

  /** Directions in which some obstacle comes within {@code reach} of the middle of the object. */
  public static ArcSet blocked(Place place, Length reach) {
    ArcSet blocked = ArcSet.NONE;
    for (Fence fence : fences(place)) {
      blocked = fence.goesRound() ? ArcSet.ALL : fence.within(reach.metres(), blocked);
    }
    return blocked;
  }

  /** Names of the obstacles that come within {@code reach} in one direction. */
  public static List<String> inTheWay(Place place, Length reach, Angle direction) {
    List<String> names = new ArrayList<>();
    List<Fence> fences = fences(place);
    for (int i = 0; i < fences.size(); i++) {
      Fence fence = fences.get(i);
      ArcSet arcs = fence.goesRound() ? ArcSet.ALL : fence.within(reach.metres(), ArcSet.NONE);
      if (arcs.holds(direction)) {
        names.add(place.obstacles().get(i).name());
      }
    }
    return names;
  }

  /** Metres to the nearest obstacle, infinite if there is none. */
  public static double nearestMetres(Place place) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Fence fence : fences(place)) {
      nearest = Math.min(nearest, fence.nearest());
    }
    return nearest;
  }

  /**
   * Metres from which a ring passes outside every obstacle that comes within {@code reach}; 0 if
   * none does.
   */
  public static double beyondMetres(Place place, Length reach) {
    double beyond = 0;
    for (Fence fence : fences(place)) {
      if (fence.nearest() <= reach.metres()) {
        beyond = Math.max(beyond, fence.farthest());
      }
    }
    return beyond;
  }

  /**
   * Whether nothing but what already comes within {@code reach} comes within {@code farther} too.
   */
  public static boolean isFreeBeyond(Place place, Length reach, Length farther) {
    for (Fence fence : fences(place)) {
      double nearest = fence.nearest();
      if (nearest > reach.metres() && nearest <= farther.metres()) {
        return false;
      }
    }
    return true;
  }

  /**
   * Which of {@code photos} evenly spaced stations can be used, by number from 0.
   *
   * @param first direction of station 0
   */
  public static List<Integer> usable(ArcSet blocked, Angle first, int photos) {
    List<Integer> usable = new ArrayList<>();
    for (int i = 0; i < photos; i++) {
      if (!blocked.holds(first.plus(Angle.FULL_TURN.times((double) i / photos)))) {
        usable.add(i);
      }
    }
    return usable;
  }

  /** The longest run of steps from one usable station to the next, going round. */
  public static int longestStep(List<Integer> usable, int photos) {
    int longest = 0;
    for (int i = 0; i < usable.size(); i++) {
      int next = i + 1 < usable.size() ? usable.get(i + 1) : usable.get(0) + photos;
      longest = Math.max(longest, next - usable.get(i));
    }
    return longest;
  }

  private static List<Fence> fences(Place place) {
    List<Fence> fences = new ArrayList<>();
    for (Obstacle obstacle : place.obstacles()) {
      List<Double> xs = new ArrayList<>();
      List<Double> ys = new ArrayList<>();
      for (Corner corner : obstacle.corners()) {
        xs.add(corner.x().metres());
        ys.add(corner.y().metres());
      }
      fences.add(new Fence(xs, ys));
    }
    return fences;
  }
}
