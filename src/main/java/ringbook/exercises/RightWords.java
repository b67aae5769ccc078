package ringbook.exercises;

import java.util.Optional;
import ringbook.plans.WrittenPlan;
import ringbook.units.Words;

/** What a learner is told whose answer is right, for each kind of task. */
final class RightWords implements Task.Cases<String> {

  private final Exercise exercise;
  private final String written;

  /**
   * For one answer.
   *
   * @param written as handed in, right
   */
  RightWords(Exercise exercise, String written) {
    this.exercise = exercise;
    this.written = written;
  }

  @Override
  public String number(NumberTask task) {
    return "Right: " + exercise.answerText() + ".";
  }

  @Override
  public String choice(ChoiceTask task) {
    return "Right. " + task.options().get(task.rightIndex()).because().markdown();
  }

  @Override
  public String several(SeveralTask task) {
    return "Right: " + Letters.words(task.rightOnes()) + ", and no other.";
  }

  @Override
  public String order(OrderTask task) {
    return "Right. " + task.because().markdown();
  }

  @Override
  public String pairs(PairsTask task) {
    return "All pairs are right.";
  }

  @Override
  public String fault(FaultTask task) {
    return "Right. " + task.fault().because().markdown();
  }

  @Override
  public String plan(PlanTask task) {
    Optional<PlanCheck> check =
        WrittenPlan.read(written).plan().map(plan -> task.check(plan, exercise.reckoning()));
    boolean whole = check.map(found -> found.loose() == 0).orElse(true);
    return (whole
            ? "Right: it shows what was asked for, hangs together, and takes no more than "
            : "Right: what hangs together of it shows what was asked for, and it takes no more than"
                + " ")
        + Words.count(task.most(exercise.reckoning()), "photograph")
        + "."
        + check.map(PlanTask::asides).orElse("");
  }
}
