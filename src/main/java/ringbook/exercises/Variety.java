package ringbook.exercises;

import java.util.List;
import java.util.Optional;
import ringbook.ledger.Formula;

/**
 * How an exercise differs from learner to learner, as its author states it.
 *
 * @param variations the inputs that differ; empty where nothing does
 * @param where what must hold for a variant to be a good question: a formula that is not 0; empty
 *     where anything will do
 * @param sensible between which values the answer must lie; empty where anything will do
 */
public record Variety(
    List<Variation> variations, Optional<Formula> where, Optional<Bounds> sensible) {

  /** Nothing differs. */
  public static final Variety NONE = new Variety(List.of(), Optional.empty(), Optional.empty());

  public Variety {
    variations = List.copyOf(variations);
  }

  /**
   * Two ends.
   *
   * @param low the smallest value, in SI
   * @param high the largest value, in SI
   */
  public record Bounds(double low, double high) {
    boolean contain(double si) {
      return si >= low && si <= high;
    }
  }
}
