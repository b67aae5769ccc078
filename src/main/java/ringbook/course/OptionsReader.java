package ringbook.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.SeveralTask;
import ringbook.exercises.Task;
import ringbook.exercises.Wording;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** Reads the options of a choice, and of a question with several right options. */
final class OptionsReader {

  private final ExerciseFields fields;
  private final Problems problems;

  OptionsReader(ExerciseFields fields, Problems problems) {
    this.fields = fields;
    this.problems = problems;
  }

  /** A choice of one; empty, with the faults told, where there is none. */
  Optional<Task> choice() {
    return options()
        .filter(options -> right(options) == 1 || notOne(right(options)))
        .map(ChoiceTask::new);
  }

  /** A choice of several; empty, with the faults told, where there is none. */
  Optional<Task> several() {
    return options()
        .filter(options -> right(options) % options.size() > 0 || notSome(right(options)))
        .map(SeveralTask::new);
  }

  private static int right(List<ChoiceTask.Option> options) {
    return (int) options.stream().filter(ChoiceTask.Option::right).count();
  }

  private boolean notOne(int right) {
    problems.add(
        fields.find("options").orElseThrow().position(),
        right == 0 ? "none of the options is right" : right + " options are right",
        right == 0
            ? "write 'right: true' under exactly one of them"
            : "write 'right: true' under exactly one of them, or ask it as kind: several");
    return false;
  }

  private boolean notSome(int right) {
    problems.add(
        fields.find("options").orElseThrow().position(),
        right == 0 ? "none of the options is right" : "all options are right",
        "write 'right: true' under those that are right, and add some that are not");
    return false;
  }

  private Optional<List<ChoiceTask.Option>> options() {
    Optional<YamlNode.Field> field = fields.find("options");
    if (field.isEmpty() || !(field.get().value() instanceof YamlNode.Items items)) {
      problems.add(
          fields.position("options"),
          "a choice needs a list of options",
          "write 'options:' and below it '- text: …' with 'because: …' for each");
      return Optional.empty();
    }
    int before = problems.size();
    List<ChoiceTask.Option> options = new ArrayList<>();
    for (YamlNode item : items.items()) {
      option(item).ifPresent(options::add);
    }
    if (problems.size() == before) {
      check(options, field.get().position());
    }
    return problems.size() > before ? Optional.empty() : Optional.of(options);
  }

  private void check(List<ChoiceTask.Option> options, Position position) {
    if (options.size() < 2 || options.size() > ChoiceTask.MOST) {
      problems.add(
          position,
          "a choice has 2 to " + ChoiceTask.MOST + " options, here are " + options.size(),
          "add or drop some");
    }
    fields.different(options.stream().map(ChoiceTask.Option::text).toList(), "options");
  }

  private Optional<ChoiceTask.Option> option(YamlNode item) {
    return fields
        .below(
            item,
            "an option",
            "write '- text: …' and 'because: …' below it",
            Set.of("text", "right", "because"))
        .flatMap(OptionsReader::option);
  }

  private static Optional<ChoiceTask.Option> option(ExerciseFields option) {
    Optional<Wording> text = option.wording("text");
    Optional<Wording> because = option.wording("because");
    boolean right =
        option.flag("right", "write true under the right option and leave it out elsewhere");
    if (text.isEmpty() || because.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new ChoiceTask.Option(text.get(), right, because.get()));
  }
}
