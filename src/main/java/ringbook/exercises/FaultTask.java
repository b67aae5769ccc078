package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import ringbook.ledger.Formula;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.units.Words;

/**
 * Shows a table, settings or a plan in which one value is wrong, and asks which. All values come
 * from the ledger, so the others are certainly right; the wrong one comes from a wrong way and is
 * certain to differ ({@link #blur}).
 *
 * @param items from three to {@link ChoiceTask#MOST}
 * @param faults what may be wrong, each of them enough; the book takes the first
 * @param chosen which of the faults is in
 * @param mend whether the right value is asked for too
 */
public record FaultTask(List<Item> items, List<Fault> faults, int chosen, boolean mend)
    implements Task {

  /** Fewer items are a choice. */
  public static final int FEWEST = 3;

  /**
   * One line of what is shown.
   *
   * @param name what it is
   * @param value its right value, over the ledger
   * @param like the quantity whose unit and rounding its value has
   */
  public record Item(Wording name, Formula value, String like) {

    /** The right value as printed. */
    public String text(Reckoning reckoning) {
      return text(value, reckoning);
    }

    private String text(Formula formula, Reckoning reckoning) {
      return reckoning.ledger().get(like).text(FaultTask.value(formula, reckoning));
    }
  }

  /**
   * What is wrong.
   *
   * @param item the place of its item, from 0
   * @param way where the wrong value comes from, over the ledger
   * @param because what is wrong with it
   */
  public record Fault(int item, Formula way, Wording because) {}

  public FaultTask {
    items = List.copyOf(items);
    faults = List.copyOf(faults);
    if (items.size() < FEWEST || items.size() > ChoiceTask.MOST || chosen >= faults.size()) {
      throw new IllegalArgumentException("3 to 9 items and a fault are needed");
    }
  }

  @Override
  public <T> T show(Cases<T> cases) {
    return cases.fault(this);
  }

  /** The fault that is in. */
  public Fault fault() {
    return faults.get(chosen);
  }

  /** The item that is wrong. */
  public Item wrongItem() {
    return items.get(fault().item());
  }

  /** The value of the item at {@code index} as it is shown: right, or wrong. */
  public String shown(int index, Reckoning reckoning) {
    Item item = items.get(index);
    return index == fault().item() ? item.text(fault().way(), reckoning) : item.text(reckoning);
  }

  private static double value(Formula formula, Reckoning reckoning) {
    return formula.value(key -> ((Outcome.Known) reckoning.of(key)).si());
  }

  /** The right value of the item that is wrong, in SI. */
  double truth(Reckoning reckoning) {
    return value(wrongItem().value(), reckoning);
  }

  @Override
  public void check(Reckoning reckoning) {
    unknown(reckoning)
        .ifPresent(
            reason -> {
              throw new IllegalArgumentException(reason);
            });
  }

  /** The first thing that has no value on this scene, in words. */
  public Optional<String> unknown(Reckoning reckoning) {
    List<Formula> formulas = new ArrayList<>();
    items.forEach(item -> formulas.add(item.value()));
    faults.forEach(fault -> formulas.add(fault.way()));
    for (Formula formula : formulas) {
      for (String key : formula.keys()) {
        if (reckoning.of(key) instanceof Outcome.Refused refused) {
          return Optional.of(key + " has no value: " + refused.reason());
        }
      }
      if (!(Math.abs(value(formula, reckoning)) < Double.POSITIVE_INFINITY)) {
        return Optional.of("'" + formula.notation() + "' comes to no number");
      }
    }
    return Optional.empty();
  }

  @Override
  public Optional<String> worked() {
    String like = wrongItem().like();
    return Words.trimmed(wrongItem().value().notation()).equals(like)
        ? Optional.of(like)
        : Optional.empty();
  }

  @Override
  public Optional<String> blur(Reckoning reckoning) {
    Optional<String> unknown = unknown(reckoning);
    if (unknown.isPresent()) {
      return unknown;
    }
    for (int i = 0; i < faults.size(); i++) {
      Item item = items.get(faults.get(i).item());
      Quantity like = reckoning.ledger().get(item.like());
      double wrong = value(faults.get(i).way(), reckoning);
      if (SlipsApart.same(like, value(item.value(), reckoning), wrong)) {
        return Optional.of(
            "fault " + (i + 1) + " cannot be seen: " + like.text(wrong) + " passes for right");
      }
    }
    return Optional.empty();
  }

  @Override
  public String answerHint(Reckoning reckoning) {
    return mend
        ? "the letter of what is wrong, and its right value, such as b 12 cm"
        : "the letter of what is wrong";
  }

  @Override
  public String answerText(Reckoning reckoning) {
    return Letters.of(fault().item()) + " " + wrongItem().text(reckoning);
  }

  @Override
  public FaultTask worded(UnaryOperator<Wording> change) {
    List<Item> named = new ArrayList<>();
    for (Item item : items) {
      named.add(new Item(change.apply(item.name()), item.value(), item.like()));
    }
    List<Fault> told = new ArrayList<>();
    for (Fault fault : faults) {
      told.add(new Fault(fault.item(), fault.way(), change.apply(fault.because())));
    }
    return new FaultTask(named, told, chosen, mend);
  }

  @Override
  public FaultTask reordered(SeededDraw draw, boolean book) {
    return book ? this : new FaultTask(items, faults, draw.below(faults.size()), mend);
  }

  @Override
  public Verdict judge(String written, Reckoning reckoning) {
    return FaultJudge.judge(this, written, reckoning);
  }
}
