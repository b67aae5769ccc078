package ringbook.photos;

import java.util.List;
import java.util.Optional;

/**
 * What one test photograph says about the camera that took it.
 *
 * @param format what the content of the file is, whatever its name says
 * @param file pixels of the file; empty where they cannot be read
 * @param camera pixels the camera took: those of the settings if stated, else those of the file
 * @param orientation Exif orientation from 1 to 8; 1 where none is stated
 * @param settings focal length, f-number and so on
 * @param doubts what is unknown or doubtful, a sentence each
 */
public record PhotoFacts(
    Format format,
    Optional<Frame> file,
    Frame camera,
    int orientation,
    Settings settings,
    List<String> doubts) {

  public PhotoFacts {
    doubts = List.copyOf(doubts);
  }

  /** Kinds of picture files that can be read. */
  public enum Format {
    JPEG,
    PNG,
    /** High efficiency image file: settings only. */
    HEIC
  }

  /** The camera's frame as it is seen upright. */
  public Frame shown() {
    return camera.shown(orientation);
  }
}
