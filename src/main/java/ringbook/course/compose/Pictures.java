package ringbook.course.compose;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Optional;

/** Pictures that lessons show; they travel inside the page. */
final class Pictures {

  private Pictures() {}

  /** The picture as a data address; empty if {@code folder} has no such picture. */
  static Optional<String> source(Path folder, String name) {
    String type =
        name.endsWith(".png")
            ? "image/png"
            : name.endsWith(".jpg") || name.endsWith(".jpeg") ? "image/jpeg" : "";
    if (type.isEmpty()) {
      return Optional.empty();
    }
    try {
      Path file = folder.resolve(name).normalize();
      if (!file.startsWith(folder.normalize()) || !Files.isRegularFile(file)) {
        return Optional.empty();
      }
      byte[] bytes = Files.readAllBytes(file);
      return Optional.of("data:" + type + ";base64," + Base64.getEncoder().encodeToString(bytes));
    } catch (InvalidPathException noName) {
      return Optional.empty();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
