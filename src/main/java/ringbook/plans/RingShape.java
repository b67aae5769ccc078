package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.geometry.ArcSet.Span;
import ringbook.geometry.Vec3;
import ringbook.shots.Pose;
import ringbook.shots.Ring;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * A ring as the planner thinks of it: at one elevation and distance, once round as far as the room
 * lets, with as few stations as the largest turn between lines of sight needs.
 *
 * @param pose how the object lies
 * @param elevation as seen from the middle of the object
 * @param distance from the lens to the middle
 * @param middle of the object
 */
record RingShape(Pose pose, Angle elevation, Length distance, Vec3 middle) {

  double floorDistance() {
    return distance.metres() * Num.cos(elevation.radians());
  }

  double height() {
    return middle.z() + distance.metres() * Num.sin(elevation.radians());
  }

  /** Largest turn on the floor whose lines of sight differ by no more than {@code limit}. */
  Angle step(Angle limit) {
    return Angle.FULL_TURN.times(1 / Ring.photosForRays(limit, elevation));
  }

  /** Its stations within reach, round from the middle of the widest gap or from the door side. */
  List<Station> stations(Reach reach, Angle limit) {
    List<Station> stations = new ArrayList<>();
    if (!reach.allows(floorDistance(), height())) {
      return stations;
    }
    for (Span free : reach.free(floorDistance())) {
      for (Angle azimuth : Reach.spread(free, step(limit))) {
        stations.add(at(stations.size() + 1, azimuth));
      }
    }
    return stations;
  }

  Station at(int number, Angle azimuth) {
    Vec3 away = Vec3.towards(azimuth, elevation).times(distance.metres());
    return new Station(number, azimuth, middle.plus(away), middle);
  }
}
