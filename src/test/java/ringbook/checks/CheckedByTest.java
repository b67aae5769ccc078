package ringbook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ringbook.checks.CheckValues.Row;
import ringbook.ledger.Ledger;
import ringbook.ledger.Quantity;

/** The ledger names the outside values that prove an entry; they must be there. */
final class CheckedByTest {

  private static final List<String> PREFIXES = List.of("kit.", "distance.", "sharp.");

  @Test
  void every_check_an_entry_names_is_in_a_file() {
    Set<String> known = new TreeSet<>();
    for (Row row : CheckValues.read("check-values.csv")) {
      known.add(row.id());
    }
    List<String> unknown = new ArrayList<>();
    for (Quantity quantity : Ledger.standard().quantities()) {
      if (PREFIXES.stream().anyMatch(quantity.key()::startsWith)) {
        for (String id : quantity.checks()) {
          if (!known.contains(id)) {
            unknown.add(quantity.key() + " names " + id);
          }
        }
      }
    }
    assertThat(unknown).isEmpty();
  }
}
