package ringbook.geometry;

/**
 * What is wrong with a mesh, counted. Points at the same place count as one.
 *
 * @param openEdges edges with a triangle on one side only: the mesh has a border
 * @param crowdedEdges edges that more than two triangles share: the surface branches there
 * @param flippedEdges edges whose two triangles run the same way along: one of them is inside out
 * @param emptyTriangles triangles without area
 * @param samePlacePoints points at the place of an earlier one
 */
public record MeshFaults(
    int openEdges, int crowdedEdges, int flippedEdges, int emptyTriangles, int samePlacePoints) {

  /** Counts them. */
  public static MeshFaults of(Mesh mesh) {
    int[] first = Welding.firsts(mesh);
    int same = 0;
    for (int p = 0; p < first.length; p++) {
      same += first[p] == p ? 0 : 1;
    }
    EdgeCount edges = new EdgeCount(3 * mesh.triangles());
    int empty = 0;
    for (int t = 0; t < mesh.triangles(); t++) {
      int a = first[mesh.corner(t, 0)];
      int b = first[mesh.corner(t, 1)];
      int c = first[mesh.corner(t, 2)];
      if (!(mesh.area(t) > 0)) {
        empty++;
      }
      if (a != b && b != c && c != a) {
        edges.add(a, b);
        edges.add(b, c);
        edges.add(c, a);
      }
    }
    return new MeshFaults(edges.open(), edges.crowded(), edges.flipped(), empty, same);
  }

  /** Whether the surface has an inside. */
  public boolean isClosed() {
    return openEdges == 0 && crowdedEdges == 0 && flippedEdges == 0;
  }
}
