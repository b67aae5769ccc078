package ringbook.exercises;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;
import ringbook.units.Lengths;

/**
 * What is known of the variants that were tried: whether they make a good question and, if so, the
 * numbers that judging an answer needs. Most exercises have a few hundred variants and a class has
 * thousands of answers, so that most need not be worked out again. What is kept is a number or a
 * few for each variant, and no more variants than {@link #MOST}. Not for use by several threads.
 */
final class TriedVariants {

  private static final int MOST = 4096;
  private static final double[] UNUSABLE = {};

  private final Lengths lengths;
  private final List<Variation> variations;
  private final List<String> keys;
  private final Map<Long, double[]> tried = new LinkedHashMap<>();
  private final boolean countable;

  /** Nothing was tried yet of the variants of {@code exercise}. */
  TriedVariants(Exercise exercise, List<Variation> variations) {
    this.lengths = exercise.reckoning().scene().aim().lengths();
    this.variations = variations;
    this.keys = needed(exercise.task());
    double all = 1;
    for (Variation variation : variations) {
      all *= variation.count();
    }
    this.countable = all < Long.MAX_VALUE;
  }

  /** What is asked for, and all that its slips are worked out from. */
  private static List<String> needed(Task task) {
    Set<String> keys = new LinkedHashSet<>();
    if (task instanceof NumberTask number) {
      keys.add(number.quantity());
      number.slips().forEach(slip -> keys.addAll(slip.way().keys()));
    }
    return new ArrayList<>(keys);
  }

  /** One way of trying a variant. */
  @FunctionalInterface
  interface Trial {
    /** The variant's quantities, if it makes a good question. */
    Optional<Reckoning> usable();
  }

  /**
   * The quantities of a variant that makes a good question.
   *
   * @param picks the place of the value that each variation takes
   * @param scene makes the scene of a variant that is known to be possible
   * @param trial tries it, if that was not done before
   */
  Optional<Reckoning> usable(int[] picks, Supplier<Scene> scene, Trial trial) {
    if (!countable) {
      return trial.usable();
    }
    Long place = place(picks);
    double[] known = tried.get(place);
    if (known != null) {
      return known == UNUSABLE
          ? Optional.empty()
          : Optional.of(Reckoning.resumed(lengths, scene, keys, known));
    }
    Optional<Reckoning> usable = trial.usable();
    if (tried.size() < MOST) {
      tried.put(place, usable.map(this::numbers).orElse(UNUSABLE));
    }
    return usable;
  }

  /** Where the variant stands if all are numbered. */
  private long place(int[] picks) {
    long place = 0;
    for (int i = 0; i < picks.length; i++) {
      place = place * variations.get(i).count() + picks[i];
    }
    return place;
  }

  private double[] numbers(Reckoning reckoning) {
    double[] numbers = new double[keys.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] =
          reckoning.of(keys.get(i)) instanceof Outcome.Known known ? known.si() : Double.NaN;
    }
    return numbers;
  }
}
