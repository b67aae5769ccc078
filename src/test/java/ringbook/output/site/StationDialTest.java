package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.output.MadeUpCourse;
import ringbook.output.site.StationDial.Tick;

final class StationDialTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 3, 16})
  void ticks_stand_evenly_on_the_ring_and_begin_at_the_top(int lessons) {
    List<Tick> ticks = dial(lessons, 0).ticks();
    assertThat(ticks).hasSize(lessons + 1);
    assertThat(ticks.get(0).x()).isEqualTo("0.00");
    assertThat(number(ticks.get(0).y())).isNegative();
    for (int i = 0; i < ticks.size(); i++) {
      Tick tick = ticks.get(i);
      assertThat(Math.hypot(number(tick.x()), number(tick.y())))
          .isCloseTo(StationDial.MARKS, within(0.01));
      double clockwise = Math.toDegrees(Math.atan2(number(tick.x()), -number(tick.y())));
      assertThat((clockwise + 360) % 360).isCloseTo(number(tick.turn()), within(0.01));
    }
  }

  private static double number(String text) {
    return Double.parseDouble(text);
  }

  @Test
  void exactly_the_current_station_is_marked() {
    StationDial dial = dial(5, 2);
    assertThat(dial.ticks().stream().filter(Tick::current).toList()).containsExactly(dial.here());
    assertThat(dial.here().station().mark()).isEqualTo("3");
    assertThat(dial(5, -1).here()).isNull();
    assertThat(dial(5, -1).ticks()).noneMatch(Tick::current);
  }

  @Test
  void the_walked_arc_ends_at_the_current_station() {
    assertThat(dial(3, 0).walked()).isEmpty();
    assertThat(dial(3, 1).walked()).isEqualTo("M0 -100A100 100 0 0 1 100.00 0.00");
    assertThat(dial(3, 3).walked()).isEqualTo("M0 -100A100 100 0 1 1 -100.00 0.00");
  }

  @Test
  void long_titles_are_broken_and_cut() {
    assertThat(lines("Sharp")).containsExactly("Sharp");
    assertThat(lines("One ring of photographs")).containsExactly("One ring of", "photographs");
    assertThat(lines("a b c d e f g h i j k l m n o p q r s t u v w x y z 1 2 3 4 5")).hasSize(4);
    assertThat(lines("a b c d e f g h i j k l m n o p q r s t u v w x y z 1 2 3 4 5 6 7 8"))
        .hasSize(4)
        .endsWith("…");
  }

  private static List<String> lines(String title) {
    Station station = new Station("1", "Station 1", title, "", "a.html");
    return StationDial.of(List.of(station), 0).ticks().get(0).lines();
  }

  private static StationDial dial(int lessons, int here) {
    return StationDial.of(Station.all(MadeUpCourse.large(lessons)), here);
  }
}
