package ringbook.photos;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import ringbook.problems.Problem;
import ringbook.problems.Problems;

/** Writes photographs for a test and reads them. */
record PhotoFolder(Path folder) {

  /** What came of reading a file. */
  record Outcome(Optional<PhotoFacts> facts, Problems problems) {

    String problem() {
      return problems.sorted().stream()
          .map(Problem::message)
          .reduce((a, b) -> a + "; " + b)
          .orElse("");
    }
  }

  Path write(String name, byte[] bytes) {
    try {
      return Files.write(folder.resolve(name), bytes);
    } catch (IOException cannotBe) {
      throw new UncheckedIOException(cannotBe);
    }
  }

  Outcome read(String name, byte[] bytes) {
    Problems problems = new Problems();
    return new Outcome(PhotoReader.read(write(name, bytes), problems), problems);
  }

  PhotoFacts facts(ExifBytes exif) {
    return read("photo.jpg", exif.jpeg()).facts().orElseThrow();
  }
}
