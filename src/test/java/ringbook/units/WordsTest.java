package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Plurals of what is counted. */
final class WordsTest {

  @Test
  void one_has_no_plural_and_none_has() {
    assertThat(Words.count(0, "run")).isEqualTo("0 runs");
    assertThat(Words.count(1, "run")).isEqualTo("1 run");
    assertThat(Words.count(24, "photograph")).isEqualTo("24 photographs");
  }
}
