package ringbook.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A copy of the demo's lessons and exercises that a test may spoil. */
final class DemoCopy {

  private final Path root;

  private DemoCopy(Path root) {
    this.root = root;
  }

  static DemoCopy in(Path root) throws IOException {
    for (String folder : new String[] {"lessons", "exercises"}) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          Path copy = root.resolve(file.toString());
          Files.createDirectories(copy.getParent());
          Files.copy(file, copy);
        }
      }
    }
    return new DemoCopy(root);
  }

  Path courseFile() {
    return root.resolve("lessons/course.yaml");
  }

  /** Replaces text in one of the files; the text must be there. */
  void replace(String file, String old, String fresh) throws IOException {
    String text = Files.readString(root.resolve(file));
    if (!text.contains(old)) {
      throw new IllegalArgumentException(file + " has no '" + old + "'");
    }
    Files.writeString(root.resolve(file), text.replace(old, fresh));
  }

  /** Every file below {@code folder} with its bytes as text, one character a byte. */
  static Map<String, String> content(Path folder) throws IOException {
    Map<String, String> content = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      files
          .filter(Files::isRegularFile)
          .forEach(file -> content.put(folder.relativize(file).toString(), bytes(file)));
    }
    return content;
  }

  private static String bytes(Path file) {
    try {
      return new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
