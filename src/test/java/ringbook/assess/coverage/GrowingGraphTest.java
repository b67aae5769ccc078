package ringbook.assess.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.geometry.Ball;
import ringbook.units.Angle;
import ringbook.units.Length;

/** Short cuts of a planner against the long way: everything judged and compared anew. */
final class GrowingGraphTest {

  private static final Ball BALL = new Ball(Length.ofCentimetres(30));
  private static final int VIEWS = 12;

  private static List<View> views(Seeing seeing, SplittableRandom random) {
    List<View> views = new ArrayList<>();
    for (int k = 0; k < VIEWS; k++) {
      Angle azimuth = Angle.ofDegrees(random.nextDouble(0, 120));
      Angle elevation = Angle.ofDegrees(random.nextDouble(-20, 50));
      views.add(seeing.look(Before.towards(seeing, azimuth, elevation, 3)));
    }
    return views;
  }

  private static Seeing seeing() {
    return Before.seeing(Before.open(BALL, "60"), BALL, 300);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void grown_one_by_one_it_is_the_graph_of_all(long seed) {
    Seeing seeing = seeing();
    List<View> views = views(seeing, new SplittableRandom(seed));
    GrowingGraph growing = new GrowingGraph(seeing, views.subList(0, 5));
    views.subList(5, VIEWS).forEach(growing::add);
    PairGraph whole = Coverage.graph(seeing, views);
    int ties = 0;
    for (int a = 0; a < VIEWS; a++) {
      for (int b = 0; b < a; b++) {
        assertThat(growing.graph().matchable(a, b)).isCloseTo(whole.matchable(a, b), within(1e-9));
        ties += whole.tied(a, b) ? 1 : 0;
      }
    }
    assertThat(ties).isBetween(1, VIEWS * (VIEWS - 1) / 2 - 1);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void a_patch_without_a_view_stands_as_if_it_had_never_been_taken(long seed) {
    Seeing seeing = seeing();
    List<View> views = views(seeing, new SplittableRandom(seed));
    Tally all = new Tally(seeing.limits(), seeing.surface().count());
    views.forEach(all::add);
    int changed = 0;
    for (int gone = 0; gone < VIEWS; gone++) {
      List<View> others = new ArrayList<>(views);
      others.remove(gone);
      Coverage rest = Coverage.of(seeing, others);
      for (int patch : views.get(gone).wells()) {
        Tally.State state = all.without(patch, gone);
        PatchViews anew = rest.patch(patch);
        assertThat(state.count()).isEqualTo(anew.views().size());
        assertThat(state.tied()).isEqualTo(anew.tied());
        if (state.count() > 0) {
          assertThat(state.patchClass()).isEqualTo(anew.patchClass());
        }
        changed += state.patchClass() == all.classOf(patch) ? 0 : 1;
      }
    }
    assertThat(changed).isPositive();
  }
}
