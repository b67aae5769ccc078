package ringbook.shots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import ringbook.Scenes;

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

  private static Scene chair() {
    SceneDraft draft = SceneDraft.of(Scenes.pot());
    SceneText.set(draft, OUTLINE, "rectangular", true);
    SceneText.set(draft, WIDTH, "48 cm", true);
    SceneText.set(draft, DEPTH, "44 cm", true);
    return draft.build();
  }
}
