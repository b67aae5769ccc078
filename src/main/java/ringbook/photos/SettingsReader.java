package ringbook.photos;

import static com.drew.metadata.exif.ExifDirectoryBase.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_DIGITAL_ZOOM_RATIO;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_EXPOSURE_TIME;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_FNUMBER;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_FOCAL_LENGTH;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_FOCAL_PLANE_RESOLUTION_UNIT;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_FOCAL_PLANE_X_RESOLUTION;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_FOCAL_PLANE_Y_RESOLUTION;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_ISO_EQUIVALENT;
import static com.drew.metadata.exif.ExifDirectoryBase.TAG_MAX_APERTURE;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.optics.Sensor;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Numbers;

/**
 * Reads the settings and says what is doubtful about them. Tag numbers and units: Exif 2.32 (from
 * memory; the numbers are checked against exif.csv).
 */
final class SettingsReader {

  /** Values that no camera of this course has, and so slips of a program; from experience. */
  private static final double LEAST_EQUIVALENT_MM = 10;

  private static final double MOST_EQUIVALENT_MM = 300;
  private static final double LEAST_FOCAL_MM = 0.5;
  private static final double MOST_FOCAL_MM = 2000;

  /** What some programs write for a focal length they do not know. */
  private static final double FOCAL_PLACEHOLDER_MM = 1;

  /** Sensors of cameras, with room on both sides; common practice, no source. */
  private static final double LEAST_DIAGONAL_MM = 2;

  private static final double MOST_DIAGONAL_MM = 100;
  private static final double MOST_F_NUMBER = 64;

  /** How far a correct focal plane resolution may be off: EXF-13 of exif.csv, and rounding. */
  private static final double FOCAL_PLANE_SHARE = 0.05;

  private static final int CENTIMETRE = 3;

  private final ExifTags tags;
  private final Frame camera;
  private final List<String> doubts;

  /**
   * @param camera pixels of the camera, to which the focal plane resolution belongs
   * @param doubts grows by what is found
   */
  SettingsReader(ExifTags tags, Frame camera, List<String> doubts) {
    this.tags = tags;
    this.camera = camera;
    this.doubts = doubts;
  }

  Settings read() {
    Optional<Length> stated = focalLength();
    Optional<Length> equivalent = equivalent();
    Optional<Length> focalLength = stated.filter(f -> fits(f, equivalent));
    Optional<FNumber> fNumber = fNumber();
    OptionalDouble exposure = wanted(TAG_EXPOSURE_TIME, "the exposure time");
    OptionalDouble iso = wanted(TAG_ISO_EQUIVALENT, "the ISO setting");
    Optional<Length> across = side(TAG_FOCAL_PLANE_X_RESOLUTION, camera.columns());
    Optional<Length> down = side(TAG_FOCAL_PLANE_Y_RESOLUTION, camera.rows());
    boolean upright = camera.rows() > camera.columns();
    Optional<Length> width = upright ? down : across;
    Optional<Length> height = upright ? across : down;
    compare(focalLength, equivalent, width);
    return new Settings(
        focalLength, equivalent, fNumber, widest(), exposure, iso, width, height, digitalZoom());
  }

  private Optional<Length> focalLength() {
    OptionalDouble stated = wanted(TAG_FOCAL_LENGTH, "the focal length");
    if (stated.isEmpty()) {
      return Optional.empty();
    }
    double mm = stated.getAsDouble();
    if (mm == FOCAL_PLACEHOLDER_MM) {
      doubts.add(
          "The focal length is stated as exactly 1 mm, which some programs write when they do not know it; it is taken as unknown.");
      return Optional.empty();
    }
    return inRange("focal length", mm, LEAST_FOCAL_MM, MOST_FOCAL_MM);
  }

  private Optional<Length> equivalent() {
    OptionalDouble stated =
        wanted(TAG_35MM_FILM_EQUIV_FOCAL_LENGTH, "the 35 mm equivalent focal length");
    return stated.isEmpty()
        ? Optional.empty()
        : inRange(
            "35 mm equivalent", stated.getAsDouble(), LEAST_EQUIVALENT_MM, MOST_EQUIVALENT_MM);
  }

  private Optional<Length> inRange(String name, double mm, double low, double high) {
    if (mm >= low && mm <= high) {
      return Optional.of(Length.ofMillimetres(mm));
    }
    doubts.add(
        "The "
            + name
            + " is stated as "
            + Numbers.significant(mm, 4)
            + " mm, outside "
            + Numbers.significant(low, 4)
            + " mm to "
            + Numbers.significant(high, 4)
            + " mm; it is taken as unknown.");
    return Optional.empty();
  }

  private Optional<FNumber> fNumber() {
    OptionalDouble stated = wanted(TAG_FNUMBER, "the f-number");
    if (stated.isPresent() && stated.getAsDouble() > MOST_F_NUMBER) {
      doubts.add("The f-number is stated beyond f/64; it is taken as unknown.");
      return Optional.empty();
    }
    return stated.isPresent() ? Optional.of(new FNumber(stated.getAsDouble())) : Optional.empty();
  }

  /** The lens wide open, from its APEX value: N = 2^(Av / 2). */
  private Optional<FNumber> widest() {
    OptionalDouble apex = tags.positive(TAG_MAX_APERTURE);
    if (apex.isEmpty() || apex.getAsDouble() > 2 * Num.log2(MOST_F_NUMBER)) {
      return Optional.empty();
    }
    return Optional.of(new FNumber(Num.pow(2, apex.getAsDouble() / 2)));
  }

  private double digitalZoom() {
    OptionalDouble ratio = tags.positive(TAG_DIGITAL_ZOOM_RATIO);
    if (ratio.isPresent() && ratio.getAsDouble() > 1) {
      doubts.add(
          "Digital zoom of "
              + Numbers.significant(ratio.getAsDouble(), 3)
              + " times was used, so the pixels are enlarged ones: take the test photograph again without it.");
    }
    return Math.max(1, ratio.orElse(1));
  }

  /** One side of the sensor, by the pixels to each inch or centimetre of it. */
  private Optional<Length> side(int tag, int pixels) {
    if (!tags.has(tag)) {
      return Optional.empty();
    }
    OptionalDouble resolution = tags.positive(tag);
    int unit = (int) tags.number(TAG_FOCAL_PLANE_RESOLUTION_UNIT).orElse(2);
    if (resolution.isEmpty()) {
      doubts.add(
          "The focal plane resolution is stated, but as 0 or a fraction over 0; it is taken as unknown.");
      return Optional.empty();
    }
    double perUnitMm = unit == CENTIMETRE ? 10 : 25.4;
    double mm = pixels / resolution.getAsDouble() * perUnitMm;
    return mm >= 1 && mm <= 100 ? Optional.of(Length.ofMillimetres(mm)) : Optional.empty();
  }

  /** Whether focal length and equivalent can be of one camera. */
  private boolean fits(Length focalLength, Optional<Length> equivalent) {
    if (equivalent.isEmpty()) {
      return true;
    }
    Length diagonal = Sensor.FULL_FRAME_DIAGONAL.times(focalLength.over(equivalent.get()));
    double mm = diagonal.millimetres();
    if (mm >= LEAST_DIAGONAL_MM && mm <= MOST_DIAGONAL_MM) {
      return true;
    }
    doubts.add(
        "Focal length and 35 mm equivalent together would make a sensor of "
            + Numbers.significant(mm, 3)
            + " mm diagonal, which cannot be right; the focal length is taken as unknown.");
    return false;
  }

  /** Holds the sensor width of the focal plane resolution against that of the equivalent. */
  private void compare(
      Optional<Length> focalLength, Optional<Length> equivalent, Optional<Length> width) {
    if (focalLength.isEmpty() || equivalent.isEmpty() || width.isEmpty()) {
      return;
    }
    double share = camera.longSide() / Num.hypot(camera.columns(), camera.rows());
    Length expected =
        Sensor.FULL_FRAME_DIAGONAL.times(focalLength.get().over(equivalent.get()) * share);
    double allowed = Sensor.equivalentError(equivalent.get()) + FOCAL_PLANE_SHARE;
    if (Math.abs(width.get().over(expected) - 1) > allowed) {
      doubts.add(
          "The focal plane resolution gives a sensor "
              + Numbers.significant(width.get().millimetres(), 3)
              + " mm wide, the 35 mm equivalent one of "
              + Numbers.significant(expected.millimetres(), 3)
              + " mm; the equivalent is used, as the other is often wrong after cropping or resizing.");
    }
  }

  /** A number the kit hangs on; a doubt where there is none. */
  private OptionalDouble wanted(int tag, String name) {
    OptionalDouble number = tags.positive(tag);
    if (!tags.has(tag)) {
      doubts.add("The photograph does not state " + name + ".");
    } else if (tags.number(tag).isEmpty()) {
      doubts.add(
          "The photograph states " + name + " as a fraction over 0 or no number: it is unknown.");
    } else if (number.isEmpty()) {
      doubts.add("The photograph states " + name + " as 0 or less: it is unknown.");
    }
    return number;
  }
}
