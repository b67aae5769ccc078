package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import ringbook.ledger.Working;

/** How the right answer comes about, in plain lines, for each kind of task. */
final class SolutionLines implements Task.Cases<List<String>> {

  private final Exercise exercise;

  SolutionLines(Exercise exercise) {
    this.exercise = exercise;
  }

  @Override
  public List<String> number(NumberTask task) {
    return workings();
  }

  @Override
  public List<String> choice(ChoiceTask task) {
    ChoiceTask.Option right = task.options().get(task.rightIndex());
    return List.of(exercise.answerText(), right.because().markdown());
  }

  @Override
  public List<String> several(SeveralTask task) {
    List<String> lines = new ArrayList<>();
    for (int index : task.rightOnes()) {
      ChoiceTask.Option option = task.options().get(index);
      lines.add(Letters.of(index) + ") " + option.text().markdown());
      lines.add(option.because().markdown());
    }
    return lines;
  }

  @Override
  public List<String> order(OrderTask task) {
    List<String> lines = new ArrayList<>();
    for (int index : task.rightOrder()) {
      lines.add(Letters.of(index) + ") " + task.step(index).markdown());
    }
    lines.add(task.because().markdown());
    return lines;
  }

  @Override
  public List<String> pairs(PairsTask task) {
    List<String> lines = new ArrayList<>();
    List<Integer> letters = task.rightLetters();
    for (int i = 0; i < letters.size(); i++) {
      PairsTask.Pair pair = task.pairs().get(i);
      lines.add((i + 1) + Letters.of(letters.get(i)) + ": " + pair.because().markdown());
    }
    return lines;
  }

  @Override
  public List<String> fault(FaultTask task) {
    List<String> lines = new ArrayList<>();
    lines.add(
        Letters.of(task.fault().item())
            + ") "
            + task.wrongItem().name().markdown()
            + ": "
            + task.wrongItem().text(exercise.reckoning()));
    lines.add(task.fault().because().markdown());
    lines.addAll(workings());
    return lines;
  }

  @Override
  public List<String> plan(PlanTask task) {
    return List.of(
        (task.isProved(exercise.reckoning()) ? "One plan that passes: " : "A plan to begin with: ")
            + exercise.answerText(),
        task.modelWords(exercise.reckoning()),
        task.because().markdown());
  }

  /** The workings in plain lines, each under its name. */
  private List<String> workings() {
    List<Working> workings = exercise.workings();
    List<String> lines = new ArrayList<>();
    for (Working working : workings) {
      lines.add(exercise.reckoning().ledger().get(working.key()).name() + ":");
      lines.addAll(lines(working));
    }
    return lines;
  }

  /** One working in plain lines: formula or rule, numbers put in, result. */
  private static List<String> lines(Working working) {
    List<String> lines = new ArrayList<>();
    working.formula().ifPresent(line -> lines.add(line.text()));
    if (!working.rule().isEmpty()) {
      lines.add(working.rule());
    }
    working.numbers().ifPresent(line -> lines.add(line.text()));
    lines.add(working.result().text());
    return lines;
  }
}
