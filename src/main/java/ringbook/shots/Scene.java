package ringbook.shots;

import ringbook.geometry.Mesh;
import ringbook.geometry.Vec3;
import ringbook.optics.Kit;
import ringbook.units.Length;
import ringbook.units.Lengths;

/**
 * Everything the course works its numbers out from: which camera, which object, which room, to what
 * end.
 *
 * @param kit camera and lens
 * @param subject the object
 * @param place the room
 * @param aim what is wanted
 */
public record Scene(Kit kit, Subject subject, Place place, Aim aim) {

  /** The same with lengths told in other measures. */
  public Scene in(Lengths lengths) {
    return new Scene(kit, subject, place, aim.in(lengths));
  }

  /**
   * The object's surface where it stands in the room: on the table, over the origin of the plan.
   *
   * @param edge about how long the edges of the triangles are
   */
  public Mesh standing(Length edge) {
    return subject.mesh(edge).moved(new Vec3(0, 0, place.tableHeight().metres()));
  }
}
