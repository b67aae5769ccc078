package ringbook.geometry;

import java.util.Arrays;

/**
 * Tells which patches a camera sees: those that face it and that no triangle blocks. Many cameras
 * may be asked for, one after another or at the same time.
 *
 * <p>The answers are those of {@link RayTree#blocked}, found for all patches of a camera together
 * by a {@link SightWalk}; where the camera is so near that no {@link SightGrid} fits, and for a few
 * patches, ray by ray. Over a closed mesh, patches from which there is a way out are held against
 * {@link BackFaces} only. An answer then differs where a patch lies less than a hair below the
 * surface of another body, or might where a ray passes an outline within the rim of its triangles.
 */
public final class Sight {

  /** Below so many patches a grid is not worth its making. */
  private static final int FEW = 200;

  /** How much steeper than the normal a way out is sought, one try after another. */
  private static final double[] RISES = {0, 1.5, 6, -1.5};

  private final RayTree tree;
  private final Patches patches;

  /** Null over a mesh that is not closed. */
  private final BackFaces backs;

  /** Whether a patch is known to lie open to the outside; none over a mesh that is not closed. */
  private final boolean[] open;

  private Sight(RayTree tree, Patches patches, BackFaces backs, boolean[] open) {
    this.tree = tree;
    this.patches = patches;
    this.backs = backs;
    this.open = open;
  }

  /**
   * Sight of a mesh.
   *
   * @param mesh what hides
   * @param tree over that mesh
   * @param patches what is looked at, usually of that mesh
   */
  public static Sight of(Mesh mesh, RayTree tree, Patches patches) {
    BackFaces backs = tree.triangles() > 0 && mesh.isClosed() ? new BackFaces(tree) : null;
    boolean[] open = new boolean[patches.count()];
    Sight sight = new Sight(tree, patches, backs, open);
    if (backs != null) {
      RayWalk walk = new RayWalk(tree);
      double far = 2 * mesh.bounds().diagonal();
      for (int i = 0; i < open.length; i++) {
        open[i] = sight.hasWayOut(walk, i, far);
      }
    }
    return sight;
  }

  private boolean hasWayOut(RayWalk walk, int i, double far) {
    for (double rise : RISES) {
      Vec3 at = patches.point(i);
      Vec3 out = patches.normal(i).plus(new Vec3(0, 0, rise));
      Vec3 end = at.plus(out.times(far / out.norm()));
      if (out.dot(patches.normal(i)) > 0
          && !walk.blocked(end.x(), end.y(), end.z(), at.x(), at.y(), at.z())) {
        return true;
      }
    }
    return false;
  }

  /** Sight of some of these patches, hidden by the same, in the order of {@code numbers}. */
  public Sight only(int[] numbers) {
    boolean[] some = new boolean[numbers.length];
    for (int i = 0; i < numbers.length; i++) {
      some[i] = open[numbers[i]];
    }
    return new Sight(tree, patches.only(numbers), backs, some);
  }

  /** What is looked at. */
  public Patches patches() {
    return patches;
  }

  /** What hides. */
  public RayTree tree() {
    return tree;
  }

  /**
   * Answers for one camera.
   *
   * @param camera the middle of the lens
   * @param seen takes the answers, one a patch
   */
  public void visible(Vec3 camera, boolean[] seen) {
    boolean outside = backs != null && tree.isOutside(camera);
    int[] some = new int[patches.count()];
    int[] rest = new int[patches.count()];
    int someCount = 0;
    int restCount = 0;
    for (int i = 0; i < patches.count(); i++) {
      double away =
          (patches.x(i) - camera.x()) * patches.normalX(i)
              + (patches.y(i) - camera.y()) * patches.normalY(i)
              + (patches.z(i) - camera.z()) * patches.normalZ(i);
      if (outside && open[i] && away < -tree.hair()) {
        some[someCount++] = i;
      } else if (away < 0) {
        rest[restCount++] = i;
      }
    }
    Arrays.fill(seen, false);
    look(camera, some, someCount, true, seen);
    look(camera, rest, restCount, false, seen);
  }

  private void look(Vec3 camera, int[] which, int number, boolean backsOnly, boolean[] seen) {
    if (number >= FEW && tree.triangles() > 0 && SightGrid.fits(camera, patches)) {
      SightGrid grid = new SightGrid(camera, patches, which, number);
      new SightWalk(tree, grid, camera, backsOnly ? backs.from(camera) : null).run();
      grid.mark(seen);
    } else {
      rayByRay(camera, which, number, seen);
    }
  }

  private void rayByRay(Vec3 camera, int[] which, int number, boolean[] seen) {
    RayWalk walk = new RayWalk(tree);
    for (int k = 0; k < number; k++) {
      int i = which[k];
      seen[i] =
          !walk.blocked(
              camera.x(), camera.y(), camera.z(), patches.x(i), patches.y(i), patches.z(i));
    }
  }
}
