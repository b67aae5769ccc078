package ringbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ringbook.checks.CheckValues.Row;

/**
 * Holds our results against the rows of one file of outside values. A test class names the file and
 * says, id by id, how we compute the value; a row without a way to compute it fails, and so does a
 * way without a row.
 */
public abstract class CheckTable {

  /** Computes the components of a row, in the row's units. */
  @FunctionalInterface
  public interface Way {
    double[] of(Row row);
  }

  private final Map<String, Way> ways = new TreeMap<>();

  /** The file beside {@link CheckValues}. */
  protected abstract String file();

  /** Says how every row is computed, with {@link #check} and {@link #checkAll}. */
  protected abstract void table();

  /** These rows have one number each, computed so. */
  protected final void check(ToDoubleFunction<Row> way, String... ids) {
    checkAll(row -> new double[] {way.applyAsDouble(row)}, ids);
  }

  /** These rows have several components each, computed so. */
  protected final void checkAll(Way way, String... ids) {
    for (String id : ids) {
      assertThat(ways.put(id, way)).as("two ways for " + id).isNull();
    }
  }

  @TestFactory
  Stream<DynamicTest> agrees_with_the_value_of() {
    table();
    return CheckValues.read(file()).stream()
        .map(row -> DynamicTest.dynamicTest(row.id() + " " + row.topic(), () -> verify(row)));
  }

  @Test
  void every_row_is_used_and_every_way_has_its_row() {
    table();
    List<String> ids = new ArrayList<>();
    for (Row row : CheckValues.read(file())) {
      ids.add(row.id());
    }
    assertThat(ids).containsExactlyInAnyOrderElementsOf(ways.keySet());
  }

  private void verify(Row row) {
    Way way = ways.get(row.id());
    if (row.expected().get(0).equals("refuse")) {
      assertThatIllegalArgumentException().as(row.source()).isThrownBy(() -> way.of(row));
      return;
    }
    agrees(row, way.of(row));
  }

  /** Fails unless our numbers agree with the row within its tolerance. */
  public static void agrees(Row row, double... found) {
    assertThat(found).as(row.source()).hasSameSizeAs(row.expected());
    for (int i = 0; i < found.length; i++) {
      double expected = CheckValues.number(row.expected().get(i));
      if (found[i] != expected) {
        // Printed values end in ...5: a hair more than half a digit is forgiven.
        assertThat(found[i])
            .as(row.source())
            .isCloseTo(expected, within(row.tolerance() * (1 + 1e-9)));
      }
    }
  }
}
