package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import ringbook.ledger.Reckoning;

/**
 * Asks for the order of steps.
 *
 * <p>Marked by Kendall's rank correlation between the order written and the right one: 1 where they
 * are the same, 0 where as many pairs of steps stand right as wrong, which is what guessing gives
 * (M. G. Kendall, "A New Measure of Rank Correlation", Biometrika 30, 1938).
 *
 * @param steps in the right order, from three to {@link ChoiceTask#MOST}
 * @param shown for each letter the place of its step in {@code steps}
 * @param because why this order
 */
public record OrderTask(List<Wording> steps, List<Integer> shown, Wording because) implements Task {

  /** Fewer steps are a choice. */
  public static final int FEWEST = 3;

  public OrderTask {
    steps = List.copyOf(steps);
    shown = List.copyOf(shown);
    if (steps.size() < FEWEST || steps.size() > ChoiceTask.MOST || shown.size() != steps.size()) {
      throw new IllegalArgumentException("an order has " + FEWEST + " to 9 steps");
    }
  }

  @Override
  public <T> T show(Cases<T> cases) {
    return cases.order(this);
  }

  @Override
  public void check(Reckoning reckoning) {
    // Any order can be asked for.
  }

  /** The step that goes by the letter at {@code index}. */
  public Wording step(int index) {
    return steps.get(shown.get(index));
  }

  /** The letters in the right order, as places from 0. */
  public List<Integer> rightOrder() {
    List<Integer> order = new ArrayList<>();
    for (int place = 0; place < steps.size(); place++) {
      order.add(shown.indexOf(place));
    }
    return order;
  }

  @Override
  public String answerHint(Reckoning reckoning) {
    return "all "
        + steps.size()
        + " letters in the right order, such as "
        + Letters.list(Letters.missing(List.of(), steps.size()))
        + "; the more pairs of steps stand right, the more it is worth";
  }

  @Override
  public String answerText(Reckoning reckoning) {
    return Letters.list(rightOrder());
  }

  @Override
  public OrderTask worded(UnaryOperator<Wording> change) {
    return new OrderTask(steps.stream().map(change).toList(), shown, change.apply(because));
  }

  @Override
  public OrderTask reordered(SeededDraw draw, boolean book) {
    return new OrderTask(steps, draw.disorder(steps.size()), because);
  }

  @Override
  public Verdict judge(String written, Reckoning reckoning) {
    Optional<List<Integer>> read = Letters.read(written, steps.size());
    if (read.isEmpty()) {
      return new Verdict.NoSuchOption(steps.size());
    }
    List<Integer> missing = Letters.missing(read.get(), steps.size());
    List<Integer> doubled = Letters.doubled(read.get());
    if (!missing.isEmpty() || !doubled.isEmpty()) {
      return new Verdict.Unreadable(
          missing.isEmpty()
              ? "more than once there is " + Letters.words(doubled)
              : "it leaves out " + Letters.words(missing),
          "write every letter once, in the right order");
    }
    return judge(read.get());
  }

  private Verdict judge(List<Integer> letters) {
    int swaps = 0;
    int firstOff = -1;
    for (int i = 0; i < letters.size(); i++) {
      for (int j = i + 1; j < letters.size(); j++) {
        swaps += shown.get(letters.get(i)) > shown.get(letters.get(j)) ? 1 : 0;
      }
      boolean next = i + 1 < letters.size();
      if (next && firstOff < 0 && shown.get(letters.get(i)) > shown.get(letters.get(i + 1))) {
        firstOff = i;
      }
    }
    if (swaps == 0) {
      return new Verdict.Right();
    }
    int pairs = steps.size() * (steps.size() - 1) / 2;
    return new Verdict.OrderOff(
        swaps,
        letters.get(firstOff + 1),
        letters.get(firstOff),
        Credit.partOf(pairs - 2 * swaps, pairs));
  }
}
