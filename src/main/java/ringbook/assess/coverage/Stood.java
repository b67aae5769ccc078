package ringbook.assess.coverage;

import java.util.Map;
import java.util.TreeMap;
import ringbook.geometry.Mesh;
import ringbook.geometry.Patches;
import ringbook.geometry.RayTree;
import ringbook.geometry.Sight;
import ringbook.shots.Scene;
import ringbook.shots.Subject;
import ringbook.units.Length;

/**
 * An object on its table, with what was worked out of its surface. The one asked for last is kept:
 * figure after figure and plan after plan look at the same object, while a reader changes the
 * camera or the aim.
 */
final class Stood {

  private static volatile Stood last;

  private final Subject subject;
  private final Length table;
  private final Mesh mesh;
  private final RayTree tree;

  /** By about how many patches; never changed, but for another in its place. */
  private volatile Map<Integer, Surface> surfaces = Map.of();

  private Stood(Scene scene) {
    subject = scene.subject();
    table = scene.place().tableHeight();
    mesh = scene.standing(subject.height().plus(subject.width()).times(1.0 / 40));
    tree = RayTree.of(mesh);
  }

  /** The object of a scene. */
  static Stood of(Scene scene) {
    Stood known = last;
    if (known == null
        || !known.table.equals(scene.place().tableHeight())
        || !known.subject.equals(scene.subject())) {
      known = new Stood(scene);
      last = known;
    }
    return known;
  }

  /**
   * Its surface.
   *
   * @param wanted about how many patches, at least 1
   */
  Surface surface(int wanted) {
    Surface known = surfaces.get(wanted);
    if (known == null) {
      known = new Surface(Sight.of(mesh, tree, Patches.of(mesh, wanted)));
      Map<Integer, Surface> more = new TreeMap<>(surfaces);
      more.put(wanted, known);
      surfaces = more;
    }
    return known;
  }
}
