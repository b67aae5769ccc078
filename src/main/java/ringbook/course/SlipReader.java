package ringbook.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringbook.exercises.NumberTask;
import ringbook.exercises.Slip;
import ringbook.exercises.Task;
import ringbook.exercises.Wording;
import ringbook.ledger.Formula;
import ringbook.ledger.Reckoning;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/**
 * Reads the slips of a number question: {@code way:} over the ledger, and what it {@code says:}.
 */
final class SlipReader {

  private final Reckoning reckoning;
  private final Problems problems;

  private SlipReader(Reckoning reckoning, Problems problems) {
    this.reckoning = reckoning;
    this.problems = problems;
  }

  /** {@code task} with the slips that the exercise states; empty, with the faults told, if any. */
  static Optional<Task> read(
      ExerciseFields fields, NumberTask task, Reckoning reckoning, Problems problems) {
    Optional<YamlNode.Field> field = fields.find("slips");
    if (field.isEmpty()) {
      return Optional.of(task);
    }
    if (!(field.get().value() instanceof YamlNode.Items items)) {
      problems.add(
          field.get().position(),
          "'slips:' must hold a list",
          "write '- way: …' and below it 'says: …' for each");
      return Optional.empty();
    }
    return new SlipReader(reckoning, problems).read(fields, task, items);
  }

  private Optional<Task> read(ExerciseFields fields, NumberTask task, YamlNode.Items items) {
    int before = problems.size();
    List<Slip> slips = new ArrayList<>();
    for (YamlNode item : items.items()) {
      if (item instanceof YamlNode.Fields inner) {
        slip(fields.below(inner)).ifPresent(slips::add);
      } else {
        problems.add(
            item.position(), "a slip is a set of fields, not " + item.kind(), "write '- way: …'");
      }
    }
    return problems.size() > before
        ? Optional.empty()
        : Optional.of(new NumberTask(task.quantity(), task.tolerance(), slips));
  }

  private Optional<Slip> slip(ExerciseFields fields) {
    fields.refuseOthers("a slip", new TreeSet<>(Set.of("way", "says")));
    Optional<String> way = fields.line("way");
    Optional<Wording> says = fields.wording("says");
    Optional<Formula> formula = way.flatMap(text -> formula(text, fields.position("way")));
    return formula.isPresent() && says.isPresent()
        ? Optional.of(new Slip(formula.get(), says.get()))
        : Optional.empty();
  }

  private Optional<Formula> formula(String text, Position position) {
    Formula formula;
    try {
      formula = Formula.of(text);
    } catch (IllegalArgumentException unreadable) {
      problems.add(
          position,
          "the way cannot be read: " + unreadable.getMessage(),
          "write a formula over quantities, such as kit.focalLength * 2");
      return Optional.empty();
    }
    int before = problems.size();
    for (String key : formula.keys()) {
      if (reckoning.ledger().find(key).isEmpty()) {
        problems.add(
            position,
            "no quantity is called '" + key + "'",
            Nearest.to(key, reckoning.ledger().keys())
                .map(near -> "did you mean '" + near + "'?")
                .orElse("the command 'quantities' lists them all"));
      }
    }
    return problems.size() > before ? Optional.empty() : Optional.of(formula);
  }
}
