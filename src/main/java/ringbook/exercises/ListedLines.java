package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;

/** What is listed below a question, in plain lines, for each kind of task. */
final class ListedLines implements Task.Cases<List<String>> {

  private final Exercise exercise;

  ListedLines(Exercise exercise) {
    this.exercise = exercise;
  }

  @Override
  public List<String> number(NumberTask task) {
    return List.of();
  }

  @Override
  public List<String> choice(ChoiceTask task) {
    return options(task.options());
  }

  @Override
  public List<String> several(SeveralTask task) {
    return options(task.options());
  }

  @Override
  public List<String> order(OrderTask task) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < task.steps().size(); i++) {
      lines.add(lettered(i, task.step(i).markdown()));
    }
    return lines;
  }

  @Override
  public List<String> pairs(PairsTask task) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < task.pairs().size(); i++) {
      lines.add((i + 1) + ") " + task.pairs().get(i).left().markdown());
    }
    for (int i = 0; i < task.shown().size(); i++) {
      lines.add(lettered(i, task.thing(i).markdown()));
    }
    return lines;
  }

  @Override
  public List<String> fault(FaultTask task) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < task.items().size(); i++) {
      String name = task.items().get(i).name().markdown();
      lines.add(lettered(i, name + ": " + task.shown(i, exercise.reckoning())));
    }
    return lines;
  }

  @Override
  public List<String> plan(PlanTask task) {
    return List.of(task.conditions(exercise.reckoning()));
  }

  private static List<String> options(List<ChoiceTask.Option> options) {
    List<String> lines = new ArrayList<>();
    for (ChoiceTask.Option option : options) {
      lines.add(lettered(lines.size(), option.text().markdown()));
    }
    return lines;
  }

  private static String lettered(int index, String text) {
    return Letters.of(index) + ") " + text;
  }
}
