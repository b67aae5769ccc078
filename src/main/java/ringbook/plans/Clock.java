package ringbook.plans;

import java.util.OptionalDouble;
import ringbook.units.Angle;
import ringbook.units.Decimal;
import ringbook.units.Num;
import ringbook.units.Words;

/**
 * Directions from the object as the hand of a clock face that lies on the floor: 6 o'clock on the
 * door side, 3 o'clock to the right of somebody who stands there and looks at the object.
 */
public final class Clock {

  private static final double MINUTES = 720;

  private Clock() {}

  /** The time at which the hour hand points that way: {@code 4:30}; 12:00 is away from the door. */
  public static String of(Angle azimuth) {
    double minutes = Num.round(turned(azimuth) * MINUTES);
    int whole = (int) (minutes >= MINUTES ? 0 : minutes);
    int hour = whole / 60 == 0 ? 12 : whole / 60;
    int minute = whole % 60;
    return hour + ":" + (minute < 10 ? "0" : "") + minute;
  }

  /** The nearest full hour, 1 to 12. */
  static int hour(Angle azimuth) {
    int hour = (int) Num.round(turned(azimuth) * 12);
    return hour == 0 ? 12 : hour;
  }

  /** How far the hand has turned from 12, as a part of a turn. */
  private static double turned(Angle azimuth) {
    double turns = (90 - azimuth.degrees()) / 360;
    return turns - Math.floor(turns);
  }

  /** The direction, from −180° up to 180°; empty if the text is no time from 0:00 to 12:59. */
  public static OptionalDouble radians(String time) {
    int colon = time.indexOf(':');
    String hours = colon < 0 ? time : time.substring(0, colon);
    String rest = colon < 0 ? "0" : time.substring(colon + 1);
    int second = rest.indexOf(':');
    String minutes = second < 0 ? rest : rest.substring(0, second);
    OptionalDouble h = whole(hours, 12);
    OptionalDouble m = whole(minutes, 59);
    if (h.isEmpty() || m.isEmpty()) {
      return OptionalDouble.empty();
    }
    double degrees = 90 - (h.getAsDouble() * 60 + m.getAsDouble()) / 2;
    double folded = degrees < -180 ? degrees + 360 : degrees;
    return OptionalDouble.of(Angle.ofDegrees(folded).radians());
  }

  private static OptionalDouble whole(String text, int most) {
    OptionalDouble number = Decimal.parse(Words.trimmed(text));
    boolean fits =
        number.isPresent()
            && number.getAsDouble() >= 0
            && number.getAsDouble() <= most
            && Math.floor(number.getAsDouble()) == number.getAsDouble();
    return fits ? number : OptionalDouble.empty();
  }
}
