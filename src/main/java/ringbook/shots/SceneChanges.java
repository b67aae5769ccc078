package ringbook.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.optics.Kit;
import ringbook.problems.Nearest;
import ringbook.shots.SceneDraft.Fault;
import ringbook.shots.SceneField.NumberField;
import ringbook.units.Words;

/**
 * Changes to a scene, each a field and what a person wrote for it, or in one line of text: {@code
 * aim.step = 72°, subject.height = 50 cm}. The change {@code kit = lens camera} takes up another
 * kit of the course by its name, before all others; {@code place.obstacles = none} clears the room;
 * nothing behind the sign takes back what is stated for an optional field.
 */
public final class SceneChanges {

  /** The name that takes up another kit. */
  public static final String KIT = "kit";

  /** The name of walls and furniture, which a change can only take away. */
  public static final String OBSTACLES = "place.obstacles";

  private static final String UNITS = "aim.units";
  private static final String NONE = "none";

  private SceneChanges() {}

  /**
   * One change.
   *
   * @param key the field, or {@link #KIT}
   * @param written what a person wrote for it
   */
  public record Change(String key, String written) {}

  /**
   * The changed scene, or what is wrong with the changes.
   *
   * @param scene empty exactly when there are faults
   * @param faults in the order of the text
   */
  public record Result(Optional<Scene> scene, List<Fault> faults) {
    public Result {
      faults = List.copyOf(faults);
    }
  }

  /** {@code scene} with the changes that {@code text} states, joined by commas. */
  public static Result apply(Scene scene, String text) {
    return apply(scene, text, Map.of());
  }

  /**
   * The same where other kits may be taken up.
   *
   * @param kits the other kits, by name
   */
  public static Result apply(Scene scene, String text, Map<String, Kit> kits) {
    List<Change> changes = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    int from = 0;
    while (from <= text.length()) {
      int comma = text.indexOf(',', from);
      int end = comma < 0 ? text.length() : comma;
      read(text.substring(from, end), changes, faults);
      from = end + 1;
    }
    return apply(scene, changes, kits, faults);
  }

  /**
   * {@code scene} with {@code changes}.
   *
   * @param kits the other kits that may be taken up, by name
   */
  public static Result apply(Scene scene, List<Change> changes, Map<String, Kit> kits) {
    return apply(scene, changes, kits, new ArrayList<>());
  }

  private static Result apply(
      Scene scene, List<Change> changes, Map<String, Kit> kits, List<Fault> faults) {
    Scene begun = scene;
    for (Change change : changes) {
      if (change.key().equals(KIT)) {
        begun = withKit(begun, change.written(), kits, faults);
      }
    }
    SceneDraft draft = SceneDraft.of(begun);
    for (Change change : changes) {
      if (change.key().equals(UNITS)) { // before what is told with examples
        one(draft, change).ifPresent(faults::add);
      }
    }
    for (Change change : changes) {
      if (!change.key().equals(KIT) && !change.key().equals(UNITS)) {
        one(draft, change).ifPresent(faults::add);
      }
    }
    faults.addAll(draft.faults());
    return faults.isEmpty()
        ? new Result(Optional.of(draft.build()), faults)
        : new Result(Optional.empty(), faults);
  }

  private static void read(String text, List<Change> changes, List<Fault> faults) {
    int sign = text.indexOf('=');
    if (sign < 0) {
      faults.add(
          new Fault(
              "", "'" + Words.trimmed(text) + "' is no change", "write it like aim.step = 72°"));
      return;
    }
    changes.add(
        new Change(
            Words.trimmed(text.substring(0, sign)), Words.trimmed(text.substring(sign + 1))));
  }

  private static Scene withKit(
      Scene scene, String name, Map<String, Kit> kits, List<Fault> faults) {
    Kit kit = kits.get(name);
    if (kit == null) {
      faults.add(
          new Fault(
              KIT,
              "the course has no other kit '" + name + "'",
              Nearest.help(name, kits.keySet())));
      return scene;
    }
    return new Scene(kit, scene.subject(), scene.place(), scene.aim());
  }

  private static Optional<Fault> one(SceneDraft draft, Change change) {
    if (change.key().equals(OBSTACLES)) {
      return cleared(draft, change.written());
    }
    Optional<SceneField> field = SceneField.byKey(change.key());
    if (field.isEmpty()) {
      List<String> keys = SceneField.ALL.stream().map(SceneField::key).toList();
      return Optional.of(
          new Fault(
              change.key(),
              "a scene has nothing called '" + change.key() + "'",
              Nearest.help(change.key(), keys)));
    }
    boolean blank = Words.trimmed(change.written()).isEmpty();
    if (blank && field.get() instanceof NumberField number && number.optional()) {
      draft.clear(number);
      return Optional.empty();
    }
    return SceneText.set(draft, field.get(), change.written(), true);
  }

  private static Optional<Fault> cleared(SceneDraft draft, String written) {
    if (Words.trimmed(written).equals(NONE)) {
      draft.obstacles(List.of());
      return Optional.empty();
    }
    return Optional.of(
        new Fault(
            OBSTACLES,
            "walls and furniture cannot be changed to '" + written + "'",
            "write 'none' for a free room, or state them in the course file"));
  }
}
