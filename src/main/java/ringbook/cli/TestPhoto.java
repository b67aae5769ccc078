package ringbook.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import ringbook.photos.PhotoFacts;
import ringbook.photos.PhotoKit;
import ringbook.photos.PhotoReader;
import ringbook.photos.PhotoReport;
import ringbook.photos.SurfaceFacts;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.Scene;

/** Takes the kit of a test photograph in place of that of the course. */
final class TestPhoto {

  private TestPhoto() {}

  /**
   * {@code scene} with the kit of {@code photo}, or as it is where {@code photo} is null; empty,
   * with problems told, if the photograph gives none. What it told is printed to {@code err}.
   */
  static Optional<Scene> inPlace(Path photo, Scene scene, Problems problems, PrintWriter err) {
    if (photo == null) {
      return Optional.of(scene);
    }
    Position file = Position.ofFile(photo.toString());
    Optional<PhotoFacts> facts = PhotoReader.read(photo, problems);
    if (facts.isEmpty()) {
      return Optional.empty();
    }
    Optional<PhotoKit> kit = PhotoKit.of(facts.get(), file, problems);
    if (kit.isEmpty()) {
      facts.get().doubts().forEach(doubt -> err.println(photo + ": " + doubt));
      return Optional.empty();
    }
    Optional<Scene> changed = kit.get().in(scene, file, problems);
    if (changed.isPresent()) {
      Optional<SurfaceFacts> surface =
          facts.get().file().isPresent() ? SurfaceFacts.of(photo) : Optional.empty();
      err.print(PhotoReport.of(photo.toString(), facts.get(), kit.get(), surface));
      err.flush();
    }
    return changed;
  }
}
