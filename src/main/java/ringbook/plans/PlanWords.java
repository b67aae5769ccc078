package ringbook.plans;

import ringbook.geometry.Vec3;
import ringbook.shots.Aim.Hold;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.ShotPlan;
import ringbook.shots.ShotPlan.Shot;
import ringbook.shots.Station;
import ringbook.units.Lengths;
import ringbook.units.Num;
import ringbook.units.Numbers;

/**
 * Words and lengths of a plan for people: whole centimetres in a room, millimetres close by.
 *
 * @param decimals of a length in centimetres
 * @param lengths in which measures lengths are told
 */
public record PlanWords(int decimals, Lengths lengths) {

  /** A plan whose nearest lens is nearer than this is told to the millimetre. */
  private static final double CLOSE = 0.3;

  private static final double SAME = 0.0005;

  /** Words that suit the distances of a plan. */
  public static PlanWords of(ShotPlan plan, Lengths lengths) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Shot shot : plan.shots()) {
      Station station = shot.station();
      nearest = Math.min(nearest, station.target().minus(station.position()).norm());
    }
    return new PlanWords(nearest < CLOSE ? 1 : 0, lengths);
  }

  /** Its name and how many photographs: {@code Ring A: 24 photographs}. */
  public static String title(Leg leg) {
    return title(Sentences.capital(leg.name()), leg.photos());
  }

  static String title(String name, int photos) {
    return name + ": " + Sentences.photographs(photos);
  }

  /** A length in metres as centimetres or inches with the unit, parted by plain spaces. */
  public String length(double metres) {
    return lengths.closely(metres, decimals).replace('\u00a0', ' ');
  }

  /** Direction in degrees from −180 up to 180. */
  public static String azimuth(Station station) {
    double turns = station.azimuth().degrees() / 360 + 0.5;
    double whole = Num.round((turns - Math.floor(turns)) * 360 - 180);
    return Numbers.fixed(whole >= 180 ? -180 : whole, 0) + "°";
  }

  /** What stays as it is during a leg, in one line. */
  public String setup(Leg leg) {
    StringBuilder text = new StringBuilder();
    text.append(leg.setup().pose() == Pose.STANDING ? "object standing" : "object turned over");
    text.append(leg.setup().hold() == Hold.UPRIGHT ? ", camera upright" : ", camera level");
    text.append(", focus at ").append(length(leg.setup().focus().metres()));
    if (leg.setup().repeats() > 1) {
      text.append(", ").append(leg.setup().repeats()).append(" photographs at each station");
    }
    return text.toString();
  }

  /** Where to aim, seen from the middle of the object. */
  public String aim(Station station) {
    Vec3 target = station.target();
    StringBuilder text = new StringBuilder(length(target.z())).append(" high");
    side(text, target.x(), " right", " left");
    side(text, target.y(), " back", " front");
    return text.toString();
  }

  private void side(StringBuilder text, double metres, String more, String less) {
    if (Math.abs(metres) >= SAME) {
      text.append(", ").append(length(Math.abs(metres))).append(metres > 0 ? more : less);
    }
  }
}
