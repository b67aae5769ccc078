package ringbook.meshes;

import java.util.Optional;
import ringbook.geometry.Mesh;
import ringbook.geometry.MeshFaults;
import ringbook.geometry.SelfCrossings;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** Says what is odd about a mesh, and whether it can be used. */
final class MeshCheck {

  private MeshCheck() {}

  /** The mesh, with outside and inside the right way round; empty where that cannot be known. */
  static Optional<Mesh> usable(String name, Mesh mesh, Problems problems) {
    Position file = Position.ofFile(name);
    MeshFaults faults = MeshFaults.of(mesh);
    if (!(mesh.area() > 0)) {
      problems.add(file, "all triangles of the mesh are without area", "export it again");
      return Optional.empty();
    }
    if (faults.flippedEdges() > 0) {
      problems.add(
          file,
          "neighbouring triangles face opposite ways along " + faults.flippedEdges() + " edges",
          "let the program it comes from turn all normals outwards");
      return Optional.empty();
    }
    tellOdd(file, faults, problems);
    int crossings = SelfCrossings.count(mesh);
    if (crossings > 0) {
      problems.note(
          file,
          "the surface passes through itself at " + crossings + " edges",
          "what lies inside is counted as surface that no camera sees");
    }
    if (faults.isClosed() && mesh.volume() < 0) {
      problems.note(file, "the mesh was inside out", "it has been turned");
      return Optional.of(mesh.reversed());
    }
    return Optional.of(mesh);
  }

  private static void tellOdd(Position file, MeshFaults faults, Problems problems) {
    if (faults.openEdges() > 0) {
      problems.note(
          file,
          "the mesh is open along " + faults.openEdges() + " edges",
          "it is used as it is: it has no volume, and only the front of each triangle is surface");
    }
    if (faults.crowdedEdges() > 0) {
      problems.note(
          file,
          "more than two triangles meet at " + faults.crowdedEdges() + " edges",
          "it is used as it is");
    }
    if (faults.emptyTriangles() > 0) {
      problems.note(
          file, faults.emptyTriangles() + " triangles are without area", "they are passed over");
    }
  }
}
