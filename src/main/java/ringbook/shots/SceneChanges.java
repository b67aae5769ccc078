package ringbook.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.shots.SceneDraft.Fault;

/** Changes to a scene in one line of text: {@code aim.step = 72°, subject.height = 50 cm}. */
public final class SceneChanges {

  private SceneChanges() {}

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
    SceneDraft draft = SceneDraft.of(scene);
    List<Fault> faults = new ArrayList<>();
    int from = 0;
    while (from <= text.length()) {
      int comma = text.indexOf(',', from);
      int end = comma < 0 ? text.length() : comma;
      one(draft, text.substring(from, end)).ifPresent(faults::add);
      from = end + 1;
    }
    faults.addAll(draft.faults());
    return faults.isEmpty()
        ? new Result(Optional.of(draft.build()), faults)
        : new Result(Optional.empty(), faults);
  }

  private static Optional<Fault> one(SceneDraft draft, String change) {
    int sign = change.indexOf('=');
    if (sign < 0) {
      return Optional.of(
          new Fault("", "'" + change.strip() + "' is no change", "write it like aim.step = 72°"));
    }
    String key = change.substring(0, sign).strip();
    Optional<SceneField> field = SceneField.byKey(key);
    if (field.isEmpty()) {
      List<String> keys = SceneField.ALL.stream().map(SceneField::key).toList();
      return Optional.of(
          new Fault(
              key,
              "a scene has nothing called '" + key + "'",
              ringbook.problems.Nearest.help(key, keys)));
    }
    return SceneText.set(draft, field.get(), change.substring(sign + 1).strip(), true);
  }
}
