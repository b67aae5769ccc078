package ringbook.shots;

import java.util.Optional;
import ringbook.geometry.Bounds;
import ringbook.geometry.Box;
import ringbook.geometry.Cylinder;
import ringbook.geometry.Mesh;
import ringbook.geometry.Shape;
import ringbook.geometry.Vec3;
import ringbook.units.Details;
import ringbook.units.Length;

/**
 * The object to photograph, by its outer sizes as it stands on the table.
 *
 * @param name what the group calls it
 * @param outline its shape seen from above
 * @param height from table to top
 * @param width the longer side seen from above; the diameter of a round object
 * @param depth the shorter side seen from above; the diameter of a round object
 * @param surface how its surface looks to a camera
 * @param details what else is stated about it
 * @param shape its form, where more is known of it than the sizes
 */
public record Subject(
    String name,
    Outline outline,
    Length height,
    Length width,
    Length depth,
    Surface surface,
    Details details,
    Optional<Shape> shape) {

  /** An object of which only the sizes are known. */
  public Subject(
      String name,
      Outline outline,
      Length height,
      Length width,
      Length depth,
      Surface surface,
      Details details) {
    this(name, outline, height, width, depth, surface, details, Optional.empty());
  }

  /**
   * Its form: the one stated or, where none is, a cylinder or a block of its sizes. A stated form
   * may differ a little in size; {@link #mesh} has the sizes exactly.
   */
  public Shape form() {
    return shape.orElseGet(
        () ->
            Shape.of(
                outline == Outline.ROUND
                    ? new Cylinder(width, height)
                    : new Box(width, depth, height)));
  }

  /**
   * Its surface, standing on z = 0 with its middle over the origin, as high, wide (along x) and
   * deep (along y) as stated.
   *
   * @param edge about how long the edges of the triangles are
   */
  public Mesh mesh(Length edge) {
    Shape form = form();
    // A large form stretched to a small object must not get the small object's triangles.
    Vec3 drawn = form.bounds().size();
    double stretch = (drawn.x() + drawn.z()) / (width.metres() + height.metres());
    Mesh mesh = form.mesh(edge.times(stretch));
    Bounds block = mesh.bounds();
    Vec3 size = block.size();
    Vec3 foot = new Vec3(block.middle().x(), block.middle().y(), block.low().z());
    return mesh.moved(foot.times(-1))
        .stretched(
            width.metres() / size.x(), depth.metres() / size.y(), height.metres() / size.z());
  }

  /** Shape seen from above. */
  public enum Outline {
    ROUND,
    RECTANGULAR
  }

  /** How much a camera finds on the surface to hold on to. */
  public enum Surface {
    /** Matt with texture all over: good. */
    TEXTURED,
    /** Matt and plain: little to match. */
    PLAIN,
    /** Shows highlights that wander with the camera. */
    GLOSSY,
    /** Lets light through. */
    CLEAR
  }
}
