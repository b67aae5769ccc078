package ringbook.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.OrderTask;
import ringbook.exercises.PairsTask;
import ringbook.exercises.Task;
import ringbook.exercises.Wording;
import ringbook.problems.Problems;

/** Reads what has lists to sort: the steps of an order, pairs to match. */
final class ListsReader {

  private final ExerciseFields fields;
  private final Problems problems;

  ListsReader(ExerciseFields fields, Problems problems) {
    this.fields = fields;
    this.problems = problems;
  }

  /** Steps in the right order; empty, with the faults told, where there are none. */
  Optional<Task> order() {
    int before = problems.size();
    List<Wording> steps = texts("steps");
    Optional<Wording> because = fields.wording("because");
    if (problems.size() == before
        && (steps.size() < OrderTask.FEWEST || steps.size() > ChoiceTask.MOST)) {
      problems.add(
          fields.position("steps"),
          "an order has "
              + OrderTask.FEWEST
              + " to "
              + ChoiceTask.MOST
              + " steps, here are "
              + steps.size(),
          "add or drop some");
    }
    fields.different(steps, "steps");
    return problems.size() > before
        ? Optional.empty()
        : Optional.of(new OrderTask(steps, upTo(steps.size()), because.orElseThrow()));
  }

  /** Pairs and what belongs to nothing; empty, with the faults told, where there are none. */
  Optional<Task> pairs() {
    int before = problems.size();
    List<PairsTask.Pair> pairs = new ArrayList<>();
    for (YamlNode item : fields.items("pairs")) {
      pair(item).ifPresent(pairs::add);
    }
    List<Wording> extras = fields.has("extras") ? texts("extras") : List.of();
    int things = pairs.size() + extras.size();
    if (problems.size() == before && (pairs.size() < 2 || things > ChoiceTask.MOST)) {
      problems.add(
          fields.position("pairs"),
          "there are 2 to " + ChoiceTask.MOST + " pairs with the extras, here are " + things,
          "add or drop some");
    }
    List<Wording> rights = new ArrayList<>();
    pairs.forEach(pair -> rights.add(pair.right()));
    rights.addAll(extras);
    fields.different(rights, "right sides");
    fields.different(pairs.stream().map(PairsTask.Pair::left).toList(), "left sides");
    return problems.size() > before
        ? Optional.empty()
        : Optional.of(new PairsTask(pairs, extras, upTo(things)));
  }

  private Optional<PairsTask.Pair> pair(YamlNode item) {
    return fields
        .below(
            item,
            "a pair",
            "write '- left: …', 'right: …' and 'because: …'",
            Set.of("left", "right", "because"))
        .flatMap(ListsReader::pair);
  }

  private static Optional<PairsTask.Pair> pair(ExerciseFields pair) {
    Optional<Wording> left = pair.wording("left");
    Optional<Wording> right = pair.wording("right");
    Optional<Wording> because = pair.wording("because");
    return left.isPresent() && right.isPresent() && because.isPresent()
        ? Optional.of(new PairsTask.Pair(left.get(), right.get(), because.get()))
        : Optional.empty();
  }

  private List<Wording> texts(String name) {
    List<Wording> texts = new ArrayList<>();
    for (YamlNode item : fields.items(name)) {
      fields.wording(item).ifPresent(texts::add);
    }
    return texts;
  }

  private static List<Integer> upTo(int count) {
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      numbers.add(i);
    }
    return numbers;
  }
}
