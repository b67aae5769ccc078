package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Factors are those of the sources named line by line; the sources are quoted from memory. */
final class UnitTest {

  @ParameterizedTest
  @CsvFileSource(resources = "unit-factors.csv", numLinesToSkip = 1)
  void has_the_published_factor(Unit unit, double factor, double tolerance, String source) {
    assertThat(unit.toSi(1)).as(source).isCloseTo(factor, within(tolerance));
  }

  @ParameterizedTest
  @EnumSource
  void converts_there_and_back(Unit unit) {
    for (long seed = 1; seed <= 200; seed++) {
      double number = new SplittableRandom(seed).nextDouble(-1000, 1000);
      assertThat(unit.fromSi(unit.toSi(number)))
          .as("seed %d", seed)
          .isCloseTo(number, within(4 * Math.ulp(number)));
    }
  }

  @Test
  void decimal_units_give_the_double_a_person_would_write() {
    for (int n = 0; n <= 1000; n++) {
      assertThat(Length.ofCentimetres(n).metres()).isEqualTo(Double.parseDouble(n + "e-2"));
      assertThat(Length.ofMillimetres(n).metres()).isEqualTo(Double.parseDouble(n + "e-3"));
      assertThat(Length.ofMicrometres(n).metres()).isEqualTo(Double.parseDouble(n + "e-6"));
    }
  }

  @Test
  void values_refuse_what_cannot_be() {
    assertThatThrownBy(() -> new FNumber(0))
        .hasMessage("f-number must be a finite number above 0, got 0");
    assertThatThrownBy(() -> new Span(-0.5))
        .hasMessage("time must be a finite number of at least 0 s, got -0.5");
    assertThatThrownBy(() -> new Length(Double.NaN))
        .hasMessage("length in metres must be a finite number, got not a number");
    assertThatThrownBy(() -> new Angle(Double.POSITIVE_INFINITY))
        .hasMessage("angle in radians must be a finite number, got ∞");
    assertThatThrownBy(() -> Require.within("share", 0, 1, 1.5))
        .hasMessage("share must lie from 0 to 1, got 1.5");
    assertThatThrownBy(() -> new Measure(Double.NaN, Unit.METRE))
        .hasMessage("a measure must be a number");
  }

  @Test
  void lengths_and_angles_add_and_scale() {
    Length metre = Length.ofMetres(1);
    assertThat(metre.plus(Length.ofCentimetres(50))).isEqualTo(Length.ofMillimetres(1500));
    assertThat(metre.minus(Length.ofCentimetres(50)).times(3)).isEqualTo(Length.ofMetres(1.5));
    assertThat(metre.over(Length.ofMillimetres(1))).isEqualTo(1000);
    assertThat(metre).isGreaterThan(Length.ZERO);
    assertThat(Angle.RIGHT.times(4)).isEqualTo(Angle.FULL_TURN);
    assertThat(Angle.RIGHT.plus(Angle.RIGHT).minus(Angle.FULL_TURN).degrees()).isEqualTo(-180);
    assertThat(new Span(0.25)).isLessThan(Span.ofSeconds(0.5));
    assertThat(new FNumber(5.6)).isLessThan(new FNumber(8));
  }
}
