package ringbook.meshes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.problems.Problems;

/** Meshes of ten million triangles, read in a process of its own with a small heap. */
final class BigMeshTest {

  private static final int MANY = 10_000_000;

  @TempDir private Path folder;

  /** Reads the files named and prints what was told of each. */
  public static void main(String[] names) {
    for (String name : names) {
      Problems problems = new Problems();
      boolean read = MeshFile.read(Path.of(name), MeshUnit.METRE, problems).isPresent();
      System.out.println(Path.of(name).getFileName() + " " + read + " " + problems.sorted());
    }
  }

  @Test
  void ten_million_triangles_are_refused_in_256_megabytes() throws Exception {
    List<String> files = List.of(emptyStl(), shortStl(), asciiPly(), obj());
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-XX:+ExitOnOutOfMemoryError"));
    command.addAll(
        List.of("-cp", place(MeshFile.class) + File.pathSeparator + place(BigMeshTest.class)));
    command.add(BigMeshTest.class.getName());
    command.addAll(files);
    Path said = folder.resolve("said.txt");
    Process run =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    boolean ended = run.waitFor(30, TimeUnit.SECONDS); // takes about two on an idle machine
    run.destroyForcibly();
    String text = Files.readString(said).replace("\n  mend", " mend");
    assertThat(ended).as(text).isTrue();
    assertThat(run.exitValue()).as(text).isZero();
    List<String> lines = text.lines().toList();
    assertThat(lines).hasSize(files.size()).allMatch(line -> line.contains(" false "));
    assertThat(lines.get(0)).contains("400");
    assertThat(lines.subList(1, 4)).allMatch(line -> line.contains("1 million triangles"));
  }

  private static Path place(Class<?> type) throws URISyntaxException {
    return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
  }

  /** All the bytes a binary STL of ten million triangles has, without filling the disk. */
  private String emptyStl() throws IOException {
    return stl("whole.stl", 84 + 50L * MANY);
  }

  /** The same head, cut off within what is read at all. */
  private String shortStl() throws IOException {
    return stl("short.stl", 300_000_000);
  }

  private String stl(String name, long length) throws IOException {
    Path file = folder.resolve(name);
    try (RandomAccessFile out = new RandomAccessFile(file.toFile(), "rw")) {
      out.setLength(length);
      out.seek(80);
      out.writeInt(Integer.reverseBytes(MANY));
    }
    return file.toString();
  }

  private String asciiPly() throws IOException {
    return repeated(
        "a.ply",
        "ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\nproperty float y\n"
            + "property float z\nelement face 10000000\nproperty list uchar int"
            + " vertex_indices\nend_header\n0 0 0\n1 0 0\n0 1 0\n",
        "3 0 1 2\n");
  }

  private String obj() throws IOException {
    return repeated("a.obj", "v 0 0 0\nv 1 0 0\nv 0 1 0\n", "f 1 2 3\n");
  }

  private String repeated(String name, String head, String line) throws IOException {
    Path file = folder.resolve(name);
    byte[] lines = line.repeat(10_000).getBytes(StandardCharsets.US_ASCII);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      out.write(head.getBytes(StandardCharsets.US_ASCII));
      for (int i = 0; i < MANY / 10_000; i++) {
        out.write(lines);
      }
    }
    return file.toString();
  }
}
