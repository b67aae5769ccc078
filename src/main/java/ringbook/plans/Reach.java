package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.Standing;
import ringbook.geometry.ArcSet;
import ringbook.geometry.ArcSet.Span;
import ringbook.geometry.Vec3;
import ringbook.shots.Place;
import ringbook.shots.Scene;
import ringbook.shots.SceneDetails;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Whole;

/**
 * Where a person can hold the lens: at a height within reach and above the table, clear of the
 * object, with room behind it for the body.
 */
public final class Reach {

  /** Nearer in plan than this the lens is over the middle, and a person may stand on any side. */
  private static final double OVER_MIDDLE = 0.02;

  private final Place place;
  private final double bodyRoom;
  private final double lowest;
  private final double highest;
  private final double radius;
  private final double top;

  private Reach(Scene scene, double radius, double top) {
    place = scene.place();
    bodyRoom = number(scene, "place.bodyRoom");
    double onTable = place.tableHeight().metres() + number(scene, "kit.lensOffset");
    lowest = Math.max(place.lowestLens().metres(), onTable);
    highest = place.highestLens().metres();
    this.radius = radius;
    this.top = top;
  }

  /**
   * In the room of a scene, before an object of that size.
   *
   * @param radius metres in plan from the middle of the object to its farthest part
   * @param top metres from the floor to its top
   */
  public static Reach of(Scene scene, double radius, double top) {
    return new Reach(scene, radius, top);
  }

  private static double number(Scene scene, String key) {
    return SceneDetails.stated(scene, key).orElse(SceneDetails.usual(key).orElseThrow());
  }

  /** Lowest lens height in metres. */
  public double lowest() {
    return lowest;
  }

  /** Highest lens height in metres. */
  public double highest() {
    return highest;
  }

  /** Whether the lens can be held there; a position in metres. */
  public boolean holds(Vec3 lens) {
    double floor = Num.hypot(lens.x(), lens.y());
    boolean within = Whole.atMost(lowest, lens.z()) && Whole.atMost(lens.z(), highest);
    boolean clear = floor > radius || lens.z() > top;
    if (!within || !clear) {
      return false;
    }
    ArcSet blocked = blocked(floor);
    return floor < OVER_MIDDLE
        ? blocked.total().radians() < 2 * Math.PI
        : !blocked.holds(new Angle(Num.atan2(lens.y(), lens.x())));
  }

  /** The free parts of a circle on the floor; one whole turn if nothing is in the way. */
  List<Span> free(double floorDistance) {
    return blocked(floorDistance).rest();
  }

  /** Whether a lens at that height and distance from the middle is within reach and clear. */
  boolean allows(double floorDistance, double height) {
    return Whole.atMost(lowest, height)
        && Whole.atMost(height, highest)
        && (floorDistance > radius || height > top);
  }

  private ArcSet blocked(double floorDistance) {
    return Standing.blocked(place, new Length(floorDistance + bodyRoom));
  }

  /**
   * Directions of stations in a free part, evenly, as few as steps of at most {@code step} need.
   */
  static List<Angle> spread(Span free, Angle step) {
    List<Angle> directions = new ArrayList<>();
    boolean whole = free.width().radians() >= 2 * Math.PI;
    double steps = Math.max(whole ? 3 : 0, Whole.up(free.width().radians() / step.radians()));
    int count = (int) steps + (whole ? 0 : 1);
    for (int i = 0; i < count; i++) {
      // A hair inside, so that the ends of the free part count as free.
      double share = steps == 0 ? 0.5 : Math.min(1 - 1e-6, Math.max(1e-6, i / steps));
      double at = whole ? i / steps : share;
      directions.add(free.from().plus(free.width().times(at)));
    }
    return directions;
  }
}
