package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import ringbook.exercises.ChoiceTask.Option;
import ringbook.ledger.Reckoning;

/**
 * Asks for all options that are right; each says why it is right or wrong.
 *
 * <p>Every right letter counts, every wrong letter takes one right letter away: whoever ticks
 * everything gains nothing. Common practice, no source.
 *
 * @param options from two to {@link ChoiceTask#MOST}, at least one right and one wrong
 */
public record SeveralTask(List<Option> options) implements Task {

  public SeveralTask {
    options = List.copyOf(options);
    long right = options.stream().filter(Option::right).count();
    if (options.size() > ChoiceTask.MOST || right < 1 || right == options.size()) {
      throw new IllegalArgumentException("some options must be right, some wrong");
    }
  }

  @Override
  public <T> T show(Cases<T> cases) {
    return cases.several(this);
  }

  @Override
  public void check(Reckoning reckoning) {
    // Its options were checked when it was built; it needs nothing of the scene.
  }

  /** The places of the right options, from 0. */
  public List<Integer> rightOnes() {
    List<Integer> right = new ArrayList<>();
    for (int i = 0; i < options.size(); i++) {
      if (options.get(i).right()) {
        right.add(i);
      }
    }
    return right;
  }

  @Override
  public String answerHint(Reckoning reckoning) {
    return "every letter that is right, such as a, b; a wrong letter takes a right one away";
  }

  @Override
  public String answerText(Reckoning reckoning) {
    return Letters.list(rightOnes());
  }

  @Override
  public SeveralTask worded(UnaryOperator<Wording> change) {
    return new SeveralTask(Option.worded(options, change));
  }

  @Override
  public SeveralTask reordered(SeededDraw draw, boolean book) {
    return book ? this : new SeveralTask(draw.shuffled(options));
  }

  @Override
  public Verdict judge(String written, Reckoning reckoning) {
    Optional<List<Integer>> read = Letters.read(written, options.size());
    if (read.isEmpty()) {
      return new Verdict.NoSuchOption(options.size());
    }
    List<Integer> missed = new ArrayList<>();
    List<Integer> wrong = new ArrayList<>();
    for (int i = 0; i < options.size(); i++) {
      boolean chosen = read.get().contains(i);
      if (chosen != options.get(i).right()) {
        (chosen ? wrong : missed).add(i);
      }
    }
    if (missed.isEmpty() && wrong.isEmpty()) {
      return new Verdict.Right();
    }
    int right = rightOnes().size();
    int counting = right - missed.size() - wrong.size();
    return new Verdict.SeveralOff(missed, wrong, Credit.partOf(counting, right));
  }
}
