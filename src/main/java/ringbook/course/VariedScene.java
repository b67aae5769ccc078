package ringbook.course;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ringbook.optics.Kit;
import ringbook.problems.Nearest;
import ringbook.problems.Problems;
import ringbook.shots.Scene;

/** The course's scene with the changes that an exercise states. */
final class VariedScene {

  private VariedScene() {}

  /**
   * The changed scene. {@code kit: NAME} takes another kit of the course by its name; every other
   * change is written as in the course file.
   */
  static Optional<Scene> of(CourseFile course, YamlNode.Fields changes, Problems problems) {
    Optional<YamlNode.Field> kit = changes.find("kit");
    if (kit.isPresent() && kit.get().value() instanceof YamlNode.Text name) {
      Map<String, YamlNode.Field> rest = new LinkedHashMap<>(changes.fields());
      rest.remove("kit");
      return withKit(course, name, problems)
          .flatMap(
              scene ->
                  SceneReader.changed(
                      scene, new YamlNode.Fields(changes.position(), rest), problems));
    }
    return SceneReader.changed(course.scene(), changes, problems);
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
