package ringbook.geometry;

import java.util.ArrayList;
import java.util.List;
import ringbook.units.Length;

/**
 * Solids put together, less those that are cut away from all of them. Only what can be touched from
 * outside is surface: {@link #mesh} trims off what lies inside another solid, and keeps of two
 * surfaces in one place the first. The trimmed edges of two solids run along each other within the
 * accuracy of the triangles but do not share points, so the mesh of a shape of several overlapping
 * solids is not closed.
 *
 * @param solids at least one that is no cut
 */
public record Shape(List<Placed> solids) {

  public Shape {
    solids = List.copyOf(solids);
    if (solids.stream().allMatch(Placed::isCut)) {
      throw new IllegalArgumentException("a shape needs a solid");
    }
  }

  /** The shape that is one solid in its own frame. */
  public static Shape of(Solid solid) {
    return new Shape(List.of(Placed.of("", solid, Placement.NONE)));
  }

  /** Whether a point lies in the material. */
  public boolean contains(Vec3 point) {
    boolean inside = false;
    for (Placed placed : solids) {
      if (placed.contains(point)) {
        if (placed.isCut()) {
          return false;
        }
        inside = true;
      }
    }
    return inside;
  }

  /** The block all that is not cut away fits in. */
  public Bounds bounds() {
    Bounds all = null;
    for (Placed placed : solids) {
      if (!placed.isCut()) {
        all = all == null ? placed.bounds() : all.with(placed.bounds());
      }
    }
    return all;
  }

  /**
   * The surface as triangles with edges of about {@code edge}. Parts are named by the solid and its
   * part, "handle: side"; a cut is one part with its own name.
   */
  public Mesh mesh(Length edge) {
    List<Mesh> meshes = new ArrayList<>();
    for (int i = 0; i < solids.size(); i++) {
      Placed placed = solids.get(i);
      Mesh mesh = named(placed, placed.solid().mesh(edge)).placed(placed.placement());
      if (solids.size() > 1) {
        Mesh facing = placed.isCut() ? mesh.reversed() : mesh;
        mesh = new Trim(this, i).of(facing);
      }
      meshes.add(mesh);
    }
    return meshes.size() == 1 ? meshes.get(0) : Mesh.joined(meshes);
  }

  private static Mesh named(Placed placed, Mesh mesh) {
    if (placed.name().isEmpty()) {
      return mesh;
    }
    List<String> names = new ArrayList<>();
    for (String part : mesh.parts()) {
      names.add(placed.isCut() ? placed.name() : placed.name() + ": " + part);
    }
    return mesh.named(names);
  }
}
