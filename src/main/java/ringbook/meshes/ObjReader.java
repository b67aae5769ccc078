package ringbook.meshes;

import java.io.IOException;
import java.util.List;

/**
 * Reads the points, faces and groups of an OBJ file; everything else in it is passed over. Format:
 * Wavefront Technologies, Advanced Visualizer manual, appendix B1 (from memory).
 */
final class ObjReader {

  private final ByteSource in;
  private final MeshSink sink;

  ObjReader(ByteSource in, MeshSink sink) {
    this.in = in;
    this.sink = sink;
  }

  void read() throws IOException, BrokenMeshException {
    for (List<String> w = in.words(); !w.isEmpty(); w = in.words()) {
      switch (w.get(0)) {
        case "v" -> point(w);
        case "f" -> face(w);
        case "g", "o" -> sink.part(w.size() > 1 ? w.get(1) : "surface");
        default -> {
          // normals, textures, materials, comments
        }
      }
    }
  }

  private void point(List<String> w) throws BrokenMeshException {
    if (w.size() < 4) {
      throw new BrokenMeshException(
          in.line(), "a point needs three coordinates", "write v 0.1 0.2 0.3");
    }
    sink.point(
        new double[] {in.number(w.get(1)), in.number(w.get(2)), in.number(w.get(3))}, in.line());
  }

  private void face(List<String> w) throws BrokenMeshException {
    int[] numbers = new int[w.size() - 1];
    for (int i = 0; i < numbers.length; i++) {
      String word = w.get(i + 1);
      int slash = word.indexOf('/');
      int number = in.whole(slash < 0 ? word : word.substring(0, slash));
      if (number == 0) {
        throw new BrokenMeshException(
            in.line(), "a face names point 0", "points of an OBJ file count from 1");
      }
      // Below 0 they count back from the point read last.
      numbers[i] = number > 0 ? number - 1 : sink.points() + number;
    }
    sink.polygon(numbers, in.line());
  }
}
