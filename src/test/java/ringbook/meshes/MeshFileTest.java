package ringbook.meshes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ringbook.geometry.Ball;
import ringbook.geometry.Mesh;
import ringbook.geometry.Torus;
import ringbook.geometry.Vec3;
import ringbook.meshes.MeshBytes.Form;
import ringbook.problems.Problem;
import ringbook.problems.Problems;
import ringbook.units.Length;

/** Mesh files of every format, good and bad. */
final class MeshFileTest {

  private static final Mesh TORUS =
      new Torus(new Length(0.2), new Length(0.05)).mesh(new Length(0.01));

  /** What reading gave. */
  private record Got(Optional<Mesh> mesh, List<String> faults, List<String> notes) {}

  private static Got read(String name, InputStream in, MeshUnit unit) {
    Problems problems = new Problems();
    try {
      Optional<Mesh> mesh = MeshFile.read(name, in, unit, problems);
      return new Got(mesh, texts(problems.sorted()), texts(problems.notes()));
    } catch (IOException broken) {
      throw new AssertionError(broken);
    }
  }

  private static List<String> texts(List<Problem> problems) {
    return problems.stream().map(p -> p.toString().replace(": error: ", ": ")).toList();
  }

  private static Got read(String name, byte[] bytes) {
    return read(name, new ByteArrayInputStream(bytes), MeshUnit.METRE);
  }

  private static Got read(String name, String text) {
    return read(name, MeshBytes.bytes(text));
  }

  private static String fault(String name, byte[] bytes) {
    Got got = read(name, bytes);
    assertThat(got.mesh()).isEmpty();
    assertThat(got.faults()).hasSize(1);
    return got.faults().get(0);
  }

  @ParameterizedTest
  @EnumSource
  void what_is_written_is_read(Form form) {
    Got got = read(form.file, MeshBytes.of(form, TORUS));
    assertThat(got.faults()).isEmpty();
    assertThat(got.notes()).isEmpty();
    Mesh mesh = got.mesh().orElseThrow();
    assertThat(mesh.triangles()).isEqualTo(TORUS.triangles());
    assertThat(mesh.isClosed()).isTrue();
    assertThat(mesh.area()).isCloseTo(TORUS.area(), within(1e-6 * TORUS.area()));
    assertThat(mesh.volume()).isCloseTo(TORUS.volume(), within(1e-6 * TORUS.volume()));
  }

  @ParameterizedTest
  @EnumSource
  void a_file_cut_off_anywhere_is_told_and_never_breaks(Form form) {
    byte[] whole = MeshBytes.of(form, TORUS);
    for (int i = 0; i < 60; i++) {
      byte[] part = Arrays.copyOf(whole, (int) ((long) whole.length * i / 60));
      Got got = read(form.file, part);
      // A text of lines that ends between two of them can still be a mesh, only a smaller one.
      if (form != Form.OBJ) {
        assertThat(got.mesh()).as("%s of %s", part.length, whole.length).isEmpty();
        assertThat(got.faults()).hasSize(1);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void spoiled_bytes_give_a_mesh_or_a_message(Form form) {
    java.util.Random random = new java.util.Random(form.name().length());
    byte[] whole = MeshBytes.of(form, TORUS);
    for (int i = 0; i < 40; i++) {
      byte[] spoiled = whole.clone();
      for (int k = 0; k < 3; k++) {
        spoiled[random.nextInt(spoiled.length)] = (byte) random.nextInt(256);
      }
      Got got = read(form.file, spoiled);
      assertThat(got.mesh().isPresent()).isEqualTo(got.faults().isEmpty());
    }
  }

  @Test
  void broken_files_say_what_and_where() {
    assertThat(fault("a.ply", new byte[0])).contains("a.ply: the mesh file is empty");
    assertThat(fault("a.png", MeshBytes.bytes("\u0089PNG\r\n")))
        .contains("no mesh file that can be read here");
    assertThat(fault("a.obj", MeshBytes.bytes("v 0 0 0\nv 1 0 zero\n")))
        .contains("a.obj:2: 'zero' is not a number");
    assertThat(fault("a.obj", MeshBytes.bytes("v 0 0 0\nv 1 0 NaN\n")))
        .contains("a.obj:2: a coordinate is not a number (NaN)");
    assertThat(fault("a.obj", MeshBytes.bytes("v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 4\n")))
        .contains("a.obj:4: a face names point 3")
        .contains("the file has 3 points");
    assertThat(fault("a.obj", MeshBytes.bytes("v 0 0 0\nv 1 0 0\nv 0 1 0\n")))
        .contains("points but no faces");
    assertThat(fault("a.obj", MeshBytes.bytes("v 0 0 0\nv 1 0 0\nf 1 2\n")))
        .contains("a.obj:3: a face has fewer than three corners");
    assertThat(fault("a.obj", MeshBytes.bytes("v 0 0 0\nv 0 0 0\nv 0 0 0\nf 1 2 3\n")))
        .contains("without area");
    assertThat(fault("a.stl", MeshBytes.bytes("solid x\nfacet normal 0 0 1\nouter lop\n")))
        .contains("ends without 'endsolid'");
    byte[] nan = MeshBytes.of(Form.STL_BINARY, TORUS);
    nan[84 + 12] = 0;
    nan[84 + 13] = 0;
    nan[84 + 14] = (byte) 0xc0;
    nan[84 + 15] = 0x7f;
    assertThat(fault("a.stl", nan)).contains("not a number (NaN) at byte 96");
  }

  @Test
  void a_polygon_becomes_a_fan_and_groups_become_parts() {
    Got got =
        read(
            "a.obj",
            """
            v 0 0 0
            v 1 0 0
            v 1 1 0
            v 0 1 0
            v 0 0 1
            g floor
            f 1 2 3 4
            g wall
            f -4 -5 -1
            """);
    assertThat(got.faults()).isEmpty();
    Mesh mesh = got.mesh().orElseThrow();
    assertThat(mesh.triangles()).isEqualTo(3);
    assertThat(mesh.parts()).containsExactly("floor", "wall");
    assertThat(mesh.area()).isCloseTo(1.5, within(1e-12));
    assertThat(got.notes()).anySatisfy(note -> assertThat(note).contains("open along"));
  }

  @Test
  void units_scale_and_the_inside_out_is_turned() {
    byte[] bytes = MeshBytes.of(Form.PLY_LEAST_FIRST, TORUS.reversed());
    Got got = read("a.ply", new ByteArrayInputStream(bytes), MeshUnit.MILLIMETRE);
    assertThat(got.notes()).singleElement().asString().contains("inside out");
    assertThat(got.mesh().orElseThrow().volume()).isCloseTo(TORUS.volume() * 1e-9, within(1e-18));
  }

  @Test
  void odd_meshes_are_told() {
    Mesh ball = new Ball(new Length(0.1)).mesh(new Length(0.01));
    Mesh crossing = Mesh.joined(List.of(ball, ball.moved(new Vec3(0.05, 0.003, 0.001))));
    assertThat(read("a.ply", MeshBytes.of(Form.PLY_LEAST_FIRST, crossing)).notes())
        .singleElement()
        .asString()
        .contains("passes through itself at");
    byte[] twice = MeshBytes.of(Form.PLY_LEAST_FIRST, Mesh.joined(List.of(ball, ball)));
    assertThat(read("a.ply", twice).notes())
        .anySatisfy(note -> assertThat(note).contains("more than two triangles meet"));
    String flipped = "v 0 0 0\nv 1 0 0\nv 0 1 0\nv 1 1 0\nf 1 2 3\nf 2 3 4\n";
    assertThat(fault("a.obj", MeshBytes.bytes(flipped))).contains("face opposite ways");
  }

  @Test
  void ten_million_triangles_are_refused_before_memory_is_taken() {
    Runtime.getRuntime().gc();
    long start = System.nanoTime();
    byte[] head = new byte[84];
    head[80] = (byte) 0x80;
    head[81] = (byte) 0x96;
    head[82] = (byte) 0x98; // 10,000,000 with the least byte first
    assertThat(fault("a.stl", head))
        .contains("announces 10 000 000 triangles; Ringbook reads at most 1 million triangles");
    assertThat(
            fault(
                "a.ply",
                MeshBytes.bytes(
                    "ply\nformat ascii 1.0\nelement vertex 8\nelement face 10000000\n")))
        .contains("a.ply:4: the file announces 10 000 000 triangles");
    Got obj =
        read("a.obj", new Endless("v 0 0 0\nv 1 0 0\nv 0 1 0\n", "f 1 2 3\n"), MeshUnit.METRE);
    assertThat(obj.faults()).singleElement().asString().contains("more than 1 million triangles");
    Got stl =
        read(
            "a.stl",
            new Endless(
                "solid x\n",
                """
                facet normal 0 0 1
                outer loop
                vertex 0 0 0
                vertex 1 0 0
                vertex 0 1 0
                endloop
                endfacet
                """),
            MeshUnit.METRE);
    assertThat(stl.faults()).singleElement().asString().contains("more than 1 million triangles");
    assertThat((System.nanoTime() - start) / 1e9).isLessThan(30);
  }

  @Test
  void a_head_that_announces_too_many_points_is_told_the_limit() {
    String head = "ply\nformat ascii 1.0\nelement vertex ";
    assertThat(fault("a.ply", MeshBytes.bytes(head + "400000000\n")))
        .contains("a.ply:3: the file announces 400 000 000 points")
        .contains("reads at most 3 million points")
        .contains("if it should not be that large, it is damaged");
    assertThat(fault("a.ply", MeshBytes.bytes(head + "3000000\n"))).doesNotContain("at most");
  }

  @Test
  void a_line_without_end_is_refused() {
    Got got = read("a.obj", new Endless("v ", "0"), MeshUnit.METRE);
    assertThat(got.faults()).singleElement().asString().contains("longer than 10000 characters");
  }

  @Test
  void a_file_that_is_not_there_is_told(@TempDir Path folder) throws IOException {
    Problems problems = new Problems();
    assertThat(MeshFile.read(folder.resolve("no.ply"), MeshUnit.METRE, problems)).isEmpty();
    assertThat(texts(problems.sorted()).get(0)).contains("there is no such mesh file");
    Path file = folder.resolve("a.ply");
    Files.write(file, MeshBytes.of(Form.PLY_MOST_FIRST, TORUS));
    assertThat(MeshFile.read(file, MeshUnit.METRE, problems)).isPresent();
  }

  /** A beginning and then the same bytes for ever. */
  private static final class Endless extends InputStream {
    private final byte[] head;
    private final byte[] rest;
    private long at;

    Endless(String head, String rest) {
      this.head = MeshBytes.bytes(head);
      this.rest = MeshBytes.bytes(rest);
    }

    @Override
    public int read(byte[] into, int from, int count) {
      for (int i = 0; i < count; i++) {
        into[from + i] = (byte) read();
      }
      return count;
    }

    @Override
    public int read() {
      long i = at++;
      return i < head.length ? head[(int) i] : rest[(int) ((i - head.length) % rest.length)];
    }
  }
}
