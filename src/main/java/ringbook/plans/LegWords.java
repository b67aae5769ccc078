package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import ringbook.assess.Standing;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg;
import ringbook.shots.Scene;
import ringbook.shots.SceneDetails;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Length;
import ringbook.units.Lengths;
import ringbook.units.Num;
import ringbook.units.Numbers;

/**
 * Lengths of a leg in words, for shot tables: one where all its stations agree, else from the least
 * to the most.
 */
public final class LegWords {

  private static final String FEET = " ft";

  private final PlanWords words;

  /** Words that suit the distances of a plan. */
  public LegWords(ShotPlan plan, Lengths lengths) {
    words = PlanWords.of(plan, lengths);
  }

  /** The same for single stations. */
  public PlanWords words() {
    return words;
  }

  /** Lens above the floor. */
  public String height(Station station) {
    return words.length(station.position().z());
  }

  /** From the spot under the middle of the object to the spot under the lens. */
  public String floor(Station station) {
    return words.length(onFloor(station));
  }

  static double onFloor(Station station) {
    return Num.hypot(station.position().x(), station.position().y());
  }

  /** Lens above the floor. */
  public String height(Leg leg) {
    return all(leg, s -> s.position().z());
  }

  /** Along the floor, as for a station. */
  public String floor(Leg leg) {
    return all(leg, LegWords::onFloor);
  }

  /** From the lens to the spot it looks at. */
  public String away(Leg leg) {
    return all(leg, s -> s.target().minus(s.position()).norm());
  }

  /** Where to aim, if all stations aim at one spot. */
  public String aim(Leg leg) {
    List<String> aims = new ArrayList<>();
    for (Station station : leg.stations()) {
      String aim = words.aim(station);
      if (!aims.contains(aim)) {
        aims.add(aim);
      }
    }
    return aims.size() == 1 ? aims.get(0) : "differs, see the notes";
  }

  /** Its name with a capital, as on slates. */
  public static String name(Leg leg) {
    return Sentences.capital(leg.name());
  }

  private String all(Leg leg, ToDoubleFunction<Station> metres) {
    double least = leg.stations().stream().mapToDouble(metres).min().orElseThrow();
    double most = leg.stations().stream().mapToDouble(metres).max().orElseThrow();
    String from = words.length(least);
    String to = words.length(most);
    String unit = to.substring(to.lastIndexOf(' '));
    boolean one = from.endsWith(unit) && !to.contains(FEET) && !from.contains(FEET);
    return from.equals(to)
        ? to
        : (one ? from.substring(0, from.length() - unit.length()) : from) + " to " + to;
  }

  /** How far the lens looks down or up: {@code 15° down}, {@code level}, to whole degrees. */
  public static String tilt(Station station) {
    Vec3 view = station.target().minus(station.position());
    double up = Num.degrees(Num.atan2(view.z(), Num.hypot(view.x(), view.y())));
    String degrees = Numbers.fixed(Math.abs(up), 0);
    return degrees.equals("0") ? "level" : degrees + (up < 0 ? "° down" : "° up");
  }

  /** Names of what keeps a person from standing behind the lens there. */
  public static List<String> inTheWay(Scene scene, Station station) {
    double room = SceneDetails.si(scene, "place.bodyRoom");
    Length back = new Length(onFloor(station) + room);
    return Standing.inTheWay(scene.place(), back, station.azimuth());
  }
}
