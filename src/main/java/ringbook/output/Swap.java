package ringbook.output;

import static java.nio.file.StandardCopyOption.ATOMIC_MOVE;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Two folders beside a target: the new one while it is made, and the old one until the new one is
 * in place. All are on one disk, so that moving is one step.
 */
final class Swap {

  private final Path target;

  Swap(Path target) {
    this.target = target;
  }

  /** Where the new course grows. */
  Path making() {
    return beside("making");
  }

  /** Where the old course waits. */
  Path old() {
    return beside("old");
  }

  private Path beside(String stage) {
    return target.resolveSibling("." + target.getFileName() + "." + stage);
  }

  /** Mends what a run left that was cut off: the old course goes back if no new one is there. */
  void clearUp() throws IOException {
    if (Files.exists(old()) && !Files.exists(target)) {
      Files.move(old(), target, ATOMIC_MOVE);
    }
    delete(old());
    delete(making());
  }

  /** Moves the new course to the target; if that fails, the old one goes back. */
  void putInPlace() throws IOException {
    boolean replaces = Files.exists(target);
    if (replaces) {
      Files.move(target, old(), ATOMIC_MOVE);
    }
    try {
      Files.move(making(), target, ATOMIC_MOVE);
    } catch (IOException failed) {
      if (replaces) {
        Files.move(old(), target, ATOMIC_MOVE);
      }
      throw failed;
    }
    dropQuietly(old());
  }

  /** Removes what was made so far; a rest that stays is removed by the next run. */
  void dropMaking() {
    dropQuietly(making());
  }

  private static void dropQuietly(Path folder) {
    try {
      delete(folder);
    } catch (IOException leftForNextTime) {
      // The next run clears it up; the course itself is complete.
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> deepestFirst;
    try (Stream<Path> all = Files.walk(folder)) {
      deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path path : deepestFirst) {
      Files.delete(path);
    }
  }
}
