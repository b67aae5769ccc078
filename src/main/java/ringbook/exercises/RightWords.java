package ringbook.exercises;

/** What a learner is told whose answer is right, for each kind of task. */
final class RightWords implements Task.Cases<String> {

  private final Exercise exercise;

  RightWords(Exercise exercise) {
    this.exercise = exercise;
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
    return "Right: it shows what was asked for, hangs together, and takes no more than "
        + task.most(exercise.reckoning())
        + " photographs.";
  }
}
