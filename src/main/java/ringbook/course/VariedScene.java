package ringbook.course;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ringbook.optics.Kit;
import ringbook.problems.Nearest;
import ringbook.problems.Problems;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.Subject.Outline;
import ringbook.units.Lengths;

/** The course's scene with the changes that an exercise states. */
final class VariedScene {

  private VariedScene() {}

  /**
   * The changed scene. {@code kit: NAME} takes another kit of the course by its name; every other
   * change is written as in the course file.
   *
   * @param lengths in which measures people would state the sizes that the exercise does
   */
  static Optional<Scene> of(
      CourseFile course, YamlNode.Fields changes, Lengths lengths, Problems problems) {
    Optional<YamlNode.Field> kit = changes.find("kit");
    if (kit.isPresent() && kit.get().value() instanceof YamlNode.Text name) {
      Map<String, YamlNode.Field> rest = new LinkedHashMap<>(changes.fields());
      rest.remove("kit");
      return withKit(course, name, problems)
          .flatMap(
              scene -> of(scene, new YamlNode.Fields(changes.position(), rest), lengths, problems));
    }
    return of(course.scene(), changes, lengths, problems);
  }

  private static Optional<Scene> of(
      Scene base, YamlNode.Fields changes, Lengths lengths, Problems problems) {
    return SceneReader.changed(base, changes, problems).map(scene -> told(base, scene, lengths));
  }

  /** With the sizes of another object, and what else differs, as people would state them. */
  private static Scene told(Scene base, Scene changed, Lengths lengths) {
    SceneDraft draft = SceneDraft.of(changed);
    boolean other = !changed.subject().name().equals(base.subject().name());
    boolean round = changed.subject().outline() == Outline.ROUND;
    for (NumberField field : SceneField.numbers()) {
      double si = field.value().applyAsDouble(changed);
      double told = lengths.stated(si, field.unit());
      boolean own =
          si != field.value().applyAsDouble(base) || (other && field.section().equals("subject"));
      if (own && told != si && !(round && field.key().equals("subject.depth"))) {
        draft.change(field, told);
      }
    }
    return draft.scene().orElse(changed);
  }

  private static Optional<Scene> withKit(CourseFile course, YamlNode.Text name, Problems problems) {
    Kit kit = course.otherKits().get(name.text().strip());
    if (kit == null) {
      problems.add(
          name.position(),
          "the course has no other kit '" + name.text().strip() + "'",
          course.otherKits().isEmpty()
              ? "state it under 'other kits:' in the course file"
              : Nearest.help(name.text().strip(), course.otherKits().keySet()));
      return Optional.empty();
    }
    Scene scene = course.scene();
    return Optional.of(new Scene(kit, scene.subject(), scene.place(), scene.aim()));
  }
}
