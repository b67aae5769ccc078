package ringbook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ringbook.checks.CheckValues.Row;
import ringbook.ledger.Ledger;
import ringbook.ledger.Quantity;

/**
 * Every computed entry of the ledger names what proves it: the id of a row in a data file beside
 * {@link CheckValues}, or {@code test:} and the name of a test class that works it out by a second
 * route. Both must be there.
 */
final class CheckedByTest {

  /** Computed entries that nothing outside can prove, each with its reason. */
  private static final Map<String, String> EXCEPTIONS = new TreeMap<>();

  static {
    EXCEPTIONS.put("check.glance", "our own choice of a time, common practice");
    EXCEPTIONS.put("check.look", "our own choice of a time, common practice");
    EXCEPTIONS.put("handover.copies", "the three of the 3-2-1 rule, common practice");
    EXCEPTIONS.put("fitness.matt", "the word the scene states for the surface, looked up");
    EXCEPTIONS.put("fitness.opaque", "the word the scene states for the surface, looked up");
    EXCEPTIONS.put("fitness.textured", "the word the scene states for the surface, looked up");
    EXCEPTIONS.put("fitness.score", "a count of our own reasons; not a fact of the world");
    EXCEPTIONS.put("fitness.fit", "our own summing up of three entries that are checked");
  }

  @Test
  void every_computed_entry_names_a_check_or_is_a_stated_exception() {
    List<String> unchecked = new ArrayList<>();
    for (Quantity quantity : Ledger.standard().quantities()) {
      boolean given = quantity.definition() instanceof Quantity.Given;
      if (!given && quantity.checks().isEmpty()) {
        unchecked.add(quantity.key());
      }
    }
    assertThat(unchecked).containsExactlyInAnyOrderElementsOf(EXCEPTIONS.keySet());
  }

  @Test
  void many_entries_say_how_and_whence_and_what_proves_them() {
    long complete =
        Ledger.standard().quantities().stream()
            .filter(quantity -> !(quantity.definition() instanceof Quantity.Given))
            .filter(quantity -> quantity.formula().isPresent() || !rule(quantity).isBlank())
            .filter(quantity -> quantity.unit() != null && !quantity.source().isBlank())
            .filter(quantity -> !quantity.checks().isEmpty())
            .count();
    assertThat(complete).isGreaterThanOrEqualTo(120);
  }

  private static String rule(Quantity quantity) {
    return quantity.definition() instanceof Quantity.ByRule by ? by.rule() : "";
  }

  @Test
  void every_check_an_entry_names_exists() throws IOException {
    Set<String> known = new TreeSet<>();
    for (String file : CheckValues.FILES) {
      for (Row row : CheckValues.read(file)) {
        assertThat(known.add(row.id())).as("only one row " + row.id()).isTrue();
      }
    }
    Map<String, String> tests = testClasses();
    known.addAll(tests.keySet());
    List<String> unknown = new ArrayList<>();
    for (Quantity quantity : Ledger.standard().quantities()) {
      for (String id : quantity.checks()) {
        boolean routes = id.endsWith("RoutesTest");
        String quoted = '"' + quantity.key() + '"';
        if (!known.contains(id) || (routes && !tests.get(id).contains(quoted))) {
          unknown.add(quantity.key() + " names " + id);
        }
      }
    }
    assertThat(unknown).isEmpty();
  }

  @Test
  void every_row_names_its_source_and_its_grade() {
    for (String file : CheckValues.FILES) {
      for (Row row : CheckValues.read(file)) {
        assertThat(row.source()).as(row.id()).isNotBlank();
        assertThat(row.grade()).as(row.id()).isIn("A", "B", "library", "own", "practice", "memory");
      }
    }
  }

  /** Text of every test class, by {@code test:} and its name. */
  private static Map<String, String> testClasses() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of("src/test/java"))) {
      files = all.filter(file -> file.toString().endsWith("Test.java")).toList();
    }
    Map<String, String> texts = new TreeMap<>();
    for (Path file : files) {
      String name = file.getFileName().toString();
      texts.put("test:" + name.substring(0, name.length() - 5), Files.readString(file));
    }
    return texts;
  }
}
