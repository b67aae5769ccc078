package ringbook.shots;

import java.util.List;
import ringbook.shots.Aim.Hold;
import ringbook.units.Length;
import ringbook.units.Require;

/**
 * A run of photographs that are taken one after the other with nothing changed in between: a ring,
 * a row, an arc over the top, a few details.
 *
 * @param name short and unlike that of any other leg: "ring A", "strip 1", "top", "close-ups of
 *     pocket 2"
 * @param kind what sort of run it is
 * @param setup what stays as it is during the leg
 * @param stations in the order of shooting, at least one, with numbers that rise
 * @param why one sentence that explains the leg to a newcomer
 */
public record Leg(String name, Kind kind, Setup setup, List<Station> stations, String why) {

  /** What sort of run a leg is. */
  public enum Kind {
    /** Once round the object at one height, all looking at one spot. */
    RING,
    /** A row side by side, all looking the same way, or one above the other on one side. */
    STRIP,
    /** From above, into an open rim or onto the top. */
    TOP,
    /** A few photographs of a part the others do not reach. */
    DETAIL
  }

  /**
   * What stays as it is during a leg. A new focus is a new camera, so a leg has one.
   *
   * @param pose how the object lies
   * @param hold how the camera is held
   * @param focus from the lens to what is sharpest, above 0
   * @param repeats photographs taken at each station, at least 1
   */
  public record Setup(Pose pose, Hold hold, Length focus, int repeats) {
    public Setup {
      Require.positive("focus distance", "m", focus.metres());
      Require.atLeast("photographs at each station", 1, repeats);
    }
  }

  public Leg {
    stations = List.copyOf(stations);
    Require.atLeast("stations of a leg", 1, stations.size());
    int before = 0;
    for (Station station : stations) {
      if (station.number() <= before) {
        throw new IllegalArgumentException(
            "numbers of " + name + " must rise, got " + station.number() + " after " + before);
      }
      before = station.number();
    }
  }

  /** A whole ring as a leg. */
  public static Leg of(Ring ring, String name, Setup setup, String why) {
    return new Leg(name, Kind.RING, setup, ring.stations(), why);
  }

  /** A row as a leg. */
  public static Leg of(Strip strip, Strip.Row row, String name, Setup setup, String why) {
    return new Leg(name, Kind.STRIP, setup, strip.stations(row), why);
  }

  /** How many photographs are taken. */
  public int photos() {
    return stations.size() * setup.repeats();
  }
}
