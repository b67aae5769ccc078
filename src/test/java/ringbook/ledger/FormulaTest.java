package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

final class FormulaTest {

  private static final Map<String, Double> VALUES = Map.of("a.x", 3.0, "a.y", 4.0);

  private static double value(String notation) {
    return Formula.of(notation).value(VALUES::get);
  }

  private static String text(String notation) {
    return Formula.of(notation).text(key -> key.substring(2));
  }

  @Test
  void follows_the_usual_order_of_operations() {
    assertThat(value("1 + 2 * 3 ^ 2")).isEqualTo(19);
    assertThat(value("(1 + 2) * 3 - 8 / 2 / 2")).isEqualTo(7);
    assertThat(value("2 ^ 3 ^ 2")).isEqualTo(512);
    assertThat(value("-2 ^ 2")).isEqualTo(-4);
    assertThat(value("10 - 3 - 2")).isEqualTo(5);
  }

  @Test
  void knows_keys_units_and_functions() {
    assertThat(value("sqrt(a.x ^ 2 + a.y ^ 2)")).isEqualTo(5);
    assertThat(value("sin(30deg)")).isCloseTo(0.5, within(1e-15));
    assertThat(value("ceil(360deg / 15deg)")).isEqualTo(24);
    assertThat(value("if(a.x < a.y, max(a.x, 7), inf)")).isEqualTo(7);
    assertThat(Formula.of("a.y + a.x * a.y").keys()).containsExactly("a.y", "a.x");
  }

  @Test
  void prints_no_more_brackets_than_needed() {
    assertThat(text("(a.x + a.y) * a.x")).isEqualTo("(x + y) · x");
    assertThat(text("a.x + (a.y * a.x)")).isEqualTo("x + y · x");
    assertThat(text("a.x / (a.y * a.x)")).isEqualTo("x / (y · x)");
    assertThat(text("a.x - (a.y - 1)")).isEqualTo("x − (y − 1)");
    assertThat(text("(a.x + 1) ^ 2")).isEqualTo("(x + 1)²");
    assertThat(text("360deg / a.x")).isEqualTo("360° / x");
  }

  @Test
  void brackets_a_time_that_is_a_fraction() {
    String text = Formula.of("a.x / a.y").text(key -> "1/60");
    assertThat(text).isEqualTo("1/60 / (1/60)");
  }

  @Test
  void typesets_fractions_and_powers() {
    String tex = Formula.of("a.x ^ 2 / (a.y * (1 + a.x))").tex(key -> key.substring(2), "\\,");
    assertThat(tex).isEqualTo("\\frac{x^{2}}{y\\,\\left(1+x\\right)}");
  }

  @Test
  void refuses_what_it_cannot_read() {
    assertThatThrownBy(() -> Formula.of("1 +")).hasMessageContaining("a value was expected");
    assertThatThrownBy(() -> Formula.of("sine(1)")).hasMessageContaining("no function is called");
    assertThatThrownBy(() -> Formula.of("2 3")).hasMessageContaining("nothing more");
  }
}
