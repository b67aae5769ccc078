package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ringbook.charts.ColumnChart;
import ringbook.charts.Columns;
import ringbook.charts.Columns.Column;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Tick;
import ringbook.figures.Ink;
import ringbook.site.Sights;

/** Colours of lines as people see them who lack a kind of cone, and in grey. */
final class ColourVisionTest {

  /** Lightest and darkest of neighbours; our own limit, no source. */
  private static final double APART = 1.15;

  private static final Pattern RECTANGLE = Pattern.compile("<rect [^>]*class=\"([^\"]*)\"");

  private static final List<String> SERIES = List.of("ink", "second", "accent", "third");

  @Test
  void white_stays_white() {
    Sights.ALL.forEach(
        (name, sight) ->
            assertThat(Sights.seen("#ffffff", sight)).as(name).isBetween(0.999, 1.001));
  }

  @Test
  void inks_of_series_differ_in_lightness_for_everybody() throws IOException {
    Map<String, String> book = new LinkedHashMap<>();
    for (Ink ink : List.of(Ink.INK, Ink.SECOND, Ink.ACCENT, Ink.THIRD)) {
      book.put(SERIES.get(book.size()), ink.colour());
    }
    apart("book", book);
    List<Map<String, String>> versions = PaletteTest.versions();
    apart("light", versions.get(0));
    apart("dark", versions.get(1));
  }

  /** WCAG 2.2, 1.4.11 and 1.4.3, as everybody sees it: columns by their edges, one set of them. */
  @Test
  void columns_of_a_class_are_seen_by_everybody_and_not_by_colour() throws IOException {
    Axis across = new Axis("share, %", 0, 100, List.of(new Tick(0, "0"), new Tick(100, "100")));
    Axis up = new Axis("learners", 0, 4, List.of(new Tick(0, "0"), new Tick(4, "4")));
    List<Column> columns = List.of(new Column(0, 50, 3, "three"), new Column(50, 100, 1, "one"));
    List<String> head = List.of("share", "learners");
    String svg =
        ColumnChart.of(new Columns("Points", "", across, up, columns, head, List.of()), "x").svg();
    assertThat(svg).contains(">three</text>", ">one</text>");
    List<String> pens = RECTANGLE.matcher(svg).results().map(found -> found.group(1)).toList();
    assertThat(pens).isNotEmpty().allMatch(pen -> "fig-fill-tone-3 fig-accent".contains(pen));
    for (Map<String, String> colours : PaletteTest.versions()) {
      Sights.ALL.forEach(
          (name, sight) -> {
            double card = Sights.seen(colours.get("card"), sight);
            double edge = Sights.seen(colours.get("accent"), sight);
            double words = Sights.seen(colours.get("ink"), sight);
            assertThat(Sights.ratio(edge, card)).as(name).isGreaterThan(3);
            assertThat(Sights.ratio(words, card)).as(name).isGreaterThan(4.5);
          });
    }
  }

  private static void apart(String where, Map<String, String> colours) {
    for (int one = 0; one < SERIES.size(); one++) {
      for (int other = one + 1; other < SERIES.size(); other++) {
        String a = colours.get(SERIES.get(one));
        String b = colours.get(SERIES.get(other));
        String pair = where + ": " + SERIES.get(one) + " and " + SERIES.get(other);
        Sights.ALL.forEach(
            (name, sight) ->
                assertThat(Sights.ratio(Sights.seen(a, sight), Sights.seen(b, sight)))
                    .as("%s, %s", pair, name)
                    .isGreaterThan(APART));
      }
    }
  }
}
