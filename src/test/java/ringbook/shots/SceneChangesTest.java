package ringbook.shots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.units.Length;

/** Changes that take other fields with them. */
class SceneChangesTest {

  private static final SceneField OUTLINE = SceneField.byKey("subject.outline").orElseThrow();
  private static final SceneField WIDTH = SceneField.byKey("subject.width").orElseThrow();
  private static final SceneField DEPTH = SceneField.byKey("subject.depth").orElseThrow();

  @Test
  void a_cornered_subject_made_round_loses_its_depth() {
    SceneDraft draft = SceneDraft.of(chair());
    SceneText.set(draft, OUTLINE, "round", true);
    SceneText.set(draft, WIDTH, "22 cm", true);
    Subject subject = draft.build().subject();
    assertEquals(0.22, subject.depth().metres(), 1e-12);
  }

  @Test
  void a_depth_stated_for_a_round_subject_is_still_told() {
    SceneDraft draft = SceneDraft.of(chair());
    SceneText.set(draft, DEPTH, "11 cm", true);
    SceneText.set(draft, OUTLINE, "round", true);
    assertTrue(draft.faults().stream().anyMatch(f -> f.message().contains("one diameter")));
  }

  @Test
  void an_empty_text_takes_back_what_an_optional_field_states() {
    Scene holed = changed("subject.holeDiameter = 5 cm, subject.holeDepth = 9 cm");
    Scene plain =
        SceneChanges.apply(holed, "subject.holeDiameter = , subject.holeDepth=")
            .scene()
            .orElseThrow();
    assertEquals(SceneDraft.of(Scenes.pot()).numbers(), SceneDraft.of(plain).numbers());
    String message =
        SceneChanges.apply(Scenes.pot(), "subject.height = ").faults().get(0).message();
    assertTrue(message.startsWith("height of the object"), message);
  }

  @Test
  void limits_are_told_in_the_measures_of_the_scene() {
    assertEquals("5000 cm; 0.1 to 1000 cm", refused("subject.height = 50 m"));
    String inches = "aim.units = imperial, ";
    assertEquals("164 ft; 1 mm to 32.8 ft", refused(inches + "subject.height = 50 m"));
    assertEquals("196.9 in/s; 0.3937 to 118 in/s", refused(inches + "aim.walkingSpeed = 5 m/s"));
    assertEquals("0.05 mm; 1 mm to 32.8 ft", refused(inches + "subject.height = 0.05 mm"));
    assertEquals("13.12 ft; 0 to 9.84 ft", refused(inches + "place.tableHeight = 4 m"));
    assertEquals("200 mm; 1 to 100 mm", refused(inches + "kit.sensorWidth = 20 cm"));
  }

  /** Wherever among the changes the measures stand. */
  @Test
  void examples_are_in_the_measures_of_the_changes() {
    for (String text :
        List.of(
            "aim.units = imperial, subject.height = x", "subject.height=x, aim.units=imperial")) {
      assertEquals(
          List.of("write a length, such as 16 1/2 in"),
          SceneChanges.apply(Scenes.pot(), text).faults().stream()
              .map(SceneDraft.Fault::help)
              .toList());
    }
  }

  private static String refused(String changes) {
    SceneDraft.Fault fault = SceneChanges.apply(Scenes.pot(), changes).faults().get(0);
    return fault.message().replaceFirst(".*out of range: ", "")
        + "; "
        + fault.help().replaceFirst("write a value from ", "");
  }

  @Test
  void a_phone_known_by_focal_length_and_equivalent_gets_its_sensor_from_them() {
    String phone = "kit.focalLength = 6.9 mm, kit.equivalent = 26 mm";
    Scene scene = changed("kit.sensorWidth = , kit.sensorHeight = , " + phone);
    assertEquals(6.9, scene.kit().lens().focalLength().millimetres(), 1e-12);
    assertEquals(43.267 * 6.9 / 26, scene.kit().sensor().diagonal().millimetres(), 0.001);
  }

  @Test
  void a_room_can_be_cleared() {
    Length near = Length.ofMetres(1);
    Length far = Length.ofMetres(2);
    Obstacle wall =
        new Obstacle(
            "wall", List.of(new Corner(near, near), new Corner(far, near), new Corner(far, far)));
    Scene walled = SceneDraft.of(Scenes.pot()).obstacles(List.of(wall)).build();
    Scene free = SceneChanges.apply(walled, "place.obstacles = none").scene().orElseThrow();
    assertTrue(free.place().obstacles().isEmpty());
    assertEquals(1, SceneChanges.apply(Scenes.pot(), "place.obstacles = sofa").faults().size());
  }

  private static Scene changed(String changes) {
    return SceneChanges.apply(Scenes.pot(), changes).scene().orElseThrow();
  }

  private static Scene chair() {
    SceneDraft draft = SceneDraft.of(Scenes.pot());
    SceneText.set(draft, OUTLINE, "rectangular", true);
    SceneText.set(draft, WIDTH, "48 cm", true);
    SceneText.set(draft, DEPTH, "44 cm", true);
    return draft.build();
  }
}
