package ringbook.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import ringbook.geometry.Mesh;
import ringbook.geometry.Patches;
import ringbook.geometry.Vec3;

/** The native library Embree (Apache 2.0) on the same rays, where it and a compiler are there. */
final class EmbreeReference {

  private static final Path SOURCE = Path.of("src/test/native/embree_reference.cpp");

  private final Path folder;
  private final Path program;

  private EmbreeReference(Path folder, Path program) {
    this.folder = folder;
    this.program = program;
  }

  /** Seconds of processor time, and how many rays are blocked, all and facing ones. */
  record Answer(double build, double all, double facing, long blocked, long hidden) {}

  /** Builds the reference program; empty, having said why, where that cannot be done. */
  static Optional<EmbreeReference> built() throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("ringbook-rays");
    Path program = folder.resolve("embree_reference");
    ProcessBuilder compiler =
        new ProcessBuilder(
            "g++",
            "-O3",
            "-march=native",
            "-o",
            program.toString(),
            SOURCE.toString(),
            "-lembree3");
    try {
      Process run = compiler.redirectErrorStream(true).start();
      String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (run.waitFor(2, TimeUnit.MINUTES) && run.exitValue() == 0) {
        return Optional.of(new EmbreeReference(folder, program));
      }
      System.out.println(
          "No reference: the program does not build. " + said.lines().findFirst().orElse(""));
    } catch (IOException missing) {
      System.out.println("No reference: no C++ compiler is installed.");
    }
    return Optional.empty();
  }

  /** Hands mesh, patches and stations over, once for all runs. */
  void give(RayTask task) throws IOException {
    Mesh mesh = task.mesh;
    Patches patches = task.patches;
    int doubles = 3 * mesh.points() + 6 * patches.count() + 3 * task.stations.size();
    ByteBuffer out =
        ByteBuffer.allocate(16 + 12 * mesh.triangles() + 8 * doubles)
            .order(ByteOrder.LITTLE_ENDIAN);
    out.putInt(mesh.points()).putInt(mesh.triangles());
    out.putInt(patches.count()).putInt(task.stations.size());
    for (int p = 0; p < mesh.points(); p++) {
      put(out, mesh.point(p));
    }
    for (int t = 0; t < mesh.triangles(); t++) {
      out.putInt(mesh.corner(t, 0)).putInt(mesh.corner(t, 1)).putInt(mesh.corner(t, 2));
    }
    for (int i = 0; i < patches.count(); i++) {
      put(out, patches.point(i));
      put(out, patches.normal(i));
    }
    task.stations.forEach(s -> put(out, s));
    Files.write(data(), out.array());
  }

  private static void put(ByteBuffer out, Vec3 p) {
    out.putDouble(p.x()).putDouble(p.y()).putDouble(p.z());
  }

  private Path data() {
    return folder.resolve("rays.bin");
  }

  /**
   * Lets it answer all rays.
   *
   * @param robust so that no ray slips between two triangles at their common edge, as in {@link
   *     ringbook.geometry.RayTree}; else the faster way, which does not promise that
   */
  Answer ask(boolean robust) throws IOException, InterruptedException {
    String mode = robust ? "robust" : "fast";
    Process run = new ProcessBuilder(program.toString(), data().toString(), mode).start();
    String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (run.waitFor() != 0) {
      throw new IOException("the reference failed: " + said);
    }
    String[] words = said.strip().split(" ", -1);
    return new Answer(
        Double.parseDouble(words[0]),
        Double.parseDouble(words[1]),
        Double.parseDouble(words[2]),
        Long.parseLong(words[3]),
        Long.parseLong(words[4]));
  }
}
