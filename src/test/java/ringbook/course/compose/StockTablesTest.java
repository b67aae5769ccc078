package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;
import ringbook.values.ExpressionFault;
import ringbook.values.Expressions;
import ringbook.values.Value;

/** Tables that are worked out from the ledger. */
final class StockTablesTest {

  private static final Pattern ROW = Pattern.compile("<tr( class=\"own\")?>(<td.*?)</tr>");
  private static final Pattern CELL = Pattern.compile("<td[^>]*><span[^>]*>([^<]*)</span></td>");
  private static final Pattern VALUE = Pattern.compile("data-value=\"([^\"]*)\">([^<]*)</span>");

  static List<String> names() {
    return StockTables.names();
  }

  private static List<List<String>> rows(String name) {
    List<List<String>> rows = new ArrayList<>();
    String table = StockTables.write(name, "About.", Reckoning.of(Scenes.pot()));
    for (MatchResult row : ROW.matcher(table).results().toList()) {
      rows.add(CELL.matcher(row.group(2)).results().map(cell -> cell.group(1)).toList());
    }
    return rows;
  }

  /** A full turn is 360°: by hand. */
  @Test
  void steps_and_photographs_make_a_full_turn() {
    for (List<String> row : rows("ring-counts")) {
      double step = Double.parseDouble(row.get(0).replace("°", ""));
      assertThat(Double.parseDouble(row.get(1))).as("%s", row).isEqualTo(Math.ceil(360 / step));
    }
  }

  /** Lamps pulse twice a period: at 50 Hz 1/100 s is one pulse, at 60 Hz 1/120 s; by hand. */
  @Test
  void safe_times_are_those_of_whole_pulses() {
    for (List<String> row : rows("lamp-times")) {
      double time = 1 / Double.parseDouble(row.get(0).substring(2).replace("\u00a0s", ""));
      for (int i = 0; i < 2; i++) {
        double pulses = 2 * List.of(50, 60).get(i) * time;
        boolean whole = Math.abs(pulses - Math.rint(pulses)) < 1e-9;
        assertThat(row.get(2 + 2 * i)).as("%s", row).isEqualTo(whole ? "yes" : "no");
      }
    }
  }

  /** The rule of thumb: one over the 35 mm equivalent; common practice. */
  @Test
  void the_old_rule_is_one_over_the_equivalent() {
    List<String> fifty =
        rows("hand-times").stream().filter(r -> r.get(0).startsWith("50")).toList().get(0);
    assertThat(fifty.get(4)).isEqualTo("1/50\u00a0s");
  }

  /** Pages fill the cells anew for a reader's scene: the same expressions must give the same. */
  @ParameterizedTest
  @MethodSource("names")
  void every_cell_says_what_it_is_worked_out_from(String name) throws ExpressionFault {
    Expressions values = new Expressions(Reckoning.of(Scenes.pot()), Map.of());
    String table = StockTables.write(name, "About.", Reckoning.of(Scenes.pot()));
    List<MatchResult> cells = VALUE.matcher(table).results().toList();
    assertThat(cells).hasSizeGreaterThan(10);
    for (MatchResult cell : cells) {
      String expression = cell.group(1).replace("&quot;", "\"");
      Value.OfQuantity value = (Value.OfQuantity) values.evaluate(expression);
      assertThat(value.text()).as(expression).isEqualTo(cell.group(2));
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void every_table_marks_the_scene_itself_once(String name) {
    String table = StockTables.write(name, "About.", Reckoning.of(Scenes.pot()));
    assertThat(ROW.matcher(table).results().filter(row -> row.group(1) != null)).hasSize(1);
    assertThat(rows(name)).hasSizeGreaterThan(3).allSatisfy(row -> assertThat(row).isNotEmpty());
  }
}
