package ringbook.assess;

import java.util.Optional;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * How much of an upright round wall one photograph sees, as an arc about the axis of the wall.
 *
 * <p>A wall of radius R; the lens D from the point of the axis it looks at, at elevation e.
 */
public final class SeenArc {

  private SeenArc() {}

  /**
   * The whole arc in sight, {@code 2 acos(R / (D cos e))}; always below 180°. Empty if the lens is
   * not outside the wall in plan.
   *
   * @param radius R
   * @param floorDistance D cos e
   */
  public static Optional<Angle> visible(Length radius, Length floorDistance) {
    if (floorDistance.compareTo(radius) <= 0) {
      return Optional.empty();
    }
    return Optional.of(new Angle(2 * Num.acos(radius.over(floorDistance))));
  }

  /**
   * Share of a whole ball that is in sight, {@code (1 − R/D) / 2}: always less than half. Empty
   * from inside.
   *
   * @param radius R
   * @param distance D, from the middle of the ball
   */
  public static Optional<Double> shareOfBall(Length radius, Length distance) {
    return distance.compareTo(radius) <= 0
        ? Optional.empty()
        : Optional.of((1 - radius.over(distance)) / 2);
  }

  /**
   * Half the arc that is seen no more slanted than {@code limit}, at the height the lens looks at.
   * Empty if no part of the wall is seen that squarely.
   *
   * <p>{@code φ = acos(cos(i − asin((R/D) sin i)) / cos e)}, which at e = 0 is {@code i −
   * asin((R/D) sin i)}. It solves {@code cos i = n·v} for the wall's normal n and the line v from
   * the wall to the lens.
   *
   * @param radius R, below D
   * @param distance D
   * @param elevation e
   * @param limit i, above 0 and below 90°
   */
  public static Optional<Angle> halfWithin(
      Length radius, Length distance, Angle elevation, Angle limit) {
    if (distance.compareTo(radius) <= 0) {
      return Optional.empty();
    }
    double i = limit.radians();
    double level = i - Num.asin(radius.over(distance) * Num.sin(i));
    double cosine = Num.cos(level) / Num.cos(elevation.radians());
    return cosine > 1 ? Optional.empty() : Optional.of(new Angle(Num.acos(cosine)));
  }
}
