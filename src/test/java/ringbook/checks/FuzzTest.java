package ringbook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.units.Length;

/**
 * Thousands of scenes drawn from the whole range of every input, with the ends of the ranges, left
 * out details and furniture: each entry comes to a number or says in a sentence why there is none.
 * {@code -Dseeds=100000} draws more, {@code -Dseed=17} repeats one.
 */
final class FuzzTest {

  private static final int SCENES = 2000;

  /** One line for each kind of fault, with the first seed that shows it. */
  private final Map<String, String> faults = new TreeMap<>();

  @Test
  void every_entry_of_every_scene_is_a_number_or_a_reason() {
    Long one = Long.getLong("seed");
    LongStream seeds =
        one != null
            ? LongStream.of(one)
            : LongStream.range(0, Long.getLong("seeds", Long.valueOf(SCENES)));
    int[] counted = new int[2];
    seeds.forEach(seed -> look(seed, counted));
    assertThat(faults).isEmpty();
    assertThat(counted[0]).as("numbers").isPositive();
    assertThat(counted[1]).as("refusals").isPositive();
  }

  private void look(long seed, int[] counted) {
    Reckoning reckoning = Reckoning.of(scene(seed));
    for (Quantity quantity : reckoning.ledger().quantities()) {
      String fault = faultOf(reckoning, quantity, counted);
      if (!fault.isEmpty()) {
        faults.putIfAbsent(quantity.key(), fault + ", seed " + seed);
      }
    }
  }

  private static String faultOf(Reckoning reckoning, Quantity quantity, int[] counted) {
    try {
      if (reckoning.of(quantity.key()) instanceof Outcome.Refused refused) {
        counted[1]++;
        return sentence(refused.reason()) && words(refused.help())
            ? ""
            : "refused without a sentence: '" + refused.reason() + "'; '" + refused.help() + "'";
      }
      counted[0]++;
      double si = ((Outcome.Known) reckoning.of(quantity.key())).si();
      if (!quantity.range().holds(si)) {
        return "not " + quantity.range().text(quantity.unit()) + ": " + si;
      }
      String text = reckoning.text(quantity.key());
      return text.isBlank() || text.contains("NaN") || text.contains("Infinity")
          ? "printed as '" + text + "'"
          : "";
    } catch (RuntimeException e) {
      return e.getClass().getSimpleName();
    }
  }

  /** Several words that name no number that is none. */
  private static boolean sentence(String text) {
    return words(text) && text.contains(" ");
  }

  private static boolean words(String text) {
    return !text.isBlank() && !text.contains("NaN") && !text.contains("Infinity");
  }

  /** Draws until the scene does not contradict itself. */
  private static Scene scene(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    while (true) {
      SceneDraft draft = new SceneDraft();
      boolean equivalent = random.nextInt(4) == 0;
      for (SceneField field : SceneField.ALL) {
        boolean kept = field.key().equals("kit.equivalent") ? equivalent : kept(field, random);
        if (kept && field instanceof NumberField number) {
          draft.set(number, number.unit().toSi(draw(random, number.low(), number.high())));
        } else if (kept && field instanceof WordField word) {
          List<String> words = word.words();
          draft.set(word, words.isEmpty() ? "thing" : words.get(random.nextInt(words.size())));
        }
      }
      draft.obstacles(obstacles(random));
      if (draft.faults().isEmpty()) {
        return draft.build();
      }
    }
  }

  /** Without depth or equivalent most draws hold together; other details are left out at times. */
  private static boolean kept(SceneField field, SplittableRandom random) {
    if (field.key().equals("subject.depth")) {
      return random.nextInt(8) == 0;
    }
    boolean needed = field.key().startsWith("kit.") && !field.key().equals("kit.fileSize");
    return !field.optional() || needed || random.nextInt(3) > 0;
  }

  /** Now and then an end of the range, otherwise anywhere, evenly by size where it is wide. */
  private static double draw(SplittableRandom random, double low, double high) {
    int where = random.nextInt(20);
    if (where < 2) {
      return where == 0 ? low : high;
    }
    boolean wide = low > 0 && high / low > 100;
    double share = random.nextDouble();
    return wide ? low * Math.pow(high / low, share) : low + (high - low) * share;
  }

  private static List<Obstacle> obstacles(SplittableRandom random) {
    List<Obstacle> obstacles = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      List<Corner> corners = new ArrayList<>();
      double x = random.nextDouble(-6, 6);
      double y = random.nextDouble(-6, 6);
      double size = random.nextDouble(0.01, 4);
      for (int corner = 3 + random.nextInt(3); corner > 0; corner--) {
        corners.add(
            new Corner(
                new Length(x + size * random.nextDouble(-1, 1)),
                new Length(y + size * random.nextDouble(-1, 1))));
      }
      obstacles.add(new Obstacle("thing " + i, corners));
    }
    return obstacles;
  }
}
