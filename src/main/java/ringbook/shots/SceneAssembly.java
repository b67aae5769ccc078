package ringbook.shots;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.geometry.Shape;
import ringbook.optics.Kit;
import ringbook.optics.Lens;
import ringbook.optics.Sensor;
import ringbook.shots.Place.Obstacle;
import ringbook.units.Angle;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Lengths;
import ringbook.units.Num;
import ringbook.units.Words;

/**
 * Makes the records of a scene from what was stated and checked.
 *
 * @param numbers by key, in SI
 * @param words by key
 * @param obstacles walls and furniture
 * @param basis how the sensor size is known where it is stated
 * @param shape the form of the object, where it is stated
 */
record SceneAssembly(
    Map<String, Double> numbers,
    Map<String, String> words,
    List<Obstacle> obstacles,
    Kit.Basis basis,
    Optional<Shape> shape) {

  /**
   * Sensor diagonal assumed where only the 35 mm equivalent is known. Common practice for small
   * phone sensors, no source.
   */
  static final Length ASSUMED_DIAGONAL = Length.ofMillimetres(8);

  Scene scene() {
    return new Scene(kit(), subject(), place(), aim());
  }

  private boolean has(String key) {
    return numbers.containsKey(key);
  }

  double narrowest() {
    return numbers.getOrDefault("kit.narrowest", numbers.get("kit.widest"));
  }

  private Kit kit() {
    int across = (int) Num.round(numbers.get("kit.pixelsAcross"));
    int down = (int) Num.round(numbers.get("kit.pixelsDown"));
    Kit.Basis known = basis;
    Length width;
    Length height;
    if (has("kit.sensorWidth") && has("kit.sensorHeight")) {
      width = length("kit.sensorWidth");
      height = length("kit.sensorHeight");
    } else {
      known = has("kit.focalLength") ? Kit.Basis.FROM_EQUIVALENT : Kit.Basis.ASSUMED;
      double diagonalPixels = Num.hypot(across, down);
      Length diagonal =
          Sensor.FULL_FRAME_DIAGONAL.times(focalLength() / numbers.get("kit.equivalent"));
      width = diagonal.times(across / diagonalPixels);
      height = diagonal.times(down / diagonalPixels);
    }
    Lens lens =
        new Lens(
            new Length(focalLength()),
            new FNumber(numbers.get("kit.widest")),
            new FNumber(narrowest()),
            length("kit.closestFocus"));
    return new Kit(
        words.get("kit.name"),
        new Sensor(width, height, across, down),
        lens,
        known,
        SceneDetails.pick("kit", numbers));
  }

  double focalLength() {
    if (has("kit.focalLength")) {
      return numbers.get("kit.focalLength");
    }
    Length diagonal =
        has("kit.sensorWidth") && has("kit.sensorHeight")
            ? new Length(Num.hypot(numbers.get("kit.sensorWidth"), numbers.get("kit.sensorHeight")))
            : ASSUMED_DIAGONAL;
    return numbers.get("kit.equivalent") * diagonal.over(Sensor.FULL_FRAME_DIAGONAL);
  }

  private Subject subject() {
    Length width = length("subject.width");
    return new Subject(
        words.get("subject.name"),
        Subject.Outline.valueOf(Words.upper(words.get("subject.outline"))),
        length("subject.height"),
        width,
        has("subject.depth") ? length("subject.depth") : width,
        Subject.Surface.valueOf(Words.upper(words.get("subject.surface"))),
        SceneDetails.pick("subject", numbers),
        shape);
  }

  private Place place() {
    return new Place(
        length("place.tableHeight"),
        length("place.lowestLens"),
        length("place.highestLens"),
        obstacles,
        SceneDetails.pick("place", numbers));
  }

  private Aim aim() {
    return new Aim(
        length("aim.detail"),
        numbers.get("aim.pixelsPerDetail"),
        numbers.get("aim.fill"),
        Aim.Hold.valueOf(Words.upper(words.get("aim.hold"))),
        numbers.get("aim.sharpShare"),
        numbers.get("aim.blurLimit"),
        numbers.get("aim.diffractionLimit"),
        angle("aim.elevation"),
        angle("aim.step"),
        angle("aim.stepLimit"),
        angle("aim.incidenceLimit"),
        angle("aim.decay"),
        Lengths.valueOf(Words.upper(words.getOrDefault("aim.units", "metric"))),
        SceneDetails.pick("aim", numbers));
  }

  private Length length(String key) {
    return new Length(numbers.get(key));
  }

  private Angle angle(String key) {
    return new Angle(numbers.get(key));
  }
}
