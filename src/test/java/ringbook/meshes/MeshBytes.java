package ringbook.meshes;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import ringbook.geometry.Mesh;

/** Mesh files written byte by byte, in every format. */
final class MeshBytes {

  private MeshBytes() {}

  /** Every way to write a mesh. */
  enum Form {
    OBJ("a.obj"),
    PLY_TEXT("a.ply"),
    PLY_LEAST_FIRST("a.ply"),
    PLY_MOST_FIRST("a.ply"),
    STL_TEXT("a.stl"),
    STL_BINARY("a.stl");

    final String file;

    Form(String file) {
      this.file = file;
    }
  }

  static byte[] of(Form form, Mesh mesh) {
    return switch (form) {
      case OBJ -> obj(mesh);
      case PLY_TEXT -> plyText(mesh);
      case PLY_LEAST_FIRST -> ply(mesh, ByteOrder.LITTLE_ENDIAN);
      case PLY_MOST_FIRST -> ply(mesh, ByteOrder.BIG_ENDIAN);
      case STL_TEXT -> stlText(mesh);
      case STL_BINARY -> stl(mesh);
    };
  }

  static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static byte[] obj(Mesh mesh) {
    StringBuilder text = new StringBuilder("# by hand\nmtllib none.mtl\n");
    for (int p = 0; p < mesh.points(); p++) {
      text.append("v " + mesh.x(p) + " " + mesh.y(p) + " " + mesh.z(p) + "\n");
    }
    text.append("vt 0 0\nvn 0 0 1\ng cover\n");
    for (int t = 0; t < mesh.triangles(); t++) {
      text.append(
          "f "
              + (mesh.corner(t, 0) + 1)
              + "/1/1 "
              + (mesh.corner(t, 1) - mesh.points())
              + "//1 "
              + (mesh.corner(t, 2) + 1)
              + "\n");
    }
    return bytes(text.toString());
  }

  private static String plyHeader(Mesh mesh, String format, String real) {
    return "ply\nformat "
        + format
        + " 1.0\ncomment by hand\nelement vertex "
        + mesh.points()
        + "\nproperty "
        + real
        + " x\nproperty "
        + real
        + " y\nproperty "
        + real
        + " z\nproperty uchar red\nelement face "
        + mesh.triangles()
        + "\nproperty list uchar int vertex_indices\nend_header\n";
  }

  private static byte[] plyText(Mesh mesh) {
    StringBuilder text = new StringBuilder(plyHeader(mesh, "ascii", "float"));
    for (int p = 0; p < mesh.points(); p++) {
      text.append(mesh.x(p) + " " + mesh.y(p) + " " + mesh.z(p) + " 255\n");
    }
    for (int t = 0; t < mesh.triangles(); t++) {
      text.append(
          "3 " + mesh.corner(t, 0) + " " + mesh.corner(t, 1) + " " + mesh.corner(t, 2) + "\n");
    }
    return bytes(text.toString());
  }

  private static byte[] ply(Mesh mesh, ByteOrder order) {
    boolean least = order == ByteOrder.LITTLE_ENDIAN;
    byte[] header =
        bytes(plyHeader(mesh, least ? "binary_little_endian" : "binary_big_endian", "double"));
    ByteBuffer data =
        ByteBuffer.allocate(header.length + 25 * mesh.points() + 13 * mesh.triangles())
            .order(order);
    data.put(header);
    for (int p = 0; p < mesh.points(); p++) {
      data.putDouble(mesh.x(p)).putDouble(mesh.y(p)).putDouble(mesh.z(p)).put((byte) 255);
    }
    for (int t = 0; t < mesh.triangles(); t++) {
      data.put((byte) 3);
      data.putInt(mesh.corner(t, 0)).putInt(mesh.corner(t, 1)).putInt(mesh.corner(t, 2));
    }
    return data.array();
  }

  private static byte[] stlText(Mesh mesh) {
    StringBuilder text = new StringBuilder("solid by hand\n");
    for (int t = 0; t < mesh.triangles(); t++) {
      text.append(" facet normal 0 0 0\n  outer loop\n");
      for (int k = 0; k < 3; k++) {
        int p = mesh.corner(t, k);
        text.append("   vertex " + mesh.x(p) + " " + mesh.y(p) + " " + mesh.z(p) + "\n");
      }
      text.append("  endloop\n endfacet\n");
    }
    return bytes(text.append("endsolid by hand\n").toString());
  }

  private static byte[] stl(Mesh mesh) {
    ByteBuffer data =
        ByteBuffer.allocate(84 + 50 * mesh.triangles()).order(ByteOrder.LITTLE_ENDIAN);
    // Many programs begin a binary file with the word of the text form.
    data.put(bytes("solid by hand")).position(80);
    data.putInt(mesh.triangles());
    for (int t = 0; t < mesh.triangles(); t++) {
      data.putFloat(0).putFloat(0).putFloat(0);
      for (int k = 0; k < 3; k++) {
        int p = mesh.corner(t, k);
        data.putFloat((float) mesh.x(p)).putFloat((float) mesh.y(p)).putFloat((float) mesh.z(p));
      }
      data.putShort((short) 0);
    }
    return data.array();
  }

  static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      out.writeBytes(part);
    }
    return out.toByteArray();
  }
}
