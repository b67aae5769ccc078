package ringbook.assess.coverage;

import ringbook.geometry.Mesh;
import ringbook.geometry.Patches;
import ringbook.geometry.RayTree;
import ringbook.shots.Scene;
import ringbook.units.Num;

/**
 * The object as it is looked at: its patches, and what of it can be in the way. Standing on its
 * table in the frame of the room, in metres.
 *
 * @param patches what is judged
 * @param tree what hides; usually over the same mesh
 */
public record Surface(Patches patches, RayTree tree) {

  /**
   * Of one mesh.
   *
   * @param wanted about how many patches, at least 1
   */
  public static Surface of(Mesh mesh, int wanted) {
    return new Surface(Patches.of(mesh, wanted), RayTree.of(mesh));
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
    return new Surface(patches.only(numbers), tree);
  }

  /** How many patches. */
  public int count() {
    return patches.count();
  }

  /** Metres in plan from the origin to the farthest patch. */
  double reach() {
    double reach = 0;
    for (int i = 0; i < count(); i++) {
      reach = Math.max(reach, Num.hypot(patches.x(i), patches.y(i)));
    }
    return reach;
  }
}
