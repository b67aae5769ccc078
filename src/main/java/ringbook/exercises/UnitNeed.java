package ringbook.exercises;

import ringbook.units.Dimension;

/** Whether a bare number says all there is to say. */
final class UnitNeed {

  private UnitNeed() {}

  /** Whether an answer of this kind needs a unit to mean anything. */
  static boolean of(Dimension dimension) {
    return switch (dimension) {
      case F_NUMBER, STOPS, PIXELS, COUNT, RATIO, YES_NO -> false;
      case LENGTH,
          ANGLE,
          TIME,
          SPEED,
          TURN_RATE,
          FREQUENCY,
          AREA,
          ILLUMINANCE,
          LUMINOUS_FLUX,
          LUMINANCE,
          LENS_POWER,
          DATA,
          SHARE ->
          true;
    };
  }
}
