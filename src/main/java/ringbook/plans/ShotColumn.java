package ringbook.plans;

import java.util.List;
import java.util.function.Function;
import ringbook.geometry.Vec3;
import ringbook.shots.ShotPlan.Shot;
import ringbook.units.Angle;
import ringbook.units.Dimension;
import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Unit;
import ringbook.units.Words;

/**
 * The columns of a shot table, in order, with their unit in the name. Positions run as in the ring
 * plan: right and back from the middle of the object, heights from the floor.
 */
public enum ShotColumn {
  LEG("leg", shot -> shot.leg().name()),
  NUMBER("number", shot -> String.valueOf(shot.station().number())),
  POSE("pose", shot -> word(shot.leg().setup().pose())),
  /** See {@link Clock}. */
  CLOCK("clock", shot -> Clock.of(shot.station().azimuth())),
  AZIMUTH("azimuth", Unit.DEGREE, shot -> folded(shot.station().azimuth())),
  LENS_HEIGHT("lens_height", Unit.CENTIMETRE, shot -> shot.station().position().z()),
  /** From the lens to the spot it looks at. */
  DISTANCE("distance", Unit.CENTIMETRE, ShotColumn::distance),
  /** From the spot under the lens to the spot under the middle of the object. */
  FLOOR_DISTANCE("floor_distance", Unit.CENTIMETRE, ShotColumn::floorDistance),
  AIM_RIGHT("aim_right", Unit.CENTIMETRE, shot -> shot.station().target().x()),
  AIM_BACK("aim_back", Unit.CENTIMETRE, shot -> shot.station().target().y()),
  AIM_HEIGHT("aim_height", Unit.CENTIMETRE, shot -> shot.station().target().z()),
  HOLD("hold", shot -> word(shot.leg().setup().hold())),
  FOCUS("focus", Unit.CENTIMETRE, shot -> shot.leg().setup().focus().metres()),
  PHOTOS("photographs", shot -> String.valueOf(shot.leg().setup().repeats())),
  /** To be ticked. */
  DONE("done", shot -> ""),
  NOTES("notes", shot -> "");

  /** The value of a column that holds a measure. */
  @FunctionalInterface
  private interface Si {
    double of(Shot shot);
  }

  private static final int DECIMALS = 2;

  private final String name;
  private final Unit unit;
  private final Function<Shot, String> text;

  ShotColumn(String name, Function<Shot, String> text) {
    this.name = name;
    this.unit = Unit.ONE;
    this.text = text;
  }

  ShotColumn(String name, Unit unit, Si si) {
    this.name = name;
    this.unit = unit;
    this.text = shot -> number(unit.fromSi(si.of(shot)));
  }

  /** Its name at the head of a table: {@code lens_height_cm}. */
  public String head() {
    return switch (unit) {
      case DEGREE -> name + "_deg";
      case CENTIMETRE -> name + "_cm";
      default -> name;
    };
  }

  /** Its name without the unit. */
  public String plainName() {
    return name;
  }

  /** The unit of a bare number; {@link Unit#ONE} for words and counts. */
  public Unit unit() {
    return unit;
  }

  /** Whether it holds a length or an angle. */
  public boolean isMeasure() {
    return unit.dimension() != Dimension.RATIO;
  }

  /** What stands in it for one station. */
  public String of(Shot shot) {
    return text.apply(shot);
  }

  /** All names, in order. */
  public static List<String> heads() {
    return List.of(values()).stream().map(ShotColumn::head).toList();
  }

  private static String number(double value) {
    String text = Numbers.trimmed(Numbers.fixed(value, DECIMALS));
    return text.equals("-0") ? "0" : text;
  }

  /** From −180° up to, but not with, 180°. */
  private static double folded(Angle azimuth) {
    double turns = azimuth.degrees() / 360 + 0.5;
    double degrees = (turns - Math.floor(turns)) * 360 - 180;
    double rounded = Num.round(degrees * 100) / 100;
    return Angle.ofDegrees(rounded >= 180 ? -180 : rounded).radians();
  }

  private static double distance(Shot shot) {
    return shot.station().target().minus(shot.station().position()).norm();
  }

  private static double floorDistance(Shot shot) {
    Vec3 lens = shot.station().position();
    return Num.hypot(lens.x(), lens.y());
  }

  private static String word(Enum<?> constant) {
    return Words.lower(constant.name()).replace('_', ' ');
  }
}
