package ringbook.ledger;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import ringbook.shots.Scene;
import ringbook.units.Angle;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Lengths;

/**
 * The quantities of one scene, each worked out once, when first asked for. Not for use by several
 * threads.
 */
public final class Reckoning {

  private final Ledger ledger;
  private final Supplier<Scene> source;
  private final Map<String, Outcome> outcomes = new LinkedHashMap<>();
  private final Map<String, Set<String>> reads = new LinkedHashMap<>();
  private final Deque<String> underWay = new ArrayDeque<>();

  private Scene scene;

  private Reckoning(Ledger ledger, Supplier<Scene> source) {
    this.ledger = ledger;
    this.source = source;
  }

  /** The standard ledger for {@code scene}, lengths told as the scene says. */
  public static Reckoning of(Scene scene) {
    return new Reckoning(Ledger.in(scene.aim().lengths()), () -> scene);
  }

  /** The same numbers with lengths told in other measures. */
  public Reckoning told(Lengths lengths) {
    Ledger other = Ledger.in(lengths);
    return other == ledger ? this : new Reckoning(other, () -> scene().in(lengths));
  }

  /** The same numbers, told as finely as a question needs them. */
  public Reckoning forQuestions() {
    Ledger fine = ledger.forQuestions();
    return fine == ledger ? this : new Reckoning(fine, this::scene);
  }

  /** The same ledger, told in the same way, for another scene. */
  public Reckoning over(Scene other) {
    return new Reckoning(ledger, () -> other);
  }

  /**
   * A reckoning some of whose numbers were worked out before, so that the scene need not even be
   * made while nothing else is asked for.
   *
   * @param lengths in which measures lengths are told
   * @param scene makes the scene those numbers belong to
   * @param known their keys
   * @param si the numbers in SI, in the order of the keys; one that is no number was refused then
   *     and is worked out again when asked for
   */
  public static Reckoning resumed(
      Lengths lengths, Supplier<Scene> scene, List<String> known, double[] si) {
    Reckoning reckoning = new Reckoning(Ledger.in(lengths), scene);
    for (int i = 0; i < si.length; i++) {
      if (!Double.isNaN(si[i])) {
        reckoning.outcomes.put(known.get(i), new Outcome.Known(si[i]));
      }
    }
    return reckoning;
  }

  /** The scene. */
  public Scene scene() {
    if (scene == null) {
      scene = source.get();
    }
    return scene;
  }

  /** The ledger whose entries are worked out. */
  public Ledger ledger() {
    return ledger;
  }

  /**
   * What the entry comes to.
   *
   * @throws IllegalArgumentException if no entry has that key
   */
  public Outcome of(String key) {
    Outcome known = outcomes.get(key);
    if (known == null) {
      known = compute(ledger.get(key));
      outcomes.put(key, known);
    }
    return known;
  }

  /**
   * The number in SI, for the computing methods.
   *
   * @throws RefusedException if the scene does not allow it
   */
  public double si(String key) {
    if (!underWay.isEmpty()) {
      reads.computeIfAbsent(underWay.peek(), k -> new LinkedHashSet<>()).add(key);
    }
    if (of(key) instanceof Outcome.Known known) {
      return known.si();
    }
    throw new RefusedException((Outcome.Refused) of(key));
  }

  /** The same as a length. */
  public Length length(String key) {
    return new Length(si(key));
  }

  /** The same as an angle. */
  public Angle angle(String key) {
    return new Angle(si(key));
  }

  /** The same as an f-number. */
  public FNumber fNumber(String key) {
    return new FNumber(si(key));
  }

  /** The same as yes or no. */
  public boolean yes(String key) {
    return si(key) != 0;
  }

  /** The printed text of an entry with its unit, or the reason of the refusal. */
  public String text(String key) {
    return of(key) instanceof Outcome.Known known
        ? ledger.get(key).text(known.si())
        : ((Outcome.Refused) of(key)).reason();
  }

  /**
   * Which entries the method of {@code key} has read so far; for checking that the formula says the
   * same.
   */
  Set<String> readsOf(String key) {
    return reads.getOrDefault(key, Set.of());
  }

  private Outcome compute(Quantity quantity) {
    if (underWay.contains(quantity.key())) {
      throw new IllegalStateException("quantity " + quantity.key() + " hangs on itself");
    }
    underWay.push(quantity.key());
    try {
      double si = quantity.definition().method().compute(this);
      if (Double.isNaN(si)
          || (Math.abs(si) == Double.POSITIVE_INFINITY && !quantity.range().endless())) {
        throw new IllegalStateException("quantity " + quantity.key() + " came to no number");
      }
      return new Outcome.Known(si);
    } catch (RefusedException refused) {
      return refused.refusal();
    } finally {
      underWay.pop();
    }
  }
}
