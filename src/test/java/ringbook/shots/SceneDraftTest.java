package ringbook.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.optics.Kit;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.SceneDraft.Fault;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.units.Length;

/** A scene stated field by field: kits by halves, what goes with a change, what is told. */
final class SceneDraftTest {

  private static final double FULL_FRAME = Math.sqrt(36 * 36 + 24 * 24);

  /** Focal length 4.44 mm that counts as 24 mm: a diagonal of 8 mm, shared out by the pixels. */
  @Test
  void a_kit_by_focal_length_and_equivalent_has_its_sensor_from_both() {
    Kit kit =
        phone()
            .set(number("kit.focalLength"), 24 * 8 / FULL_FRAME / 1000)
            .set(number("kit.equivalent"), 0.024)
            .build()
            .kit();
    assertThat(kit.basis()).isEqualTo(Kit.Basis.FROM_EQUIVALENT);
    assertThat(kit.sensor().width().millimetres()).isCloseTo(6.4, within(1e-9));
    assertThat(kit.sensor().height().millimetres()).isCloseTo(4.8, within(1e-9));
  }

  @Test
  void a_kit_by_its_equivalent_alone_is_taken_for_a_small_sensor() {
    Kit kit = phone().set(number("kit.equivalent"), 0.024).build().kit();
    assertThat(kit.basis()).isEqualTo(Kit.Basis.ASSUMED);
    assertThat(kit.sensor().diagonal().millimetres()).isCloseTo(8, within(1e-9));
    assertThat(kit.lens().focalLength().millimetres()).isCloseTo(24 * 8 / FULL_FRAME, within(1e-9));
  }

  /** 23.5 mm by 15.6 mm: a diagonal of 28.21 mm sees with 34 mm what 43.27 mm see with 52. */
  @Test
  void an_equivalent_for_a_known_sensor_is_worked_out_with_its_own_diagonal() {
    SceneDraft draft = SceneDraft.of(Scenes.potWithLensCamera());
    Kit kit = draft.change(number("kit.equivalent"), 0.052).build().kit();
    assertThat(kit.basis()).isEqualTo(Kit.Basis.GIVEN);
    assertThat(kit.lens().focalLength().millimetres())
        .isCloseTo(52 * Math.hypot(23.5, 15.6) / FULL_FRAME, within(1e-9));
  }

  @Test
  void a_fault_in_one_section_does_not_hide_those_of_another() {
    SceneDraft draft = SceneDraft.of(Scenes.pot());
    draft.set(number("aim.step"), 0).set(number("place.lowestLens"), 1.9);
    assertThat(draft.faults())
        .extracting(Fault::key)
        .containsExactly("aim.step", "place.highestLens");
  }

  @Test
  void one_side_of_the_sensor_is_not_enough() {
    SceneDraft draft = phone().set(number("kit.sensorWidth"), 0.0064);
    draft.set(number("kit.focalLength"), 0.0048);
    assertThat(draft.faults())
        .extracting(Fault::key, Fault::message)
        .containsExactly(tuple("kit.focalLength", "the kit cannot be worked out"));
    Kit kit = draft.set(number("kit.equivalent"), 0.026).build().kit();
    assertThat(kit.basis()).isEqualTo(Kit.Basis.FROM_EQUIVALENT);
  }

  @Test
  void a_sensor_without_its_lens_is_not_enough() {
    SceneDraft draft = phone().set(number("kit.sensorWidth"), 0.0064);
    draft.set(number("kit.sensorHeight"), 0.0048);
    assertThat(draft.faults()).extracting(Fault::key).containsExactly("kit.focalLength");
  }

  @Test
  void how_a_sensor_is_known_stays_until_sensor_or_lens_is_changed() {
    Scene guessed = phone().set(number("kit.equivalent"), 0.024).build();
    assertThat(changed(guessed, "kit.widest", 2.2)).isEqualTo(Kit.Basis.ASSUMED);
    assertThat(changed(guessed, "kit.closestFocus", 0.1)).isEqualTo(Kit.Basis.ASSUMED);
    assertThat(changed(guessed, "kit.focalLength", 0.004)).isEqualTo(Kit.Basis.GIVEN);
    assertThat(changed(guessed, "kit.sensorWidth", 0.007)).isEqualTo(Kit.Basis.GIVEN);
    assertThat(changed(guessed, "kit.sensorHeight", 0.004)).isEqualTo(Kit.Basis.GIVEN);
  }

  private static Kit.Basis changed(Scene scene, String key, double si) {
    return SceneDraft.of(scene).change(number(key), si).build().kit().basis();
  }

  /** A phone has one aperture: a new one is both its widest and its narrowest. */
  @Test
  void a_lens_with_one_aperture_keeps_to_one() {
    Scene phone = SceneDraft.of(Scenes.pot()).change(number("kit.widest"), 2.4).build();
    assertThat(phone.kit().lens().narrowest().value()).isEqualTo(2.4);
  }

  @Test
  void a_lens_with_many_apertures_keeps_its_narrowest() {
    Scene zoom =
        SceneDraft.of(Scenes.potWithLensCamera()).change(number("kit.widest"), 2.8).build();
    assertThat(zoom.kit().lens().widest().value()).isEqualTo(2.8);
    assertThat(zoom.kit().lens().narrowest().value()).isEqualTo(16);
  }

  @Test
  void without_its_kit_a_scene_keeps_all_else() {
    Scene pot = Scenes.with(Scenes.pot(), "kit.barLength", "50", "aim.spare", "20");
    SceneDraft bare = SceneDraft.withoutKit(pot);
    assertThat(bare.faults())
        .extracting(Fault::key)
        .contains("kit.name", "kit.pixelsAcross", "kit.pixelsDown", "kit.widest")
        .allMatch(key -> key.startsWith("kit."));
    equip(bare).set(number("kit.equivalent"), 0.024);
    Scene again = bare.build();
    assertThat(again.subject()).isEqualTo(pot.subject());
    assertThat(again.place()).isEqualTo(pot.place());
    assertThat(again.aim()).isEqualTo(pot.aim());
    assertThat(again.kit().details().stated()).isEmpty();
    assertThat(again.kit().basis()).isEqualTo(Kit.Basis.ASSUMED);
  }

  @Test
  void furniture_and_details_of_every_section_are_carried_over() {
    Length near = Length.ofMetres(1);
    Length far = Length.ofMetres(2);
    Obstacle bench =
        new Obstacle(
            "bench", List.of(new Corner(near, near), new Corner(far, near), new Corner(far, far)));
    SceneDraft draft = SceneDraft.of(Scenes.pot()).obstacles(List.of(bench));
    draft.set(number("subject.holeDiameter"), 0.06).set(number("place.lampDistance"), 2);
    Scene scene = draft.build();
    assertThat(scene.place().obstacles()).containsExactly(bench);
    assertThat(scene.place().details().stated()).containsOnlyKeys("place.lampDistance");
    assertThat(SceneDraft.of(scene).build()).isEqualTo(scene);
  }

  @Test
  void tells_an_empty_name_and_a_word_it_does_not_know() {
    SceneDraft draft = SceneDraft.of(Scenes.pot());
    draft.set(word("subject.name"), "").set(word("subject.surface"), "hairy");
    assertThat(draft.faults())
        .containsExactly(
            new Fault("subject.name", "name of the object is empty", "write a name"),
            new Fault(
                "subject.surface",
                "surface of the object cannot be 'hairy'",
                "write one of: textured, plain, glossy, clear"));
  }

  @Test
  void tells_what_is_missing_unless_the_scene_can_do_without_it() {
    assertThat(new SceneDraft().faults())
        .contains(
            new Fault(
                "subject.name", "name of the object is missing", "add 'name:' under 'subject:'"))
        .extracting(Fault::key)
        .contains("aim.step", "place.tableHeight", "subject.outline")
        .doesNotContain("subject.depth", "kit.narrowest", "aim.spare", "kit.fileSize");
  }

  /** What could not be read was told where it was read; what hangs on it waits. */
  @Test
  void an_unreadable_field_is_told_once_and_nothing_is_built_on_it() {
    SceneDraft draft = SceneDraft.of(Scenes.pot());
    assertThat(SceneText.set(draft, number("kit.closestFocus"), "near", true)).isPresent();
    draft.set(number("kit.pixelsDown"), 5000);
    draft.set(number("place.lowestLens"), 1.9);
    assertThat(draft.faults()).extracting(Fault::key).containsExactly("place.highestLens");
    assertThatIllegalStateException().isThrownBy(draft::build).withMessageContaining("faults");
  }

  @Test
  void an_unreadable_field_keeps_a_scene_from_being_built() {
    SceneDraft draft = SceneDraft.of(Scenes.pot());
    SceneText.set(draft, number("aim.step"), "some", true);
    assertThat(draft.faults()).isEmpty();
    assertThatIllegalStateException().isThrownBy(draft::build).withMessageContaining("aim.step");
  }

  private static SceneDraft phone() {
    return equip(SceneDraft.withoutKit(Scenes.pot()));
  }

  private static SceneDraft equip(SceneDraft draft) {
    return draft
        .set(word("kit.name"), "phone")
        .set(number("kit.pixelsAcross"), 4000)
        .set(number("kit.pixelsDown"), 3000)
        .set(number("kit.widest"), 1.8)
        .set(number("kit.closestFocus"), 0.08);
  }

  private static NumberField number(String key) {
    return (NumberField) SceneField.byKey(key).orElseThrow();
  }

  private static WordField word(String key) {
    return (WordField) SceneField.byKey(key).orElseThrow();
  }
}
