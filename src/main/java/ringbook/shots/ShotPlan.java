package ringbook.shots;

import java.util.ArrayList;
import java.util.List;

/**
 * Which photographs to take, from where, in which order.
 *
 * @param legs in the order of shooting, with names that differ
 */
public record ShotPlan(List<Leg> legs) {

  public ShotPlan {
    legs = List.copyOf(legs);
    List<String> names = new ArrayList<>();
    for (Leg leg : legs) {
      if (names.contains(leg.name())) {
        throw new IllegalArgumentException("two legs are called " + leg.name());
      }
      names.add(leg.name());
    }
  }

  /** One station with the leg it belongs to. */
  public record Shot(Leg leg, Station station) {}

  /** All stations in the order of shooting. */
  public List<Shot> shots() {
    List<Shot> shots = new ArrayList<>();
    for (Leg leg : legs) {
      for (Station station : leg.stations()) {
        shots.add(new Shot(leg, station));
      }
    }
    return List.copyOf(shots);
  }

  /** How many photographs are taken in all, without slates and spares. */
  public int photos() {
    int photos = 0;
    for (Leg leg : legs) {
      photos += leg.photos();
    }
    return photos;
  }

  /** The legs of one pose, in the order of shooting. */
  public List<Leg> legsOf(Pose pose) {
    List<Leg> some = new ArrayList<>();
    for (Leg leg : legs) {
      if (leg.setup().pose() == pose) {
        some.add(leg);
      }
    }
    return List.copyOf(some);
  }
}
