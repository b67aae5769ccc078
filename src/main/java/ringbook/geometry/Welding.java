package ringbook.geometry;

/** Gives points at the very same place the same number. */
final class Welding {

  private Welding() {}

  /** For each point of the mesh the first one at its place. */
  static int[] firsts(Mesh mesh) {
    int count = mesh.points();
    int size = 16;
    while (size < 2 * count) {
      size *= 2;
    }
    int[] table = new int[size]; // number of a point + 1; 0 is free
    int[] first = new int[count];
    for (int p = 0; p < count; p++) {
      int slot = hash(mesh, p) & (size - 1);
      while (table[slot] != 0 && !same(mesh, table[slot] - 1, p)) {
        slot = (slot + 1) & (size - 1);
      }
      if (table[slot] == 0) {
        table[slot] = p + 1;
      }
      first[p] = table[slot] - 1;
    }
    return first;
  }

  /** The same mesh with each place a point of its own once. */
  static Mesh welded(Mesh mesh) {
    int[] first = firsts(mesh);
    int[] number = new int[first.length];
    MeshDraft draft = new MeshDraft();
    for (int p = 0; p < first.length; p++) {
      number[p] = first[p] == p ? draft.point(mesh.x(p), mesh.y(p), mesh.z(p)) : number[first[p]];
    }
    for (int t = 0; t < mesh.triangles(); t++) {
      draft.triangle(
          number[mesh.corner(t, 0)],
          number[mesh.corner(t, 1)],
          number[mesh.corner(t, 2)],
          draft.part(mesh.parts().get(mesh.part(t))));
    }
    return draft.mesh();
  }

  private static boolean same(Mesh mesh, int p, int q) {
    return mesh.x(p) == mesh.x(q) && mesh.y(p) == mesh.y(q) && mesh.z(p) == mesh.z(q);
  }

  private static int hash(Mesh mesh, int p) {
    int h = mixed(mesh.x(p)) * 31 + mixed(mesh.y(p));
    h = h * 31 + mixed(mesh.z(p));
    h *= 0x9E3779B1;
    return h ^ (h >>> 15);
  }

  private static int mixed(double x) {
    long bits = Double.doubleToLongBits(x + 0.0); // -0 becomes 0
    return (int) (bits ^ (bits >>> 32));
  }
}
