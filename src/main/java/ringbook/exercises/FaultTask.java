package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import ringbook.ledger.Formula;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.units.Dimension;
import ringbook.units.Words;

/**
 * Shows a table, settings or a plan in which one value is wrong, and asks which. All values come
 * from the ledger, so the others are certainly right; the wrong one comes from a wrong way and is
 * certain to differ ({@link #blur}). Where the right value is asked for, whoever works it out from
 * the printed numbers is right too ({@link PrintedNumbers}).
 *
 * @param items from three to {@link ChoiceTask#MOST}
 * @param faults what may be wrong, each of them enough; the book takes the first
 * @param chosen which of the faults is in
 * @param mend whether the right value is asked for too
 * @param tolerance how far the right value may be off, as in {@link NumberTask}
 * @param told what may be the keys of quantities that the question prints besides the items
 */
public record FaultTask(
    List<Item> items,
    List<Fault> faults,
    int chosen,
    boolean mend,
    OptionalDouble tolerance,
    List<String> told)
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

    /** The quantity that its value is, where it is one. */
    Optional<String> key() {
      String notation = Words.trimmed(value.notation());
      return value.keys().equals(List.of(notation)) ? Optional.of(notation) : Optional.empty();
    }

    private String text(Formula formula, Reckoning reckoning) {
      return printed(like, reckoning).text(FaultTask.value(formula, reckoning));
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
    told = List.copyOf(told);
    if (items.size() < FEWEST || items.size() > ChoiceTask.MOST || chosen >= faults.size()) {
      throw new IllegalArgumentException("3 to 9 items and a fault are needed");
    }
  }

  /** A task whose question tells nothing else; {@link Exercise} lets it know what it tells. */
  public FaultTask(List<Item> items, List<Fault> faults, int chosen, boolean mend) {
    this(items, faults, chosen, mend, OptionalDouble.empty(), List.of());
  }

  /** The same with the fault at {@code other} in. */
  public FaultTask with(int other) {
    return new FaultTask(items, faults, other, mend, tolerance, told);
  }

  @Override
  public FaultTask told(List<String> keys) {
    return new FaultTask(items, faults, chosen, mend, tolerance, keys);
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

  /** As what is shown is printed: as finely as sums need it. */
  private static Quantity printed(String like, Reckoning reckoning) {
    return reckoning.forQuestions().ledger().get(like);
  }

  private static double value(Formula formula, Reckoning reckoning) {
    return formula.value(key -> ((Outcome.Known) reckoning.of(key)).si());
  }

  /** The right value of the item that is wrong, in SI. */
  double truth(Reckoning reckoning) {
    return value(wrongItem().value(), reckoning);
  }

  /** What is as good as the right value where fault {@code number}, from 0, is in; in SI. */
  Spread spread(int number, Reckoning reckoning) {
    Item item = items.get(faults.get(number).item());
    PrintedNumbers printed = printed(number, reckoning);
    Spread spread = printed.of(item.value());
    boolean counted = reckoning.ledger().get(item.like()).unit().dimension() == Dimension.COUNT;
    return counted ? spread : spread.with(item.key().map(printed::back).orElse(spread));
  }

  /** What the question prints where that fault is in; the item that is wrong tells nothing. */
  private PrintedNumbers printed(int number, Reckoning reckoning) {
    PrintedNumbers printed = new PrintedNumbers(reckoning);
    for (int i = 0; i < items.size(); i++) {
      Item item = items.get(i);
      if (i != faults.get(number).item()) {
        Quantity like = printed(item.like(), reckoning);
        item.key()
            .ifPresentOrElse(key -> printed.add(key, like), () -> printed.add(item.value(), like));
      }
    }
    for (String key : told) {
      reckoning.forQuestions().ledger().find(key).ifPresent(like -> printed.add(key, like));
    }
    return printed;
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
  public List<String> listed() {
    List<String> keys = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      if (i != fault().item()) {
        items.get(i).key().filter(items.get(i).like()::equals).ifPresent(keys::add);
      }
    }
    return keys;
  }

  @Override
  public Optional<String> worked() {
    return wrongItem().key().filter(wrongItem().like()::equals);
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
      double right = value(item.value(), reckoning);
      double wrong = value(faults.get(i).way(), reckoning);
      PrintedNumbers printed = printed(i, reckoning);
      Spread spread = spread(i, reckoning);
      Spread off = printed.of(faults.get(i).way());
      for (double way : new double[] {wrong, off.low(), off.high()}) {
        if (SlipsApart.same(like, right, spread, way, tolerance)) {
          return Optional.of(
              "fault " + (i + 1) + " cannot be seen: " + like.text(way) + " passes for right");
        }
      }
    }
    return Optional.empty();
  }

  @Override
  public String answerHint(Reckoning reckoning) {
    return mend
        ? "the letter of what is wrong, and its right value, such as "
            + reckoning.scene().aim().lengths().either("b 12 cm", "b 5 in")
        : "the letter of what is wrong";
  }

  @Override
  public String answerText(Reckoning reckoning) {
    Quantity like = reckoning.ledger().get(wrongItem().like());
    return Letters.of(fault().item()) + " " + like.text(truth(reckoning));
  }

  @Override
  public FaultTask worded(UnaryOperator<Wording> change) {
    List<Item> named = new ArrayList<>();
    for (Item item : items) {
      named.add(new Item(change.apply(item.name()), item.value(), item.like()));
    }
    List<Fault> why = new ArrayList<>();
    for (Fault fault : faults) {
      why.add(new Fault(fault.item(), fault.way(), change.apply(fault.because())));
    }
    return new FaultTask(named, why, chosen, mend, tolerance, told);
  }

  @Override
  public FaultTask reordered(SeededDraw draw, boolean book) {
    return book ? this : with(draw.below(faults.size()));
  }

  @Override
  public Verdict judge(String written, Reckoning reckoning) {
    return FaultJudge.judge(this, written, reckoning);
  }
}
