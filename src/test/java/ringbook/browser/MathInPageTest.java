package ringbook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.Scenes;
import ringbook.course.typeset.MathMl;
import ringbook.ledger.Ledger;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.site.Browser;

/**
 * The e-book's formulas and those that a page typesets anew are written twice, {@link MathMl} and
 * {@code math.js}: both must give the same elements for every formula of the ledger.
 */
final class MathInPageTest {

  /** Gives what the page makes otherwise: the formula, what it made, what was wanted. */
  private static final String COMPARE =
      "return arguments[0].map((tex, i) => {"
          + " const wanted = new DOMParser().parseFromString(arguments[1][i], 'application/xml')"
          + ".documentElement;"
          + " const made = RingbookMath.line(tex, 'x').querySelector('math');"
          + " const inside = e => Array.from(e.childNodes).map("
          + "n => new XMLSerializer().serializeToString(n)).join('');"
          + " const same = made.childNodes.length === wanted.childNodes.length"
          + " && Array.from(made.childNodes).every((n, k) => n.isEqualNode(wanted.childNodes[k]));"
          + " return same ? '' : tex + '\\n' + inside(made) + '\\n' + inside(wanted);"
          + " }).filter(Boolean)";

  @TempDir Path folder;

  @Test
  void page_and_book_write_every_formula_of_the_ledger_alike() throws IOException {
    List<String> formulas = formulas();
    assertThat(formulas).hasSizeGreaterThan(600);
    List<String> written =
        formulas.stream().map(tex -> MathMl.of(tex, "x", true).orElseThrow()).toList();
    try (InputStream in = getClass().getResourceAsStream("/ringbook/site/js/math.js")) {
      Files.copy(in, folder.resolve("math.js"));
    }
    Path page = folder.resolve("page.html");
    Files.writeString(
        page,
        "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Formulas</title>"
            + "<script src=\"math.js\"></script>");
    try (Browser browser = Browser.start()) {
      browser.open(page);
      assertThat((List<?>) browser.run(COMPARE, formulas, written)).isEmpty();
      assertThat((List<?>) browser.run(COMPARE, List.of("a^2"), List.of(written.get(0))))
          .as("another formula is told")
          .hasSize(1);
    }
  }

  /** Symbols, formulas, and both with the numbers of some scenes put in. */
  private static List<String> formulas() {
    TreeSet<String> all = new TreeSet<>();
    for (Quantity quantity : Ledger.standard().quantities()) {
      all.add(quantity.symbol());
      for (Reckoning scene :
          List.of(Reckoning.of(Scenes.potWithHole()), Reckoning.of(Scenes.potWithLensCamera()))) {
        JsonTree working = JsonTree.read(WorkingJson.of(scene, quantity.key()));
        Stream.of("formula", "numbers", "result")
            .filter(working::has)
            .forEach(line -> all.add(working.at(line).text("tex")));
      }
    }
    all.remove("");
    return List.copyOf(all);
  }
}
