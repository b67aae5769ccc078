package ringbook.shots;

import java.util.ArrayList;
import java.util.List;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Require;
import ringbook.units.Whole;

/**
 * A ring of evenly spaced stations round the object, all looking at its middle.
 *
 * <p>Heights and distances run from the lens. Station 1 stands on the door side (azimuth −90°) and
 * the ring is walked from +x towards +y.
 *
 * @param middleHeight floor to the middle of the object
 * @param distance lens to the middle of the object, above 0
 * @param elevation of the lens as seen from the middle of the object, −90° to 90°
 * @param photos how many stations, at least 1
 */
public record Ring(Length middleHeight, Length distance, Angle elevation, int photos) {

  /** Direction of station 1, from the middle of the object: the door side. */
  public static final Angle FIRST = Angle.ofDegrees(-90);

  public Ring {
    Require.positive("distance", "m", distance.metres());
    Require.within("elevation in radians", -Math.PI / 2, Math.PI / 2, elevation.radians());
    Require.atLeast("photos", 1, photos);
  }

  /** Fewest photographs that go round with turns of at most {@code step}: {@code ⌈360° / α⌉}. */
  public static double photosFor(Angle step) {
    return Whole.up(Angle.FULL_TURN.radians() / step.radians());
  }

  /**
   * Fewest photographs for which neighbouring lines of sight differ by at most {@code limit}, at
   * least 3: {@code ⌈360° / (2 asin(sin(γ/2) / cos e))⌉}. Steep rings need fewer, because lines of
   * sight draw together towards the top.
   */
  public static double photosForRays(Angle limit, Angle elevation) {
    double ratio = Num.sin(limit.radians() / 2) / Num.cos(elevation.radians());
    return ratio >= 1 ? 3 : Math.max(3, photosFor(new Angle(2 * Num.asin(ratio))));
  }

  /**
   * Rings like this one, evenly from elevation to elevation; only the lowest where {@code count} is
   * 1.
   *
   * @param count at least 1
   */
  public List<Ring> stack(Angle lowest, Angle highest, int count) {
    List<Ring> rings = new ArrayList<>();
    Angle step = highest.minus(lowest).times(1.0 / Math.max(1, count - 1));
    for (int i = 0; i < count; i++) {
      rings.add(new Ring(middleHeight, distance, lowest.plus(step.times(i)), photos));
    }
    return List.copyOf(rings);
  }

  /** How far the lens is above the middle of the object: {@code D sin e}. */
  public Length rise() {
    return distance.times(Num.sin(elevation.radians()));
  }

  /** Lens to the upright through the middle of the object, on the floor: {@code D cos e}. */
  public Length floorDistance() {
    return distance.times(Num.cos(elevation.radians()));
  }

  /** Lens above the floor. */
  public Length lensHeight() {
    return middleHeight.plus(rise());
  }

  /** Turn from one station to the next: {@code 360° / n}. */
  public Angle step() {
    return Angle.FULL_TURN.times(1.0 / photos);
  }

  /** Straight way between neighbouring lenses: {@code 2 D cos e sin(α/2)}. */
  public Length chord() {
    return floorDistance().times(2 * Num.sin(step().radians() / 2));
  }

  /** Angle between neighbouring lines of sight: {@code sin(γ/2) = cos e sin(α/2)}. */
  public Angle rayAngle() {
    return new Angle(2 * Num.asin(Num.cos(elevation.radians()) * Num.sin(step().radians() / 2)));
  }

  /** The middle of the object, in metres, in the frame of the room. */
  public Vec3 target() {
    return new Vec3(0, 0, middleHeight.metres());
  }

  /** Where the lens is at {@code azimuth}, in metres, in the frame of the room. */
  public Vec3 positionAt(Angle azimuth) {
    return target().plus(Vec3.towards(azimuth, elevation).times(distance.metres()));
  }

  /** All stations in the order of walking. */
  public List<Station> stations() {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < photos; i++) {
      Angle azimuth = FIRST.plus(Angle.FULL_TURN.times((double) i / photos));
      stations.add(new Station(i + 1, azimuth, positionAt(azimuth), target()));
    }
    return List.copyOf(stations);
  }
}
