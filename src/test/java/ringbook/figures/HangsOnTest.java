package ringbook.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;

/** What a measure taken a tenth too large does, by hand for the pot: 30 cm wide, 30 in a ring. */
final class HangsOnTest {

  private static final Map<String, List<String>> ROWS = rows();

  private static Map<String, List<String>> rows() {
    Figure figure = FigureShelf.draw("hangs-on", Map.of(), Reckoning.of(Scenes.pot()), "h");
    Map<String, List<String>> rows = new TreeMap<>();
    figure.tableRows().forEach(row -> rows.put(row.get(0), row.subList(1, row.size())));
    return rows;
  }

  @Test
  void a_longer_lens_stands_further_off_and_the_step_alone_sets_the_number_of_photographs() {
    // The standoff is in proportion to the focal length, less the focal length itself.
    assertThat(ROWS.get("Focal length").get(0)).isEqualTo("+10\u00a0%");
    // The near face asks for u = f (1 + W / (share of the side)): with W = 30 cm the 1 is 1.2 %.
    assertThat(ROWS.get("Share of frame").get(0)).isEqualTo("−9\u00a0%");
    // 360 / 13.2 = 27.3, so 28 photographs for 30.
    assertThat(ROWS.get("Turn")).containsExactly("0", "0", "0", "0", "−7\u00a0%");
    ROWS.forEach(
        (measure, row) -> assertThat(row.get(4).equals("0")).isEqualTo(!measure.equals("Turn")));
  }

  @Test
  void a_higher_table_lifts_the_lens_and_nothing_else() {
    // 7.4 cm of about 106 cm.
    assertThat(ROWS.get("Table height")).containsExactly("0", "0", "+7\u00a0%", "0", "0");
  }
}
