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

  @Test
  void every_check_an_entry_names_is_in_a_file() {
    Set<String> known = new TreeSet<>();
    for (String file : List.of("check-values.csv", "exposure.csv")) {
      for (Row row : CheckValues.read(file)) {
        known.add(row.id());
      }
    }
    List<String> unknown = new ArrayList<>();
    for (Quantity quantity : Ledger.standard().quantities()) {
      for (String id : quantity.checks()) {
        if (!known.contains(id) && CheckRow.of(id) == null) {
          unknown.add(quantity.key() + " names " + id);
        }
      }
    }
    assertThat(unknown).isEmpty();
  }
}
