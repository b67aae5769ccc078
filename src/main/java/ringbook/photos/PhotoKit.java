package ringbook.photos;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.optics.Sensor;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneText;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Numbers;

/**
 * The kit that took a test photograph, as the lines a trainer would write for it in the course
 * file. The kit is built from these very lines, so that pasting them gives the same one.
 *
 * @param lines the fields in the order of the course file
 * @param equivalentError how far, as a share, the 35 mm equivalent may be off by its rounding;
 *     empty where the kit does not hang on it
 */
public record PhotoKit(List<Line> lines, OptionalDouble equivalentError) {

  /** What the course file calls the kit until the trainer gives it a name. */
  static final String NAME = "camera of the test photograph";

  public PhotoKit {
    lines = List.copyOf(lines);
  }

  /**
   * One field of the kit.
   *
   * @param key its key, such as {@code kit.widest}
   * @param value as a person writes it
   * @param comment what to know or to mend; may be empty
   */
  public record Line(String key, String value, String comment) {}

  /**
   * The kit of a photograph; empty, with the reason told, where it does not say how wide the camera
   * sees.
   *
   * @param file where problems are
   */
  public static Optional<PhotoKit> of(PhotoFacts facts, Position file, Problems problems) {
    Settings settings = facts.settings();
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("kit.name", NAME, "write what your group calls it"));
    Optional<Length> equivalent = settings.equivalent();
    boolean plane =
        equivalent.isEmpty()
            && settings.focalLength().isPresent()
            && settings.sensorWidth().isPresent()
            && settings.sensorHeight().isPresent();
    if (equivalent.isEmpty() && !plane) {
      problems.add(
          file,
          "the photograph does not state how wide the camera sees",
          "write 'equivalent:' or 'sensor width:', 'sensor height:' and 'focal length:' in the course file, from the camera's manual");
      return Optional.empty();
    }
    if (plane) {
      addSensor(settings, lines);
    }
    lines.add(pixels("kit.pixelsAcross", facts.camera().longSide()));
    lines.add(pixels("kit.pixelsDown", facts.camera().shortSide()));
    settings.focalLength().ifPresent(f -> lines.add(focalLength(f)));
    equivalent.ifPresent(e -> lines.add(equivalent(e, settings.focalLength().isPresent())));
    addFNumbers(settings, lines);
    lines.add(ClosestFocus.assumed(settings.focalLength()));
    OptionalDouble error =
        equivalent.isPresent()
            ? OptionalDouble.of(Sensor.equivalentError(equivalent.get()))
            : OptionalDouble.empty();
    return Optional.of(new PhotoKit(lines, error));
  }

  /** {@code scene} with this kit in place of its own; empty, with the reasons told, if it fails. */
  public Optional<Scene> in(Scene scene, Position file, Problems problems) {
    SceneDraft draft = SceneDraft.withoutKit(scene);
    int before = problems.size();
    for (Line line : lines) {
      SceneField field = SceneField.byKey(line.key()).orElseThrow();
      SceneText.set(draft, field, line.value(), false)
          .ifPresent(fault -> problems.add(file, fault.message(), fault.help()));
    }
    for (SceneDraft.Fault fault : draft.faults()) {
      problems.add(
          file,
          "the photograph gives no kit: " + fault.message(),
          "write the kit in the course file by hand, from the camera's manual");
    }
    return problems.size() > before ? Optional.empty() : Optional.of(draft.build());
  }

  /** The block {@code kit:} of a course file, comments and all, with a line break at its end. */
  public String block() {
    StringBuilder block = new StringBuilder("kit:\n");
    for (Line line : lines) {
      String label = SceneField.byKey(line.key()).orElseThrow().label();
      block.append("  ").append(label).append(": ").append(line.value());
      if (!line.comment().isEmpty()) {
        block.append("  # ").append(line.comment());
      }
      block.append('\n');
    }
    return block.toString();
  }

  private static void addSensor(Settings settings, List<Line> lines) {
    String comment = "from the focal plane resolution, which may be some percent off";
    lines.add(
        new Line("kit.sensorWidth", millimetres(settings.sensorWidth().orElseThrow()), comment));
    lines.add(new Line("kit.sensorHeight", millimetres(settings.sensorHeight().orElseThrow()), ""));
  }

  private static Line pixels(String key, int count) {
    return new Line(key, Integer.toString(count) + " px", "");
  }

  private static Line focalLength(Length focalLength) {
    return new Line("kit.focalLength", millimetres(focalLength), "as set for this photograph");
  }

  private static Line equivalent(Length equivalent, boolean withFocalLength) {
    String percent = Numbers.fixed(Sensor.equivalentError(equivalent) * 100, 1);
    String comment =
        withFocalLength
            ? "in whole millimetres, so the sensor worked out from it may be "
                + percent
                + " % off either way"
            : "in whole millimetres, so frames may be "
                + percent
                + " % off; without the focal length a small phone sensor is assumed";
    return new Line("kit.equivalent", millimetres(equivalent), comment);
  }

  private static void addFNumbers(Settings settings, List<Line> lines) {
    Optional<FNumber> set = settings.fNumber();
    if (set.isEmpty()) {
      // Common practice for phones and for lenses of fixed focal length, no source.
      lines.add(new Line("kit.widest", "f/2", "assumed: write the smallest f-number of your lens"));
      return;
    }
    Optional<FNumber> open = settings.widest().filter(n -> isClearlyWider(n, set.get()));
    if (open.isEmpty()) {
      lines.add(
          new Line(
              "kit.widest",
              stop(set.get(), 4),
              "as set for this photograph; if it can be changed, write the smallest and add 'narrowest:'"));
      return;
    }
    lines.add(
        new Line("kit.widest", stop(open.get(), 2), "about; write the smallest of your lens"));
    lines.add(
        new Line(
            "kit.narrowest",
            stop(set.get(), 4),
            "as set for this photograph; write the largest of your lens"));
  }

  /** By more than half a stop: the widest aperture is often stated coarsely. */
  private static boolean isClearlyWider(FNumber open, FNumber set) {
    double ratio = set.value() / open.value();
    return ratio * ratio > Math.sqrt(2);
  }

  private static String stop(FNumber number, int digits) {
    return "f/" + Numbers.significant(number.value(), digits);
  }

  private static String millimetres(Length length) {
    return Numbers.significant(length.millimetres(), 5) + " mm";
  }
}
