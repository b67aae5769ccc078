package ringbook.exercises;

import java.util.Optional;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;

/**
 * An exercise with all its variants. A variant is drawn from the course, the exercise and the
 * learner's name; one that makes no good question ({@link VariantRules}) is thrown away and drawn
 * again from the same sequence, so that the same name always ends with the same variant. Not for
 * use by several threads.
 */
public final class VariedExercise implements ExerciseSource {

  /** So many draws; with one in twenty usable, all fail once in 10^22 learners. */
  private static final int DRAWS = 1000;

  /** The reason why the book's own numbers are no variant. */
  public static final String SAME = "it is the same as in the book";

  private final String course;
  private final Variety variety;
  private final VariantRules rules;
  private final Exercise stated;
  private final SceneDraft base;
  private final TriedVariants tried;
  private final Exercise own;

  /**
   * The variants of {@code stated}.
   *
   * @param course the title of the course: other courses draw other numbers
   * @param stated the exercise on the scene its author states. Where it makes no good question
   *     there, such as with another group's kit, the book prints a variant instead
   * @param variety what differs
   */
  public VariedExercise(String course, Exercise stated, Variety variety) {
    this.course = course;
    this.variety = variety;
    this.rules = new VariantRules(stated, variety);
    this.stated = stated;
    this.base = SceneDraft.of(stated.reckoning().scene());
    this.tried = new TriedVariants(stated, variety.variations());
    this.own = statedFault().isEmpty() ? ordered(stated, "book") : drawn("book");
  }

  /** An exercise that is the same for everybody. */
  public static VariedExercise fixed(Exercise exercise) {
    return new VariedExercise("", exercise, Variety.NONE);
  }

  @Override
  public String id() {
    return stated.id();
  }

  @Override
  public Exercise own() {
    return own;
  }

  /** The exercise on the scene its author states. */
  public Exercise stated() {
    return stated;
  }

  /** How it differs from learner to learner. */
  public Variety variety() {
    return variety;
  }

  @Override
  public boolean varies() {
    return !variety.variations().isEmpty();
  }

  /** What keeps the exercise from being asked as stated, in words. */
  public Optional<String> statedFault() {
    return rules.againstStated();
  }

  @Override
  public Exercise forLearner(String learner) {
    return drawn("learner " + LearnerName.normalised(learner));
  }

  /** Why draw number {@code number} of a test series cannot be used, in words; empty if it can. */
  public Optional<String> trial(int number) {
    SeededDraw draw = draw("trial " + number);
    Optional<Scene> scene = scene(picks(draw));
    return scene.isEmpty()
        ? Optional.of("the scene is not possible")
        : against(Reckoning.of(scene.get()));
  }

  /** Why a scene cannot be used; nobody gets the numbers of the book. */
  private Optional<String> against(Reckoning reckoning) {
    Exercise taken = own == null ? stated : own; // null while the book's own is being drawn
    return reckoning.scene().equals(taken.reckoning().scene())
        ? Optional.of(SAME)
        : rules.against(reckoning);
  }

  private Exercise drawn(String whom) {
    SeededDraw draw = draw(whom);
    for (int i = 0; varies() && i < DRAWS; i++) {
      Optional<Reckoning> usable = usable(picks(draw));
      if (usable.isPresent()) {
        return ordered(stated.on(usable.get()), whom);
      }
    }
    return ordered(stated, whom);
  }

  private SeededDraw draw(String whom) {
    return SeededDraw.of(course + "\n" + stated.id() + "\n" + whom);
  }

  /** The exercise with its options, steps or pairs in an order of its own. */
  private Exercise ordered(Exercise exercise, String whom) {
    return exercise.with(exercise.task().reordered(draw("order\n" + whom), whom.equals("book")));
  }

  /** The place of the value that each variation takes. */
  private int[] picks(SeededDraw draw) {
    int[] picks = new int[variety.variations().size()];
    for (int i = 0; i < picks.length; i++) {
      picks[i] = draw.below(variety.variations().get(i).count());
    }
    return picks;
  }

  private Optional<Reckoning> usable(int[] picks) {
    TriedVariants.Trial trial =
        () ->
            scene(picks)
                .map(Reckoning::of)
                .filter(reckoning -> against(reckoning).isEmpty())
                .filter(reckoning -> stated.task().unsolved(reckoning).isEmpty());
    return own == null // what is good for the book is no good for a learner
        ? trial.usable()
        : tried.usable(picks, () -> scene(picks).orElseThrow(), trial);
  }

  private Optional<Scene> scene(int[] picks) {
    SceneDraft draft = base.copy();
    for (int i = 0; i < picks.length; i++) {
      variety.variations().get(i).put(draft, picks[i]);
    }
    return draft.scene();
  }
}
