package ringbook.exercises;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.ledger.Formula;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.NumberStyle;

/**
 * What comes out for somebody who puts in numbers as they are printed: a distance of 61.7 cm for
 * one of 61.66 cm. Each number that a question prints is put in as printed and unrounded, and where
 * everything that its own formula needs is printed too, also as that gives it; a number that is not
 * printed is worked out from what is. Not for use by several threads.
 */
final class PrintedNumbers {

  /** So many rounded numbers of one formula are varied; no formula of the ledger has more. */
  private static final int MOST = 10;

  /** Roundings are small, so that a few of Newton's steps lead back from a result. */
  private static final int STEPS = 8;

  private static final double SMALL = 1e-6;
  private static final double SAME = 1e-9;

  /**
   * A number that is printed.
   *
   * @param formula its value
   * @param like the quantity whose unit and rounding it has
   */
  private record Print(Formula formula, Quantity like) {}

  private final Reckoning reckoning;
  private final List<Print> results = new ArrayList<>();
  private final Map<String, List<Quantity>> printed = new LinkedHashMap<>();
  private final Map<String, Spread> found = new LinkedHashMap<>();

  PrintedNumbers(Reckoning reckoning) {
    this.reckoning = reckoning;
  }

  /** {@code key} is printed, in the unit and with the rounding of {@code like}. */
  void add(String key, Quantity like) {
    printed.computeIfAbsent(key, k -> new ArrayList<>()).add(like);
    formula(key).ifPresent(formula -> results.add(new Print(formula, like)));
  }

  /** What {@code formula}, more than a key, comes to is printed likewise. */
  void add(Formula formula, Quantity like) {
    results.add(new Print(formula, like));
  }

  /** Between which values, in SI, {@code formula} comes out; its keys have values. */
  Spread of(Formula formula) {
    Spread spread = Spread.of(formula.value(this::truth));
    if (formula.keys().stream().allMatch(key -> of(key).isPoint())) {
      return spread;
    }
    for (Map<String, Double> put : ends(formula)) {
      spread = spread.with(value(formula, put));
    }
    return spread;
  }

  /**
   * Between which values {@code key} lies for somebody who goes back to it from what is worked out
   * from it and printed: half of a diameter that is printed is the radius.
   */
  Spread back(String key) {
    Spread spread = Spread.of(truth(key));
    for (Print print : results) {
      List<String> keys = print.formula().keys();
      if (keys.contains(key) && keys.stream().allMatch(k -> k.equals(key) || isTold(k))) {
        double result = read(print.like(), print.formula().value(this::truth));
        for (Map<String, Double> put : ends(print.formula())) {
          spread = spread.with(solved(print.formula(), put, key, result));
        }
      }
    }
    return spread;
  }

  /** Where {@code formula} comes to {@code result}, near the true value of {@code key}. */
  private double solved(Formula formula, Map<String, Double> put, String key, double result) {
    double x = truth(key);
    double step = SMALL * Math.abs(x);
    for (int i = 0; i < STEPS; i++) {
      put.put(key, x + step);
      double above = value(formula, put);
      put.put(key, x - step);
      double below = value(formula, put);
      put.put(key, x);
      x -= (value(formula, put) - result) * 2 * step / (above - below);
    }
    put.put(key, x);
    boolean reached = Math.abs(value(formula, put) - result) <= SAME * Math.abs(result);
    return reached ? x : Double.NaN;
  }

  /** Every rounded number of {@code formula} at either of its ends, in all combinations. */
  private List<Map<String, Double>> ends(Formula formula) {
    List<String> rounded =
        formula.keys().stream().filter(key -> !of(key).isPoint()).limit(MOST).toList();
    List<Map<String, Double>> all = new ArrayList<>();
    for (int ends = 0; ends < 1 << rounded.size(); ends++) {
      Map<String, Double> put = new LinkedHashMap<>();
      for (int i = 0; i < rounded.size(); i++) {
        Spread of = of(rounded.get(i));
        put.put(rounded.get(i), (ends >> i & 1) == 0 ? of.low() : of.high());
      }
      all.add(put);
    }
    return all;
  }

  private double value(Formula formula, Map<String, Double> put) {
    return formula.value(key -> put.containsKey(key) ? put.get(key) : truth(key));
  }

  private Spread of(String key) {
    Spread known = found.get(key);
    if (known == null) {
      known = worked(key);
      found.put(key, known);
    }
    return known;
  }

  private Spread worked(String key) {
    Spread spread = Spread.of(truth(key));
    List<Quantity> likes = printed.getOrDefault(key, List.of());
    for (Quantity like : likes) {
      spread = spread.with(read(like, truth(key)));
    }
    Optional<Formula> formula = formula(key);
    boolean usable =
        formula.isPresent()
            && formula.get().keys().stream().allMatch(this::isKnown)
            && (likes.isEmpty() || formula.get().keys().stream().allMatch(this::isTold));
    return usable ? spread.with(of(formula.get())) : spread;
  }

  private Optional<Formula> formula(String key) {
    return reckoning.ledger().get(key).formula();
  }

  /** Whether the question prints it, or it is always the same. */
  private boolean isTold(String key) {
    return printed.containsKey(key) || formula(key).filter(f -> f.keys().isEmpty()).isPresent();
  }

  private boolean isKnown(String key) {
    return reckoning.of(key) instanceof Outcome.Known known
        && Math.abs(known.si()) < Double.POSITIVE_INFINITY;
  }

  private double truth(String key) {
    return ((Outcome.Known) reckoning.of(key)).si();
  }

  /** The number in SI as it is read from print. */
  private static double read(Quantity like, double si) {
    return MeasureReader.read(like.text(si), like.unit().dimension(), NumberStyle.POINT)
            instanceof MeasureReading.Read read
        ? read.measure().si()
        : si;
  }
}
