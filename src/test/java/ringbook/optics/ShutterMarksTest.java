package ringbook.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringbook.units.Span;

final class ShutterMarksTest {

  @Test
  void engraved_names_are_within_seven_per_cent_of_the_exact_marks() {
    for (int step = -15; step <= 39; step++) {
      Span exact = ShutterMarks.third(step);
      assertThat(ShutterMarks.isMark(exact)).isTrue();
      assertThat(ShutterMarks.nominalSeconds(exact))
          .isCloseTo(exact.seconds(), within(0.07 * exact.seconds()));
    }
  }

  /** 1/125 s and 30 s: the names behind 1/128 s and 32 s, as on any dial; common practice. */
  @Test
  void calls_marks_by_their_names() {
    assertThat(ShutterMarks.name(ShutterMarks.third(21))).isEqualTo("1/125");
    assertThat(ShutterMarks.name(ShutterMarks.third(-15))).isEqualTo("30");
    assertThat(ShutterMarks.name(ShutterMarks.third(4))).isEqualTo("0.4");
  }

  @Test
  void a_mark_is_its_own_longest() {
    for (int step = -15; step <= 39; step++) {
      double mark = ShutterMarks.third(step).seconds();
      assertThat(ShutterMarks.notLonger(new Span(mark)).seconds())
          .isCloseTo(mark, within(1e-9 * mark));
      assertThat(ShutterMarks.notLonger(new Span(mark * 1.2)).seconds())
          .isCloseTo(mark, within(1e-9 * mark));
    }
  }

  @Test
  void no_mark_lies_beyond_the_ends_of_the_dial() {
    assertThat(ShutterMarks.isMark(ShutterMarks.third(-16))).isFalse();
    assertThat(ShutterMarks.isMark(ShutterMarks.third(40))).isFalse();
    assertThat(ShutterMarks.isMark(new Span(ShutterMarks.third(3).seconds() * 1.05))).isFalse();
  }
}
