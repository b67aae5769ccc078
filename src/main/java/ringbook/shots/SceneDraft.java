package ringbook.shots;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import ringbook.geometry.Shape;
import ringbook.geometry.Vec3;
import ringbook.optics.Kit;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.units.InOrder;
import ringbook.units.Lengths;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/**
 * A scene as it is being stated, field by field, and the checks that make it one. Every fault is
 * told at once.
 *
 * <p>A kit may be stated by sensor size and focal length, by focal length and 35 mm equivalent, or
 * by the equivalent alone; {@link Kit.Basis} then says how much to trust it.
 */
public final class SceneDraft {

  /**
   * One thing wrong with the draft.
   *
   * @param key the field it is about
   * @param message what is wrong
   * @param help how to mend it; may be empty
   */
  public record Fault(String key, String message, String help) {}

  private final Map<String, Double> numbers = new LinkedHashMap<>();
  private final Map<String, String> words = new LinkedHashMap<>();
  private final Set<String> unread = new LinkedHashSet<>();
  private List<Obstacle> obstacles = List.of();
  private Kit.Basis basis = Kit.Basis.GIVEN;
  private boolean depthChanged;
  private boolean focalLengthChanged;
  private Optional<Shape> shape = Optional.empty();

  /** Holds sizes against the form stated here; null where none is, or only an earlier scene's. */
  private Function<Vec3, Optional<Fault>> sizeCheck;

  /** An empty draft. */
  public SceneDraft() {}

  /** A draft that states what {@code scene} holds. */
  public static SceneDraft of(Scene scene) {
    SceneDraft draft = new SceneDraft();
    for (SceneField field : SceneField.ALL) {
      if (field instanceof NumberField number) {
        if (!SceneDetails.has(number.key())) {
          draft.numbers.put(number.key(), number.value().applyAsDouble(scene));
        }
      } else if (field instanceof WordField word) {
        draft.words.put(word.key(), word.value().apply(scene));
      }
    }
    draft.numbers.putAll(SceneDetails.statedBy(scene));
    draft.numbers.remove("kit.equivalent");
    if (scene.subject().outline() == Subject.Outline.ROUND) {
      draft.numbers.remove("subject.depth");
    }
    draft.obstacles = scene.place().obstacles();
    draft.basis = scene.kit().basis();
    draft.shape = scene.subject().shape();
    return draft;
  }

  /** A draft of its own that states the same. */
  public SceneDraft copy() {
    SceneDraft copy = new SceneDraft();
    copy.numbers.putAll(numbers);
    copy.words.putAll(words);
    copy.unread.addAll(unread);
    copy.obstacles = obstacles;
    copy.basis = basis;
    copy.depthChanged = depthChanged;
    copy.focalLengthChanged = focalLengthChanged;
    copy.shape = shape;
    copy.sizeCheck = sizeCheck;
    return copy;
  }

  /** A draft that states what {@code scene} holds, but for the kit. */
  public static SceneDraft withoutKit(Scene scene) {
    SceneDraft draft = of(scene);
    draft.numbers.keySet().removeIf(key -> key.startsWith("kit."));
    draft.words.keySet().removeIf(key -> key.startsWith("kit."));
    draft.basis = Kit.Basis.GIVEN;
    return draft;
  }

  /**
   * Notes that the field was stated by a text nobody could read: no further fault will be told of
   * it.
   */
  public void unreadable(SceneField field) {
    unread.add(field.key());
  }

  /** States a number, in SI. */
  public SceneDraft set(NumberField field, double si) {
    numbers.put(field.key(), si);
    return this;
  }

  /**
   * Changes a number of a draft made {@link #of} a scene, in SI; what followed from the old number
   * goes with it.
   */
  public SceneDraft change(NumberField field, double si) {
    if (field.key().equals("kit.equivalent") && !focalLengthChanged) {
      numbers.remove("kit.focalLength");
    }
    focalLengthChanged |= field.key().equals("kit.focalLength");
    if (field.key().equals("kit.focalLength") || field.key().startsWith("kit.sensor")) {
      basis = Kit.Basis.GIVEN;
    }
    if (field.key().equals("kit.widest")
        && numbers.get("kit.widest").equals(numbers.get("kit.narrowest"))) {
      numbers.remove("kit.narrowest");
    }
    depthChanged |= field.key().equals("subject.depth");
    return set(field, si);
  }

  /**
   * Changes a word of a draft made {@link #of} a scene: a subject that becomes round loses the
   * depth it had, unless the changes state one.
   */
  public SceneDraft change(WordField field, String word) {
    if (field.key().equals("subject.outline") && word.equals("round") && !depthChanged) {
      numbers.remove("subject.depth");
    }
    if (field.key().equals("subject.name") && !word.equals(words.get(field.key()))) {
      shape = sizeCheck != null ? shape : Optional.empty(); // another object
    }
    return set(field, word);
  }

  /** Takes back what is stated for an optional field. */
  public SceneDraft clear(NumberField field) {
    if (field.key().startsWith("kit.sensor")) {
      basis = Kit.Basis.GIVEN;
    }
    depthChanged |= field.key().equals("subject.depth");
    focalLengthChanged |= field.key().equals("kit.focalLength");
    numbers.remove(field.key());
    return this;
  }

  /** States a word or a name. */
  public SceneDraft set(WordField field, String word) {
    words.put(field.key(), word);
    return this;
  }

  /** States walls and furniture. */
  public SceneDraft obstacles(List<Obstacle> stated) {
    obstacles = List.copyOf(stated);
    return this;
  }

  /** States how the sensor size is known, where it is stated itself. */
  public SceneDraft basis(Kit.Basis known) {
    basis = known;
    return this;
  }

  /** The numbers stated, in SI, by key in order. */
  public Map<String, Double> numbers() {
    return InOrder.byKey(numbers);
  }

  /** The words stated, by key in order. */
  public Map<String, String> words() {
    return InOrder.byKey(words);
  }

  /** States the form of the object; its sizes must come near those stated. */
  public SceneDraft shape(Shape stated) {
    shape = Optional.of(stated);
    sizeCheck = new ShapeSize(stated)::compare;
    return this;
  }

  /** Takes over the form of a scene that was made before, with the sizes it was held against. */
  public SceneDraft keepShape(Shape known) {
    shape = Optional.of(known);
    return this;
  }

  /** Everything that keeps the draft from being a scene; empty when {@link #build} will work. */
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    for (SceneField field : SceneField.ALL) {
      checkField(field, faults);
    }
    if (clean("kit.", faults)) {
      checkKit(faults);
    }
    if (clean("subject.", faults)) {
      checkSubject(faults);
    }
    if (clean("place.", faults)) {
      checkPlace(faults);
    }
    return faults;
  }

  /**
   * The scene.
   *
   * @throws IllegalStateException if there are {@link #faults}
   */
  public Scene build() {
    List<Fault> faults = faults();
    if (!faults.isEmpty() || !unread.isEmpty()) {
      throw new IllegalStateException("the draft has faults: " + faults + " " + unread);
    }
    return assembly().scene();
  }

  /** The scene, or empty if there are {@link #faults}. */
  public Optional<Scene> scene() {
    return faults().isEmpty() && unread.isEmpty()
        ? Optional.of(assembly().scene())
        : Optional.empty();
  }

  /** In which measures lengths are told, as far as it is stated yet. */
  public Lengths lengths() {
    return "imperial".equals(words.get("aim.units")) ? Lengths.IMPERIAL : Lengths.METRIC;
  }

  private Unit limit(double si, NumberField field) {
    return lengths().limit(si, field.unit());
  }

  private static String told(double si, Unit unit, int digits) {
    return Numbers.significant(unit.fromSi(si), digits) + " " + unit.symbol();
  }

  private void checkField(SceneField field, List<Fault> faults) {
    if (unread.contains(field.key())) {
      return;
    }
    if (field instanceof NumberField number) {
      Double si = numbers.get(number.key());
      if (si == null) {
        missing(field, faults);
      } else if (!(si >= number.unit().toSi(number.low())
          && si <= number.unit().toSi(number.high()))) {
        double low = number.unit().toSi(number.low());
        double high = number.unit().toSi(number.high());
        Unit unit = limit(high, number);
        Unit least = low == 0 ? unit : limit(low, number);
        String from = Numbers.significant(least.fromSi(low), 4);
        faults.add(
            new Fault(
                field.key(),
                number.name() + " is out of range: " + told(si, limit(si, number), 4),
                "write a value from "
                    + (least == unit ? from : told(low, least, 3))
                    + " to "
                    + told(high, unit, unit == number.unit() ? 6 : 3)));
      }
    } else if (field instanceof WordField word) {
      String given = words.get(word.key());
      if (given == null) {
        missing(field, faults);
      } else if (given.isEmpty()) {
        faults.add(new Fault(field.key(), word.name() + " is empty", "write a name"));
      } else if (!word.words().isEmpty() && !word.words().contains(given)) {
        faults.add(
            new Fault(
                field.key(),
                word.name() + " cannot be '" + given + "'",
                "write one of: " + String.join(", ", word.words())));
      }
    }
  }

  private static void missing(SceneField field, List<Fault> faults) {
    if (!field.optional()) {
      faults.add(
          new Fault(
              field.key(),
              field.name() + " is missing",
              "add '" + field.label() + ":' under '" + field.section() + ":'"));
    }
  }

  private void checkKit(List<Fault> faults) {
    boolean sensor = has("kit.sensorWidth") && has("kit.sensorHeight");
    if (!(sensor && has("kit.focalLength")) && !has("kit.equivalent")) {
      faults.add(
          new Fault(
              "kit.focalLength",
              "the kit cannot be worked out",
              "give 'sensor width', 'sensor height' and 'focal length', or '35 mm equivalent' as"
                  + " 'equivalent'"));
      return;
    }
    if (sensor && numbers.get("kit.sensorHeight") > numbers.get("kit.sensorWidth")) {
      faults.add(
          new Fault(
              "kit.sensorHeight",
              "the sensor is higher than wide",
              "width is the long side: swap the two"));
    }
    if (numbers.get("kit.pixelsDown") > numbers.get("kit.pixelsAcross")) {
      faults.add(
          new Fault(
              "kit.pixelsDown",
              "more pixels down than across",
              "'pixels across' is the long side: swap the two"));
    }
    if (assembly().narrowest() < numbers.get("kit.widest")) {
      faults.add(
          new Fault(
              "kit.narrowest",
              "the narrowest f-number is below the widest",
              "the widest aperture has the smallest f-number"));
    }
    if (detail("kit.highestIso") < detail("kit.baseIso")) {
      faults.add(
          new Fault(
              "kit.highestIso",
              "the highest ISO setting is below the lowest",
              "swap 'base iso' and 'highest iso', or state both"));
    }
    if (numbers.get("kit.closestFocus") <= assembly().focalLength()) {
      faults.add(
          new Fault(
              "kit.closestFocus",
              "closest focus lies inside the focal length",
              "it is the nearest distance the lens can focus on"));
    }
  }

  private void checkSubject(List<Fault> faults) {
    if (has("subject.depth") && numbers.get("subject.depth") > numbers.get("subject.width")) {
      faults.add(
          new Fault(
              "subject.depth",
              "the object is deeper than wide",
              "width is the longer side: swap the two"));
    }
    if (words.get("subject.outline").equals("round")
        && has("subject.depth")
        && !numbers.get("subject.depth").equals(numbers.get("subject.width"))) {
      faults.add(
          new Fault(
              "subject.depth",
              "a round object has one diameter",
              "leave 'depth' out or make it equal to 'width'"));
    }
    if (sizeCheck != null) {
      double width = numbers.get("subject.width");
      double depth = numbers.getOrDefault("subject.depth", width);
      Vec3 stated = new Vec3(width, depth, numbers.get("subject.height"));
      sizeCheck.apply(stated).ifPresent(faults::add);
    }
  }

  private void checkPlace(List<Fault> faults) {
    if (numbers.get("place.lowestLens") >= numbers.get("place.highestLens")) {
      faults.add(
          new Fault(
              "place.highestLens",
              "the highest lens height is not above the lowest",
              "swap the two"));
    }
  }

  private boolean clean(String section, List<Fault> faults) {
    return unread.stream().noneMatch(key -> key.startsWith(section))
        && faults.stream().noneMatch(fault -> fault.key().startsWith(section));
  }

  private boolean has(String key) {
    return numbers.containsKey(key);
  }

  /** The number stated or, where none is, the usual one. */
  private double detail(String key) {
    return numbers.getOrDefault(key, SceneDetails.usual(key).orElseThrow());
  }

  private SceneAssembly assembly() {
    return new SceneAssembly(numbers, words, obstacles, basis, shape);
  }
}
