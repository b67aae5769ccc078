package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SeededDrawTest {

  private static final BigInteger WORD = BigInteger.ONE.shiftLeft(64);

  /** Published test vectors: draft-eastlake-fnv, appendix with FNV-1a 64-bit values. */
  @ParameterizedTest
  @CsvSource({"'',cbf29ce484222325", "a,af63dc4c8601ec8c", "foobar,85944171f73967e8"})
  void the_text_becomes_the_published_number(String text, String hex) {
    assertThat(Long.toHexString(SeededDraw.hash(text))).isEqualTo(hex);
  }

  /** FNV-1a by its definition over the JDK's own UTF-8 bytes, with whole numbers of any length. */
  @ParameterizedTest
  @ValueSource(strings = {"Zoë", "Łucja", "東京", "a\uD83D\uDC26b", "learner 7"})
  void other_letters_go_in_as_utf8(String text) {
    BigInteger hash = new BigInteger("14695981039346656037");
    for (byte octet : text.getBytes(StandardCharsets.UTF_8)) {
      hash = hash.xor(BigInteger.valueOf(octet & 0xff));
      hash = hash.multiply(new BigInteger("1099511628211")).mod(WORD);
    }
    assertThat(SeededDraw.hash(text)).isEqualTo(hash.longValue());
  }

  /**
   * The first numbers of the public-domain reference code splitmix64.c (S. Vigna, 2015) for the
   * state 1234567, as published with it in several languages; from memory, and proved by the next
   * test.
   */
  @Test
  void gives_the_published_numbers() {
    SeededDraw draw = new SeededDraw(1234567);
    for (String number :
        new String[] {
          "6457827717110365317",
          "3203168211198807973",
          "9817491932198370423",
          "4593380528125082431",
          "16408922859458223821"
        }) {
      assertThat(Long.toUnsignedString(draw.next())).isEqualTo(number);
    }
  }

  /** The JDK's SplittableRandom is SplitMix64, written by two of the authors of the paper. */
  @ParameterizedTest
  @ValueSource(longs = {0, 1, -1, 42, Long.MIN_VALUE, 0x123456789abcdefL})
  void gives_the_numbers_of_the_reference_library(long seed) {
    SeededDraw ours = new SeededDraw(seed);
    SplittableRandom theirs = new SplittableRandom(seed);
    for (int i = 0; i < 10_000; i++) {
      assertThat(ours.next()).isEqualTo(theirs.nextLong());
    }
  }

  /**
   * Chi-square with 6 degrees of freedom: below 22.46 for all but one in a thousand (NIST/SEMATECH
   * e-Handbook of Statistical Methods, 1.3.6.7.4, table of upper critical values).
   */
  @Test
  void every_number_below_the_bound_comes_equally_often() {
    SeededDraw draw = SeededDraw.of("seven");
    int[] counts = new int[7];
    for (int i = 0; i < 70_000; i++) {
      counts[draw.below(7)]++;
    }
    double chiSquare = 0;
    for (int count : counts) {
      chiSquare += (count - 10_000.0) * (count - 10_000.0) / 10_000.0;
    }
    assertThat(chiSquare).isLessThan(22.46);
  }

  @Test
  void bounds_of_every_size_are_kept() {
    SeededDraw draw = SeededDraw.of("bounds");
    for (int bound : new int[] {1, 2, 3, 64, 65, 1 << 30, Integer.MAX_VALUE}) {
      for (int i = 0; i < 100; i++) {
        assertThat(draw.below(bound)).isBetween(0, bound - 1);
      }
    }
    assertThatThrownBy(() -> draw.below(0)).isInstanceOf(IllegalArgumentException.class);
  }

  /** 4! = 24 orders; chi-square with 23 degrees of freedom is below 49.73 (the same table). */
  @Test
  void all_orders_come_equally_often() {
    SeededDraw draw = SeededDraw.of("orders");
    TreeMap<String, Integer> counts = new TreeMap<>();
    for (int i = 0; i < 24_000; i++) {
      counts.merge(draw.order(4).toString(), 1, Integer::sum);
    }
    assertThat(counts).hasSize(24);
    double chiSquare =
        counts.values().stream().mapToDouble(n -> (n - 1000.0) * (n - 1000.0) / 1000.0).sum();
    assertThat(chiSquare).isLessThan(49.73);
    assertThat(new TreeSet<>(draw.order(9))).containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8);
  }
}
