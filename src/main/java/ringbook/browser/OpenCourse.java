package ringbook.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.ledger.Reckoning;
import ringbook.optics.Kit;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneChanges.Change;
import ringbook.values.Expressions;

/** The course that a script has open, with the reader's scene and the exercises taken up so far. */
final class OpenCourse {

  private final Reach reach;
  private final LiveCourse course;
  private final Map<String, LiveExercise> exercises = new LinkedHashMap<>();
  private Reckoning reckoning;
  private Expressions values;

  /**
   * Opens a course with its own scene.
   *
   * @param data what {@link CourseData#course} wrote
   */
  OpenCourse(String data, Reach reach) {
    this.reach = reach;
    course = LiveCourse.read(data, reach);
    reckoning = Reckoning.of(course.scene());
    values = new Expressions(reckoning, course.kits());
  }

  Reckoning reckoning() {
    return reckoning;
  }

  /** Over the open scene; scenes that expressions make of it are made once. */
  Expressions values() {
    return values;
  }

  Map<String, Kit> kits() {
    return course.kits();
  }

  String take(String data) {
    JsonTree tree = JsonTree.read(data);
    exercises.put(
        tree.text("id"),
        new LiveExercise(
            ExerciseData.read(tree, course.title(), course.scene(), reach),
            ExerciseData.shown(tree),
            course.kits()));
    return tree.text("id");
  }

  LiveExercise exercise(String id) {
    LiveExercise exercise = exercises.get(id);
    if (exercise == null) {
      throw new IllegalArgumentException("no exercise was taken up as '" + id + "'");
    }
    return exercise.told(reckoning.scene().aim().lengths());
  }

  String change(String[] keys, String[] written) {
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < keys.length; i++) {
      changes.add(new Change(keys[i], written[i]));
    }
    SceneChanges.Result result = SceneChanges.apply(course.scene(), changes, course.kits());
    result
        .scene()
        .ifPresent(
            scene -> {
              reckoning = Reckoning.of(scene);
              values = values.over(reckoning);
            });
    return SceneJson.faults(result.faults());
  }
}
