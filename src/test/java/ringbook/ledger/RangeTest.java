package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import ringbook.units.Lengths;
import ringbook.units.Unit;

/** Where values may lie, and how that reads. */
final class RangeTest {

  @Test
  void says_in_a_few_words_where_values_lie() {
    assertThat(Range.any().text(Unit.ONE)).isEqualTo("any number");
    assertThat(Range.above(0).text(Unit.CENTIMETRE)).isEqualTo("above 0");
    assertThat(Range.above(0).upTo(1).text(Unit.PERCENT)).isEqualTo("above 0 to 100\u00a0%");
    assertThat(Range.above(0).below(0.25).text(Unit.PERCENT)).isEqualTo("above 0, below 25\u00a0%");
    assertThat(Range.from(2).text(Unit.STOP)).isEqualTo("from 2\u00a0stops");
    assertThat(Range.from(1).orEndless().text(Unit.ONE)).isEqualTo("from 1, or ∞");
    assertThat(Range.degrees(-90, 90).text(Unit.DEGREE)).isEqualTo("−90° to 90°");
    assertThat(Range.wholeFrom(3).text(Unit.PIECE)).isEqualTo("whole, from 3");
    assertThat(Range.wholeBetween(0, 10).text(Unit.PIECE)).isEqualTo("whole, 0 to 10");
    assertThat(Range.between(380e-9, 780e-9).text(Unit.MICROMETRE))
        .isEqualTo("0.38 to 0.78\u00a0µm");
    assertThat(Range.between(1, 4).text(Unit.STOP)).isEqualTo("1 to 4\u00a0stops");
    assertThat(Range.any().upTo(1).text(Unit.STOP)).isEqualTo("up to 1\u00a0stop");
    assertThat(Range.between(0.7, 64).text(Unit.F_STOP)).isEqualTo("f/0.7 to f/64");
    assertThat(Range.between(0.0254, 0.9144).text(Unit.CENTIMETRE, Lengths.IMPERIAL))
        .isEqualTo("1\u00a0in to 3\u00a0ft");
    assertThat(Range.from(1).text(Unit.F_STOP)).isEqualTo("from f/1");
    assertThat(Range.above(0).text(Unit.F_STOP)).isEqualTo("above 0");
    assertThat(Range.any().upTo(2).text(Unit.ONE)).isEqualTo("up to 2");
    assertThat(Range.any().below(2).text(Unit.ONE)).isEqualTo("below 2");
    assertThat(Range.wholeBetween(0, 1).text(Unit.ANSWER)).isEqualTo("yes or no");
  }

  @Test
  void a_bound_belongs_to_it_only_where_it_says_so() {
    assertThat(Range.above(1).holds(1)).isFalse();
    assertThat(Range.above(1).holds(1.001)).isTrue();
    assertThat(Range.from(1).holds(1)).isTrue();
    assertThat(Range.from(1).holds(0.999)).isFalse();
    assertThat(Range.above(0).below(2).holds(2)).isFalse();
    assertThat(Range.above(0).upTo(2).holds(2)).isTrue();
    assertThat(Range.above(0).upTo(2).holds(2.001)).isFalse();
    assertThat(Range.any().holds(-1e300)).isTrue();
  }

  @Test
  void a_hair_beyond_a_possible_bound_is_forgiven() {
    assertThat(Range.between(0, 1).holds(1 + 1e-15)).isTrue();
    assertThat(Range.above(0).holds(-1e-300)).isFalse();
  }

  @Test
  void knows_whole_and_endless() {
    assertThat(Range.wholeFrom(1).holds(2.5)).isFalse();
    assertThat(Range.wholeFrom(1).holds(3)).isTrue();
    assertThat(Range.above(0).holds(Double.POSITIVE_INFINITY)).isFalse();
    assertThat(Range.above(0).orEndless().holds(Double.POSITIVE_INFINITY)).isTrue();
    assertThat(Range.above(0).orEndless().holds(Double.NEGATIVE_INFINITY)).isFalse();
    assertThat(Range.any().holds(Double.NaN)).isFalse();
  }
}
