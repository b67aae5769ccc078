package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.geometry.Vec3;
import ringbook.shots.Ring;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * An arc over the top, from the door side to the far side.
 *
 * @param middle of the object, in metres, in the frame of the room
 * @param radius lens to the middle
 * @param from elevation of the ring whose two sides it joins
 */
record TopArc(Vec3 middle, Length radius, Angle from) {

  /** So many stations evenly between the two sides of the ring, none on it. */
  List<Station> stations(int views) {
    List<Station> stations = new ArrayList<>();
    double high = from.radians();
    for (int i = 1; i <= views; i++) {
      double along = high + (Math.PI - 2 * high) * i / (views + 1);
      Vec3 away = Vec3.towards(Ring.FIRST, new Angle(along)).times(radius.metres());
      boolean beyond = along > Math.PI / 2;
      Angle azimuth = beyond ? Ring.FIRST.plus(Angle.FULL_TURN.times(0.5)) : Ring.FIRST;
      stations.add(new Station(i, azimuth, middle.plus(away), middle));
    }
    return List.copyOf(stations);
  }
}
