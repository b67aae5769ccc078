package ringbook.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.shots.SceneDraft.Fault;
import ringbook.units.Dimension;
import ringbook.units.Lengths;

/** What a person writes for a field. */
final class SceneTextTest {

  private static final SceneField WIDTH = SceneField.byKey("subject.width").orElseThrow();

  @Test
  void capitals_and_blanks_do_not_matter_in_a_word_and_stay_in_a_name() {
    SceneDraft draft = SceneDraft.of(Scenes.pot());
    SceneText.set(draft, SceneField.byKey("subject.surface").orElseThrow(), " Glossy ", false);
    SceneText.set(draft, SceneField.byKey("subject.name").orElseThrow(), " Brass Bell ", false);
    Subject subject = draft.build().subject();
    assertThat(subject.surface()).isEqualTo(Subject.Surface.GLOSSY);
    assertThat(subject.name()).isEqualTo("Brass Bell");
  }

  @Test
  void says_what_cannot_be_read_and_how_to_write_it() {
    Optional<Fault> fault = SceneText.set(SceneDraft.of(Scenes.pot()), WIDTH, "wide", false);
    assertThat(fault).isPresent();
    assertThat(fault.get().key()).isEqualTo("subject.width");
    assertThat(fault.get().message()).startsWith("width of the object: ").contains("'wide'");
    assertThat(fault.get().help()).isNotEmpty();
  }

  @Test
  void says_when_the_unit_is_of_another_kind_or_missing() {
    SceneText.Read angle = SceneText.read("12°", Dimension.LENGTH, Lengths.METRIC);
    assertThat(angle.fault().orElseThrow().message()).startsWith("'12°': ");
    SceneText.Read bare = SceneText.read("12", Dimension.LENGTH, Lengths.METRIC);
    assertThat(bare.fault().orElseThrow().message()).startsWith("'12': ");
    assertThat(bare.si()).isZero();
  }

  @Test
  void reads_any_unit_of_the_right_kind() {
    SceneText.Read inches = SceneText.read("10 in", Dimension.LENGTH, Lengths.METRIC);
    assertThat(inches.fault()).isEmpty();
    assertThat(inches.si()).isCloseTo(0.254, within(1e-12));
  }

  /** Stated, not changed: a depth that was there is not taken away by a new outline. */
  @Test
  void stating_leaves_other_fields_alone() {
    SceneDraft draft = SceneDraft.of(Scenes.pot());
    SceneText.set(draft, SceneField.byKey("subject.depth").orElseThrow(), "11 cm", false);
    SceneText.set(draft, SceneField.byKey("subject.outline").orElseThrow(), "round", false);
    assertThat(draft.faults())
        .extracting(Fault::message)
        .containsExactly("a round object has one diameter");
  }
}
