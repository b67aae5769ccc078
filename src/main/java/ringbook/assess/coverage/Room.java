package ringbook.assess.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.geometry.Vec3;
import ringbook.shots.Place;
import ringbook.shots.Place.Obstacle;
import ringbook.units.Length;

/**
 * What of the place can come between a lens and the object. A scene gives walls and furniture no
 * height: here all of them stand from the floor to {@link #HEIGHT}, as high as a usual room, which
 * is as strict as {@link ringbook.assess.Standing} is. The table is a level plane without an end:
 * from below it nothing on it is seen.
 */
public final class Room {

  /** How high walls and furniture are taken to be; common practice, no source. */
  public static final Length HEIGHT = Length.ofMetres(2.5);

  private final double table;
  private final List<Prism> prisms = new ArrayList<>();
  private final List<String> names = new ArrayList<>();

  private Room(double table) {
    this.table = table;
  }

  /** The room of a scene. */
  public static Room of(Place place) {
    Room room = new Room(place.tableHeight().metres());
    for (Obstacle obstacle : place.obstacles()) {
      room.prisms.add(new Prism(obstacle.corners(), HEIGHT.metres()));
      room.names.add(obstacle.name());
    }
    return room;
  }

  /** Whether the lens is not above the table top. */
  boolean isUnderTable(Vec3 lens) {
    return lens.z() <= table;
  }

  /** What may come between a lens and an object that reaches {@code reach} metres in plan. */
  List<Prism> near(Vec3 lens, double reach) {
    List<Prism> near = new ArrayList<>();
    for (Prism prism : prisms) {
      if (!prism.isClearOf(lens, reach)) {
        near.add(prism);
      }
    }
    return near;
  }

  /** The name of what comes between two positions: a piece of furniture, or the table. */
  public Optional<String> between(Vec3 lens, Vec3 spot) {
    if (isUnderTable(lens)) {
      return Optional.of("the table");
    }
    for (int i = 0; i < prisms.size(); i++) {
      if (prisms.get(i).blocks(lens, spot)) {
        return Optional.of(names.get(i));
      }
    }
    return Optional.empty();
  }
}
