package ringbook.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;

final class SceneDetailsTest {

  @Test
  void gives_the_usual_value_where_nothing_is_said() {
    assertThat(Reckoning.of(Scenes.pot()).text("aim.ringSpacing")).isEqualTo("15°");
    Scene changed = Scenes.with(Scenes.pot(), "aim.ringSpacing", "20");
    assertThat(Reckoning.of(changed).text("aim.ringSpacing")).isEqualTo("20°");
  }

  @Test
  void refuses_what_the_object_does_not_have() {
    Outcome none = Reckoning.of(Scenes.pot()).of("subject.holeDiameter");
    assertThat(none)
        .isEqualTo(
            new Outcome.Refused(
                "nothing is said about the diameter of the hole",
                "state 'hole diameter:' under 'subject:'"));
    Scene holed = Scenes.with(Scenes.pot(), "subject.holeDiameter", "6");
    assertThat(Reckoning.of(holed).si("subject.holeDiameter")).isCloseTo(0.06, within(1e-12));
  }

  @Test
  void keeps_apart_what_was_said_and_what_is_usual() {
    Scene scene = Scenes.with(Scenes.pot(), "kit.barLength", "50", "aim.poses", "2");
    Scene again = SceneDraft.of(scene).build();
    assertThat(again).isEqualTo(scene);
    assertThat(again.kit().details().stated()).containsOnlyKeys("kit.barLength");
    assertThat(Scenes.pot().kit().details().stated()).isEmpty();
  }

  @Test
  void counts_in_whole_numbers() {
    Scene scene = Scenes.with(Scenes.pot(), "kit.barCount", "2.6");
    assertThat(Reckoning.of(scene).si("kit.barCount")).isEqualTo(3);
  }
}
