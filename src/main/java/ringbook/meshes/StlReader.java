package ringbook.meshes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Reads an STL file, text or binary. Format: 3D Systems, StereoLithography Interface Specification,
 * 1989 (from memory). The normals in it are passed over: the order of the corners tells.
 */
final class StlReader {

  private static final int HEADER = 80;

  private final ByteSource in;
  private final MeshSink sink;

  StlReader(ByteSource in, MeshSink sink) {
    this.in = in;
    this.sink = sink;
  }

  /** Whether the text form begins so: many binary files begin with the same word. */
  static boolean isText(byte[] first) {
    String start = new String(first, StandardCharsets.ISO_8859_1);
    return start.startsWith("solid") && (start.contains("facet") || start.contains("endsolid"));
  }

  void readText() throws IOException, BrokenMeshException {
    int corners = 0;
    boolean ended = false;
    for (List<String> w = in.words(); !w.isEmpty(); w = in.words()) {
      switch (w.get(0)) {
        case "vertex" -> {
          if (w.size() != 4) {
            throw new BrokenMeshException(
                in.line(), "a vertex needs three coordinates", "export the mesh again");
          }
          sink.point(
              new double[] {in.number(w.get(1)), in.number(w.get(2)), in.number(w.get(3))},
              in.line());
          corners++;
        }
        case "endloop" -> {
          if (corners < 3) {
            throw new BrokenMeshException(
                in.line(), "a facet has fewer than three corners", "export the mesh again");
          }
          last(corners);
          corners = 0;
        }
        case "solid" -> {
          sink.part(w.size() > 1 ? w.get(1) : "surface");
          ended = false;
        }
        case "endsolid" -> ended = true;
        case "facet" -> sink.requireRoom(1, in.line()); // else its corners were too many first
        case "outer", "endfacet" -> {
          // only frame the corners
        }
        default ->
            throw new BrokenMeshException(
                in.line(),
                "'" + w.get(0) + "' has no place in a text STL file",
                "export the mesh again");
      }
    }
    if (!ended) {
      throw new BrokenMeshException(
          in.line(), "the file ends without 'endsolid'", "it is cut off; copy or export it again");
    }
  }

  void readBinary() throws IOException, BrokenMeshException {
    in.skip(HEADER);
    long count = in.integer(4, true);
    MeshSink.requireFew(0, count, 0);
    for (long t = 0; t < count; t++) {
      in.skip(12);
      for (int k = 0; k < 3; k++) {
        long where = -in.offset();
        sink.point(new double[] {in.real(4, true), in.real(4, true), in.real(4, true)}, where);
      }
      last(3);
      in.skip(2);
    }
    if (in.next() >= 0) {
      throw new BrokenMeshException(
          0,
          "the file goes on after its " + count + " triangles",
          "it is damaged or no STL file; export it again");
    }
  }

  private void last(int corners) throws BrokenMeshException {
    int[] numbers = new int[corners];
    for (int i = 0; i < corners; i++) {
      numbers[i] = sink.points() - corners + i;
    }
    sink.polygon(numbers, in.line());
  }
}
