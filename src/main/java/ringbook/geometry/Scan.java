package ringbook.geometry;

import ringbook.units.Length;

/** A body known by its triangles only, such as one read from a mesh file. */
public final class Scan implements Solid {

  private final Mesh mesh;
  private final RayTree tree;

  /** The body with this surface, taken as it is. */
  public Scan(Mesh mesh) {
    this.mesh = mesh;
    this.tree = RayTree.of(mesh);
  }

  @Override
  public double area() {
    return mesh.area();
  }

  @Override
  public double volume() {
    return mesh.volume();
  }

  /** By the way the first triangle straight overhead faces; has a meaning for closed meshes. */
  @Override
  public boolean contains(Vec3 p) {
    Vec3 up = new Vec3(p.x(), p.y(), mesh.bounds().high().z() + 1);
    int hit = tree.nearest(p, up).triangle();
    return hit >= 0 && mesh.doubleNormal(hit).dot(Vec3.UP) > 0;
  }

  @Override
  public Bounds bounds() {
    return mesh.bounds();
  }

  /** The triangles as they are, whatever the edge. */
  @Override
  public Mesh mesh(Length edge) {
    return mesh;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Scan scan && mesh.equals(scan.mesh);
  }

  @Override
  public int hashCode() {
    return mesh.hashCode();
  }

  @Override
  public String toString() {
    return mesh.toString();
  }
}
