package ringbook.exercises;

import java.util.List;
import java.util.Optional;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;

/**
 * What makes the scene of a variant no good for its question. Every rule gives the reason in words,
 * or nothing.
 */
final class VariantRules {

  private final Exercise stated;
  private final Variety variety;
  private final List<String> keys;

  /** The rules for the variants of {@code stated}. */
  VariantRules(Exercise stated, Variety variety) {
    this.stated = stated;
    this.variety = variety;
    this.keys = stated.keys();
  }

  /** Why the exercise of the book cannot be asked as its author states it. */
  Optional<String> againstStated() {
    return first(wanted(stated.reckoning()), blur(stated.reckoning()));
  }

  /** Why the variant over {@code reckoning} cannot be asked. */
  Optional<String> against(Reckoning reckoning) {
    Optional<String> unknown = unknown(reckoning);
    if (unknown.isPresent()) {
      return unknown;
    }
    return first(
        first(wanted(reckoning), blur(reckoning)),
        stated.task().asked().flatMap(key -> answer(reckoning.ledger().get(key), reckoning)));
  }

  /** Why answers that mean different things cannot be told apart. */
  private Optional<String> blur(Reckoning reckoning) {
    return first(
        stated.task().blur(reckoning),
        AlikeTexts.in(stated.task(), reckoning).map(AlikeTexts::reason));
  }

  private static Optional<String> first(Optional<String> one, Optional<String> other) {
    return one.isPresent() ? one : other;
  }

  /** Whatever the words show must have a value. */
  private Optional<String> unknown(Reckoning reckoning) {
    for (String key : keys) {
      if (reckoning.ledger().find(key).isPresent()
          && reckoning.of(key) instanceof Outcome.Refused refused) {
        return Optional.of(key + " has no value: " + refused.reason());
      }
    }
    return Optional.empty();
  }

  /** What the author wants of every scene. */
  private Optional<String> wanted(Reckoning reckoning) {
    if (variety.where().isPresent()) {
      for (String key : variety.where().get().keys()) {
        if (reckoning.of(key) instanceof Outcome.Refused refused) {
          return Optional.of(key + " has no value: " + refused.reason());
        }
      }
      double holds = variety.where().get().value(key -> ((Outcome.Known) reckoning.of(key)).si());
      if (!(Math.abs(holds) > 0)) {
        return Optional.of("'where' does not hold");
      }
    }
    Optional<String> asked = stated.task().asked();
    if (variety.sensible().isPresent()
        && asked.isPresent()
        && reckoning.of(asked.get()) instanceof Outcome.Known answer
        && !variety.sensible().get().contain(answer.si())) {
      return Optional.of(
          "the answer is not sensible: " + reckoning.ledger().get(asked.get()).text(answer.si()));
    }
    return Optional.empty();
  }

  /** The answer is a number other than 0, with the sign it has in the book, and told nowhere. */
  private Optional<String> answer(Quantity quantity, Reckoning reckoning) {
    double si = ((Outcome.Known) reckoning.of(quantity.key())).si();
    if (Math.abs(si) == Double.POSITIVE_INFINITY) {
      return Optional.of("the answer is endless");
    }
    boolean sameSign =
        stated.reckoning().of(quantity.key()) instanceof Outcome.Known known
            && (known.si() > 0) == (si > 0);
    if (si == 0 || !sameSign) {
      return Optional.of("the answer is " + quantity.text(si));
    }
    for (String key : stated.ask().keys()) {
      Optional<Quantity> told = reckoning.ledger().find(key);
      if (told.isPresent()
          && told.get().unit().dimension() == quantity.unit().dimension()
          && Tolerance.of(quantity, si, stated.task().tolerance())
              .takes(quantity.unit().fromSi(((Outcome.Known) reckoning.of(key)).si()))) {
        return Optional.of("the answer is the same as " + key + ", which the question tells");
      }
    }
    return Optional.empty();
  }
}
