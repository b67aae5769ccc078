package ringbook.plans;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;

/** Counts of one in what is read on the day. */
final class FieldSheetTest {

  /** Rings so far apart that one photograph goes over the top: (180 − 2 × 45) / 60, less one. */
  private static final Scene FEW =
      SceneChanges.apply(Scenes.pot(), "aim.ringSpacing = 60°").scene().orElseThrow();

  @Test
  void a_run_of_one_is_headed_by_one_photograph() {
    List<FieldSheet.Run> runs = FieldSheet.of(Reckoning.of(FEW)).runs();
    assertThat(runs.get(0).title()).isEqualTo("Ring A: 30 photographs");
    FieldSheet.Run top = runs.get(runs.size() - 1);
    assertThat(top.title()).isEqualTo("Top: 1 photograph");
    assertThat(top.why()).isEqualTo("Over the top: 1 photograph from straight above.");
    assertThat(top.stops().get(0).tilt()).isEqualTo("90° down");
  }
}
