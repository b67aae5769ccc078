package ringbook.assess.coverage;

import ringbook.geometry.Mesh;
import ringbook.geometry.Patches;
import ringbook.geometry.RayTree;
import ringbook.geometry.Sight;
import ringbook.shots.Scene;
import ringbook.units.Num;

/**
 * The object as it is looked at: its patches, and what of it can be in the way. Standing on its
 * table in the frame of the room, in metres.
 *
 * @param sight what is judged, and what hides, usually over the same mesh
 */
public record Surface(Sight sight) {

  /**
   * Of one mesh.
   *
   * @param wanted about how many patches, at least 1
   */
  public static Surface of(Mesh mesh, int wanted) {
    return new Surface(Sight.of(mesh, RayTree.of(mesh), Patches.of(mesh, wanted)));
  }

  /**
   * The object of a scene on its table.
   *
   * @param wanted about how many patches, at least 1
   */
  public static Surface standing(Scene scene, int wanted) {
    return Stood.of(scene).surface(wanted);
  }

  /** Some of its patches, hidden by all of it. */
  public Surface only(int[] numbers) {
    return new Surface(sight.only(numbers));
  }

  /** What is judged. */
  public Patches patches() {
    return sight.patches();
  }

  /** What hides. */
  public RayTree tree() {
    return sight.tree();
  }

  /** How many patches. */
  public int count() {
    return patches().count();
  }

  /** Metres in plan from the origin to the farthest patch. */
  double reach() {
    double reach = 0;
    for (int i = 0; i < count(); i++) {
      reach = Math.max(reach, Num.hypot(patches().x(i), patches().y(i)));
    }
    return reach;
  }
}
