package ringbook.meshes;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import ringbook.geometry.Mesh;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** Reads a mesh file of any of the formats, known by its content and, for OBJ, by its name. */
public final class MeshFile {

  private static final int LOOK = 512;

  private MeshFile() {}

  /** The mesh in a file; empty, with a problem told, where there is none to be used. */
  public static Optional<Mesh> read(Path file, MeshUnit unit, Problems problems) {
    String name = file.toString();
    try {
      if (!Files.isRegularFile(file)) {
        problems.add(
            Position.ofFile(name),
            "there is no such mesh file",
            "its name is looked for beside the course file");
        return Optional.empty();
      }
      if (Files.size(file) > MeshLimits.MOST_BYTES) {
        throw ByteSource.tooLong();
      }
      try (InputStream in = Files.newInputStream(file)) {
        return read(name, in, unit, problems);
      }
    } catch (IOException unreadable) {
      problems.add(Position.ofFile(name), "the mesh file cannot be read", "is it open elsewhere?");
    } catch (BrokenMeshException broken) {
      problems.add(Position.ofFile(name), broken.getMessage(), broken.help());
    }
    return Optional.empty();
  }

  /**
   * The mesh in a stream.
   *
   * @param name for messages; its ending tells an OBJ file
   * @throws IOException if the stream breaks
   */
  public static Optional<Mesh> read(String name, InputStream in, MeshUnit unit, Problems problems)
      throws IOException {
    try {
      MeshSink sink = new MeshSink(unit);
      read(name, new ByteSource(in), sink);
      return MeshCheck.usable(name, sink.mesh(), problems);
    } catch (BrokenMeshException broken) {
      problems.add(new Position(name, broken.line(), 0), broken.getMessage(), broken.help());
      return Optional.empty();
    }
  }

  private static void read(String name, ByteSource in, MeshSink sink)
      throws IOException, BrokenMeshException {
    byte[] first = in.peek(LOOK);
    String start = new String(first, StandardCharsets.ISO_8859_1);
    boolean obj = name.length() > 4 && name.substring(name.length() - 4).equalsIgnoreCase(".obj");
    boolean stl = name.length() > 4 && name.substring(name.length() - 4).equalsIgnoreCase(".stl");
    if (first.length == 0) {
      throw new BrokenMeshException(0, "the mesh file is empty", "export the mesh again");
    } else if (start.startsWith("ply\n") || start.startsWith("ply\r")) {
      new PlyReader(in, sink).read();
    } else if (StlReader.isText(first)) {
      new StlReader(in, sink).readText();
    } else if (obj) {
      new ObjReader(in, sink).read();
    } else if (stl) {
      new StlReader(in, sink).readBinary();
    } else {
      throw new BrokenMeshException(
          0,
          "this is no mesh file that can be read here",
          "export the mesh as PLY, STL or OBJ, with the usual ending of the name");
    }
  }
}
