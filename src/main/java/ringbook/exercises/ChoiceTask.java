package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import ringbook.ledger.Reckoning;

/**
 * Asks for one of a few options; each option says why it is right or wrong.
 *
 * @param options from two to {@link #MOST}, exactly one of them right
 */
public record ChoiceTask(List<Option> options) implements Task {

  /** More options than a person keeps in view; also keeps letters to one character. */
  public static final int MOST = 9;

  /**
   * Something to choose.
   *
   * @param text what it says
   * @param right whether it is the right one
   * @param because why it is right or wrong; the feedback to a learner who chose it
   */
  public record Option(Wording text, boolean right, Wording because) {
    static List<Option> worded(List<Option> options, UnaryOperator<Wording> change) {
      List<Option> worded = new ArrayList<>();
      for (Option option : options) {
        worded.add(
            new Option(change.apply(option.text()), option.right, change.apply(option.because())));
      }
      return worded;
    }
  }

  public ChoiceTask {
    options = List.copyOf(options);
    if (options.size() < 2 || options.size() > MOST) {
      throw new IllegalArgumentException("a choice needs 2 to " + MOST + " options");
    }
    if (options.stream().filter(Option::right).count() != 1) {
      throw new IllegalArgumentException("exactly one option must be right");
    }
  }

  @Override
  public <T> T show(Cases<T> cases) {
    return cases.choice(this);
  }

  @Override
  public void check(Reckoning reckoning) {
    // Its options were checked when it was built; it needs nothing of the scene.
  }

  /** The letter of the option at {@code index}: a, b, c … */
  public static char letter(int index) {
    return (char) ('a' + index);
  }

  /** The place of the right option, from 0. */
  public int rightIndex() {
    for (int i = 0; i < options.size(); i++) {
      if (options.get(i).right()) {
        return i;
      }
    }
    throw new IllegalStateException("checked when built");
  }

  @Override
  public String answerHint(Reckoning reckoning) {
    List<String> letters = new ArrayList<>();
    for (int i = 0; i < options.size() - 1; i++) {
      letters.add(String.valueOf(letter(i)));
    }
    return "one letter: " + String.join(", ", letters) + " or " + letter(options.size() - 1);
  }

  @Override
  public String answerText(Reckoning reckoning) {
    return letter(rightIndex()) + ") " + options.get(rightIndex()).text().markdown();
  }

  @Override
  public ChoiceTask worded(UnaryOperator<Wording> change) {
    return new ChoiceTask(Option.worded(options, change));
  }

  @Override
  public ChoiceTask reordered(SeededDraw draw, boolean book) {
    if (book) {
      return this;
    }
    return new ChoiceTask(draw.shuffled(options));
  }

  @Override
  public Verdict judge(String written, Reckoning reckoning) {
    return ChoiceJudge.judge(this, written);
  }
}
