package ringbook.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.units.Length;

/** Figures drawn from what the cameras see of the object. */
final class SeenFiguresTest {

  private static final Reckoning POT = Reckoning.of(Scenes.pot());

  private static Figure figure(String name, Reckoning reckoning) {
    return FigureShelf.draw(name, Map.of(), reckoning, "p");
  }

  @Test
  void the_base_is_at_the_bottom_of_the_map_and_unseen() {
    Figure map = figure("coverage-map", POT);
    var last = map.tableRows().get(map.tableRows().size() - 1);
    assertThat(last.get(0)).startsWith("base");
    assertThat(last.subList(1, 4)).containsExactly("0", "0.0", "0");
    assertThat(map.svg()).contains(Fill.TONE_5.styleClass());
  }

  @Test
  void neighbours_of_five_share_too_little() {
    Scene five = Scenes.with(Scenes.pot(), "aim.step", "72");
    String thirty = figure("ring-overlap", POT).tableRows().get(0).get(2);
    String few = figure("ring-overlap", Reckoning.of(five)).tableRows().get(0).get(2);
    assertThat(thirty).isEqualTo("35\u00a0%");
    assertThat(few).isEqualTo("0\u00a0%");
  }

  @Test
  void stations_that_see_nothing_for_a_screen_do_not_count() {
    List<Corner> corners = new ArrayList<>();
    for (double[] at : new double[][] {{0.3, -0.3}, {0.35, -0.3}, {0.35, 0.3}, {0.3, 0.3}}) {
      corners.add(new Corner(Length.ofMetres(at[0]), Length.ofMetres(at[1])));
    }
    Obstacle screen = new Obstacle("screen", corners);
    Scene screened = SceneDraft.of(Scenes.pot()).obstacles(List.of(screen)).build();
    List<String> neighbours = figure("ring-overlap", Reckoning.of(screened)).tableRows().get(0);
    assertThat(degrees(neighbours.get(2).replace("\u00a0", ""))).isBetween(30, 38);
    assertThat(degrees(neighbours.get(3).replace("\u00a0", ""))).isPositive();
  }

  @Test
  void rays_to_a_spot_meet_at_the_turn_measured_there() {
    // A step of 12° from the middle of the pot is more, seen from a spot nearer to the stations.
    Figure rays = figure("who-sees", POT);
    String smallest = rays.tableRows().get(2).get(1);
    String largest = rays.tableRows().get(3).get(1);
    int views = Integer.parseInt(rays.tableRows().get(1).get(1));
    assertThat(degrees(smallest)).isBetween(12, 18);
    assertThat(degrees(largest)).isGreaterThan(12 * (views - 1));
  }

  private static int degrees(String told) {
    return Integer.parseInt(told.substring(0, told.length() - 1));
  }

  @Test
  void more_photographs_are_more_precise() {
    Figure chart = figure("precision-count", POT);
    String first = chart.tableRows().get(0).get(2);
    String last = chart.tableRows().get(chart.tableRows().size() - 1).get(2);
    assertThat(Double.parseDouble(first.split("\u00a0", 2)[0]))
        .isGreaterThan(2 * Double.parseDouble(last.split("\u00a0", 2)[0]));
  }

  @Test
  void what_faces_the_table_is_seen_by_the_second_pose_alone() {
    Figure shares = figure("pose-shares", POT);
    assertThat(shares.tableRows()).hasSize(3); // a cylinder has a top, a side and a base
    var base = shares.tableRows().get(2);
    assertThat(base.subList(0, 3)).containsExactly("faces down", "0\u00a0%", "0\u00a0%");
    assertThat(percent(base.get(3))).isGreaterThan(50);
    for (var row : shares.tableRows()) {
      assertThat(row.subList(1, 5).stream().mapToInt(SeenFiguresTest::percent).sum())
          .isBetween(99, 101);
    }
  }

  private static int percent(String told) {
    return Integer.parseInt(told.split("\u00a0", 2)[0]);
  }
}
