package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import ringbook.ledger.Reckoning;

/**
 * Asks which things belong together: to each number on the left a letter on the right. Every right
 * pair counts the same.
 *
 * @param pairs from two to {@link ChoiceTask#MOST}
 * @param extras things on the right that belong to nothing
 * @param shown for each letter the place of its thing among the right sides of the pairs and then
 *     the extras
 */
public record PairsTask(List<Pair> pairs, List<Wording> extras, List<Integer> shown)
    implements Task {

  /**
   * Two things that belong together.
   *
   * @param left what has a number
   * @param right what has a letter
   * @param because why they belong together
   */
  public record Pair(Wording left, Wording right, Wording because) {}

  public PairsTask {
    pairs = List.copyOf(pairs);
    extras = List.copyOf(extras);
    shown = List.copyOf(shown);
    int things = pairs.size() + extras.size();
    if (pairs.size() < 2 || things > ChoiceTask.MOST || shown.size() != things) {
      throw new IllegalArgumentException("there must be 2 to 9 pairs with the extras");
    }
  }

  @Override
  public <T> T show(Cases<T> cases) {
    return cases.pairs(this);
  }

  @Override
  public void check(Reckoning reckoning) {
    // Any things can be matched.
  }

  /** The thing on the right that goes by the letter at {@code index}. */
  public Wording thing(int index) {
    int at = shown.get(index);
    return at < pairs.size() ? pairs.get(at).right() : extras.get(at - pairs.size());
  }

  /** For each number on the left the place of its letter, from 0. */
  public List<Integer> rightLetters() {
    List<Integer> letters = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      letters.add(shown.indexOf(i));
    }
    return letters;
  }

  @Override
  public String answerHint(Reckoning reckoning) {
    return "a letter for each number, such as 1a 2b; every right pair counts";
  }

  @Override
  public String answerText(Reckoning reckoning) {
    StringBuilder text = new StringBuilder();
    List<Integer> letters = rightLetters();
    for (int i = 0; i < letters.size(); i++) {
      text.append(i == 0 ? "" : " ").append(i + 1).append(Letters.of(letters.get(i)));
    }
    return text.toString();
  }

  @Override
  public PairsTask worded(UnaryOperator<Wording> change) {
    List<Pair> worded = new ArrayList<>();
    for (Pair pair : pairs) {
      worded.add(
          new Pair(
              change.apply(pair.left()), change.apply(pair.right()), change.apply(pair.because())));
    }
    return new PairsTask(worded, extras.stream().map(change).toList(), shown);
  }

  @Override
  public PairsTask reordered(SeededDraw draw, boolean book) {
    return new PairsTask(pairs, extras, draw.disorder(shown.size()));
  }

  @Override
  public Verdict judge(String written, Reckoning reckoning) {
    Optional<List<Integer>> read = PairsReading.read(written, pairs.size(), shown.size());
    if (read.isEmpty()) {
      return new Verdict.Unreadable(
          "it must give letters for the numbers 1 to " + pairs.size(),
          "write each number with its letter, such as 1a 2b");
    }
    List<Integer> wrong = new ArrayList<>();
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      int letter = read.get().get(i);
      if (letter < 0) {
        open.add(i);
      } else if (shown.get(letter) != i) {
        wrong.add(i);
      }
    }
    int right = pairs.size() - wrong.size() - open.size();
    return right == pairs.size()
        ? new Verdict.Right()
        : new Verdict.PairsOff(wrong, open, Credit.partOf(right, pairs.size()));
  }
}
