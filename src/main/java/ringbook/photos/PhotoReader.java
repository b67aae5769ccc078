package ringbook.photos;

import static com.drew.metadata.exif.ExifDirectoryBase.TAG_EXIF_IMAGE_HEIGHT;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_EXIF_IMAGE_WIDTH;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_ORIENTATION;

import com.drew.imaging.FileType;
import com.drew.imaging.FileTypeDetector;
import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.jpeg.JpegDirectory;
import com.drew.metadata.png.PngDirectory;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.photos.PhotoFacts.Format;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** Reads the settings of one test photograph. */
public final class PhotoReader {

  /** Largest file that is opened; no single photograph of a camera is near it. */
  static final long MOST_BYTES = 200_000_000;

  /** Largest picture that is taken up, so that memory does not run out. */
  static final long MOST_PIXELS = 200_000_000;

  private static final String AS_JPEG =
      "take it as JPEG, or export it as JPEG at full size with its settings kept";

  private final Path file;
  private final Problems problems;

  private PhotoReader(Path file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  /** What the photograph says; empty, with the reason told, where it is of no use. */
  public static Optional<PhotoFacts> read(Path file, Problems problems) {
    return new PhotoReader(file, problems).read();
  }

  private Optional<PhotoFacts> read() {
    try {
      if (!Files.isRegularFile(file)) {
        return refuse("there is no such photograph", "write the path of one picture file");
      }
      long bytes = Files.size(file);
      if (bytes == 0) {
        return refuse("the file is empty", "copy it from the camera again");
      }
      if (bytes > MOST_BYTES) {
        return refuse("the file is larger than 200 MB", "give one photograph as JPEG");
      }
      return facts();
    } catch (IOException unreadable) {
      return refuse("the file cannot be read", "check that it is there and may be opened");
    }
  }

  private Optional<PhotoFacts> facts() throws IOException {
    Optional<Format> format = format();
    if (format.isEmpty()) {
      return refuse("the file is no photograph that can be read", AS_JPEG);
    }
    Optional<Metadata> metadata = metadata();
    if (metadata.isEmpty()) {
      return broken();
    }
    ExifTags tags = new ExifTags(metadata.get());
    Optional<Frame> stated =
        frame(tags.positive(TAG_EXIF_IMAGE_WIDTH), tags.positive(TAG_EXIF_IMAGE_HEIGHT));
    Optional<Frame> own = format.get() == Format.HEIC ? Optional.empty() : own(metadata.get());
    if (own.isEmpty() && format.get() != Format.HEIC) {
      return broken();
    }
    Optional<Frame> camera = stated.or(() -> own);
    if (camera.isEmpty()) {
      return refuse("the photograph does not state how many pixels it has", AS_JPEG);
    }
    if (camera.get().pixels() > MOST_PIXELS || own.orElse(camera.get()).pixels() > MOST_PIXELS) {
      return refuse("the picture has more than 200 million pixels", "give a single photograph");
    }
    return Optional.of(facts(format.get(), own, camera.get(), tags));
  }

  private static PhotoFacts facts(Format format, Optional<Frame> own, Frame camera, ExifTags tags) {
    List<String> doubts = new ArrayList<>();
    if (format == Format.HEIC) {
      doubts.add(
          "This is a HEIC photograph, of which the settings are read but not the pixels: set the camera to JPEG, or export as JPEG at full size with the settings kept.");
    }
    if (tags.isEmpty()) {
      doubts.add(
          "The photograph carries no settings at all; programs for editing and for sending pictures often strip them.");
    } else if (tags.isDamaged()) {
      doubts.add("A part of the settings is damaged and was left out.");
    }
    own.filter(frame -> !frame.hasSidesOf(camera))
        .ifPresent(frame -> doubts.add(resized(frame, camera)));
    // Where nothing is stated, that is said once and not of each setting.
    List<String> ofSettings = new ArrayList<>();
    Settings settings = new SettingsReader(tags, camera, ofSettings).read();
    if (!tags.isEmpty()) {
      doubts.addAll(ofSettings);
    }
    return new PhotoFacts(format, own, camera, orientation(tags), settings, doubts);
  }

  private static String resized(Frame own, Frame camera) {
    return "The picture has "
        + own.columns()
        + " by "
        + own.rows()
        + " pixels, but its settings say "
        + camera.columns()
        + " by "
        + camera.rows()
        + ": it was resized or cropped later, so the pixels of the settings are used.";
  }

  private static int orientation(ExifTags tags) {
    int stated = (int) tags.number(TAG_ORIENTATION).orElse(1);
    return stated >= 1 && stated <= 8 ? stated : 1;
  }

  private Optional<Format> format() throws IOException {
    try (InputStream bytes = new BufferedInputStream(Files.newInputStream(file))) {
      FileType type = FileTypeDetector.detectFileType(bytes);
      return switch (type) {
        case Jpeg -> Optional.of(Format.JPEG);
        case Png -> Optional.of(Format.PNG);
        case Heif -> Optional.of(Format.HEIC);
        default -> Optional.empty();
      };
    }
  }

  /** All that the file states; empty where it is broken. */
  private Optional<Metadata> metadata() {
    try (InputStream bytes = new BufferedInputStream(Files.newInputStream(file))) {
      return Optional.of(ImageMetadataReader.readMetadata(bytes, Files.size(file)));
    } catch (ImageProcessingException | IOException | RuntimeException | OutOfMemoryError broken) {
      // On broken files the library throws what comes, and may reserve any size they claim.
      return Optional.empty();
    }
  }

  private static Optional<Frame> own(Metadata metadata) {
    Directory jpeg = metadata.getFirstDirectoryOfType(JpegDirectory.class);
    if (jpeg != null) {
      return frame(
          number(jpeg, JpegDirectory.TAG_IMAGE_WIDTH),
          number(jpeg, JpegDirectory.TAG_IMAGE_HEIGHT));
    }
    Directory png = metadata.getFirstDirectoryOfType(PngDirectory.class);
    return png == null
        ? Optional.empty()
        : frame(
            number(png, PngDirectory.TAG_IMAGE_WIDTH), number(png, PngDirectory.TAG_IMAGE_HEIGHT));
  }

  private static OptionalDouble number(Directory directory, int tag) {
    Integer number = directory.getInteger(tag);
    return number == null ? OptionalDouble.empty() : OptionalDouble.of(number);
  }

  private static Optional<Frame> frame(OptionalDouble columns, OptionalDouble rows) {
    double width = columns.orElse(0);
    double height = rows.orElse(0);
    boolean counts = width >= 1 && height >= 1 && width < 1e9 && height < 1e9;
    return counts ? Optional.of(new Frame((int) width, (int) height)) : Optional.empty();
  }

  private Optional<PhotoFacts> broken() {
    return refuse("the file is broken", "copy it from the camera again");
  }

  private Optional<PhotoFacts> refuse(String message, String help) {
    problems.add(Position.ofFile(file.toString()), message, help);
    return Optional.empty();
  }
}
