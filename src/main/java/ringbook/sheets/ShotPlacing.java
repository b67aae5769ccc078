package ringbook.sheets;

import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.geometry.Vec3;
import ringbook.plans.Clock;
import ringbook.plans.ShotColumn;
import ringbook.problems.Problems;
import ringbook.shots.Station;
import ringbook.units.Angle;

/** Where the station of one row is and where it looks. */
record ShotPlacing(ShotRow row, ShotDefaults defaults, Problems problems) {

  private static final double FARTHEST = 100;

  /** The station, numbered 1; empty, with the faults told, if it cannot be placed. */
  Optional<Station> station() {
    int before = problems.size();
    OptionalDouble azimuth = azimuth();
    OptionalDouble height = needed(ShotColumn.LENS_HEIGHT);
    double right = row.si(ShotColumn.AIM_RIGHT, problems).orElse(0);
    double back = row.si(ShotColumn.AIM_BACK, problems).orElse(0);
    double up = row.si(ShotColumn.AIM_HEIGHT, problems).orElse(defaults.middleHeight().metres());
    if (azimuth.isEmpty() || height.isEmpty() || problems.size() > before) {
      return Optional.empty();
    }
    Vec3 target = new Vec3(right, back, up);
    Vec3 direction = Vec3.towards(new Angle(azimuth.getAsDouble()), Angle.ZERO);
    OptionalDouble floor = floor(target, direction, height.getAsDouble());
    if (floor.isEmpty()) {
      return Optional.empty();
    }
    Vec3 lens = direction.times(floor.getAsDouble()).plus(new Vec3(0, 0, height.getAsDouble()));
    if (lens.equals(target)) {
      row.fault(
          ShotColumn.AIM_HEIGHT, "the lens is where it should look", "move one of them", problems);
      return Optional.empty();
    }
    return Optional.of(new Station(1, new Angle(azimuth.getAsDouble()), lens, target));
  }

  private OptionalDouble azimuth() {
    if (row.states(ShotColumn.AZIMUTH)) {
      OptionalDouble azimuth = row.si(ShotColumn.AZIMUTH, problems);
      boolean turns = azimuth.isPresent() && Math.abs(azimuth.getAsDouble()) > 4 * Math.PI;
      if (turns) {
        row.fault(ShotColumn.AZIMUTH, "more than two turns", "write −180 to 360", problems);
      }
      return turns ? OptionalDouble.empty() : azimuth;
    }
    if (!row.states(ShotColumn.CLOCK)) {
      row.fault(ShotColumn.AZIMUTH, "it is missing", "write degrees, or give clock", problems);
      return OptionalDouble.empty();
    }
    String clock = row.text(ShotColumn.CLOCK);
    OptionalDouble found = Clock.radians(clock);
    if (found.isEmpty()) {
      row.fault(
          ShotColumn.CLOCK,
          "'" + Quote.of(clock) + "' is no time of the clock",
          "write a direction such as 4:30, or give azimuth_deg",
          problems);
    }
    return found;
  }

  private OptionalDouble needed(ShotColumn column) {
    if (!row.states(column)) {
      row.fault(column, "it is missing", "write a number", problems);
      return OptionalDouble.empty();
    }
    OptionalDouble si = row.si(column, problems);
    if (si.isPresent() && !(si.getAsDouble() >= 0 && si.getAsDouble() <= FARTHEST)) {
      row.fault(
          column, "'" + Quote.of(row.text(column)) + "' is out of range", "0 to 100 m", problems);
      return OptionalDouble.empty();
    }
    return si;
  }

  private OptionalDouble floor(Vec3 target, Vec3 direction, double height) {
    if (row.states(ShotColumn.FLOOR_DISTANCE)) {
      return needed(ShotColumn.FLOOR_DISTANCE);
    }
    OptionalDouble distance = needed(ShotColumn.DISTANCE);
    if (distance.isEmpty()) {
      return distance;
    }
    double d = distance.getAsDouble();
    double rise = height - target.z();
    double along = target.dot(direction);
    double flat = target.x() * target.x() + target.y() * target.y();
    double square = along * along - flat + d * d - rise * rise;
    if (square < 0 || along + Math.sqrt(square) < 0) {
      row.fault(
          ShotColumn.DISTANCE,
          "no spot at that height and in that direction is that near",
          "check it, or give floor_distance_cm",
          problems);
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(along + Math.sqrt(square));
  }
}
