package ringbook.geometry;

/** Finds where a surface passes through itself. */
public final class SelfCrossings {

  private SelfCrossings() {}

  /**
   * How many triangles' edges run through another triangle that they do not meet at a corner; each
   * edge of a closed surface is asked once.
   */
  public static int count(Mesh mesh) {
    int[] first = Welding.firsts(mesh);
    EdgeWalk edges = new EdgeWalk(mesh, first);
    int count = 0;
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int k = 0; k < 3; k++) {
        int a = first[mesh.corner(t, k)];
        int b = first[mesh.corner(t, (k + 1) % 3)];
        if (a < b && edges.crosses(a, b)) {
          count++;
        }
      }
    }
    return count;
  }
}
