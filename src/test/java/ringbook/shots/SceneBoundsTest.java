package ringbook.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.Scenes;
import ringbook.shots.SceneDraft.Fault;
import ringbook.shots.SceneField.NumberField;

/** What a scene may just be, and what it may just not. */
final class SceneBoundsTest {

  @Test
  void both_ends_of_every_range_belong_to_it() {
    for (SceneField field : SceneField.ALL) {
      if (field instanceof NumberField number) {
        double low = number.unit().toSi(number.low());
        double high = number.unit().toSi(number.high());
        double hair = 1e-6 * (high - low);
        assertThat(outOfRange(number, low)).as(number.key()).isFalse();
        assertThat(outOfRange(number, high)).as(number.key()).isFalse();
        assertThat(outOfRange(number, low - hair)).as(number.key()).isTrue();
        assertThat(outOfRange(number, high + hair)).as(number.key()).isTrue();
      }
    }
  }

  private static boolean outOfRange(NumberField field, double si) {
    SceneDraft draft = SceneDraft.of(Scenes.pot()).set(field, si);
    return draft.faults().stream()
        .anyMatch(
            fault -> fault.key().equals(field.key()) && fault.message().contains("out of range"));
  }

  /** The demo's pot and phone, with two numbers made equal or one step past each other. */
  @ParameterizedTest(name = "{index}: {0}")
  @CsvSource({
    "kit.sensorWidth = 6 mm; kit.sensorHeight = 6 mm, ''",
    "kit.sensorWidth = 6 mm; kit.sensorHeight = 6.01 mm, higher than wide",
    "kit.pixelsAcross = 3000; kit.pixelsDown = 3000, ''",
    "kit.pixelsAcross = 3000; kit.pixelsDown = 3001, more pixels down",
    "kit.widest = f/4; kit.narrowest = f/4, ''",
    "kit.widest = f/4; kit.narrowest = f/3.9, below the widest",
    "kit.baseIso = 400; kit.highestIso = 400, ''",
    "kit.baseIso = 401; kit.highestIso = 400, highest ISO setting is below",
    "kit.focalLength = 40 mm; kit.closestFocus = 4.01 cm, ''",
    "kit.focalLength = 40 mm; kit.closestFocus = 4 cm, inside the focal length",
    "subject.outline = rectangular; subject.width = 20 cm; subject.depth = 20 cm, ''",
    "subject.outline = rectangular; subject.width = 20 cm; subject.depth = 20.1 cm, deeper",
    "subject.width = 20 cm; subject.depth = 19 cm, one diameter",
    "place.lowestLens = 100 cm; place.highestLens = 101 cm, ''",
    "place.lowestLens = 100 cm; place.highestLens = 100 cm, not above the lowest",
  })
  void tells_what_contradicts_itself(String changes, String message) {
    List<Fault> faults = SceneChanges.apply(Scenes.pot(), changes.replace(';', ',')).faults();
    if (message.isEmpty()) {
      assertThat(faults).isEmpty();
    } else {
      assertThat(faults).hasSize(1);
      assertThat(faults.get(0).message()).contains(message);
    }
  }

  @ParameterizedTest(name = "{index}: {0}")
  @CsvSource({
    "aim.step = 72°;, '' is no change",
    "'', '' is no change",
    "aim.step, 'aim.step' is no change",
    "= 5, nothing called ''",
    "aim.stop = 5°, nothing called 'aim.stop'",
  })
  void tells_what_is_no_change(String changes, String message) {
    List<String> messages = new ArrayList<>();
    SceneChanges.Result result = SceneChanges.apply(Scenes.pot(), changes.replace(';', ','));
    result.faults().forEach(fault -> messages.add(fault.message()));
    assertThat(result.scene()).isEmpty();
    assertThat(messages).hasSize(1);
    assertThat(messages.get(0)).contains(message);
  }

  /** Kits by the 35 mm equivalent: a diagonal of 43.27 mm sees at 24 mm what 8 mm see at 4.44. */
  @Test
  void works_out_a_kit_from_its_equivalent() {
    SceneDraft draft = SceneDraft.of(Scenes.pot());
    NumberField equivalent = (NumberField) SceneField.byKey("kit.equivalent").orElseThrow();
    Scene scene = draft.change(equivalent, equivalent.unit().toSi(24)).build();
    // The sensor stays: 8 mm of diagonal, by Pythagoras from 6.4 and 4.8.
    double focal = 24 * 8 / Math.sqrt(36 * 36 + 24 * 24);
    assertThat(scene.kit().lens().focalLength().millimetres()).isCloseTo(focal, within(1e-9));
  }

  @Test
  void a_round_subject_is_as_deep_as_wide() {
    Scene round = SceneChanges.apply(Scenes.pot(), "subject.width = 22 cm").scene().orElseThrow();
    assertThat(round.subject().depth()).isEqualTo(round.subject().width());
  }
}
