package ringbook.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.FaultTask;
import ringbook.exercises.Task;
import ringbook.exercises.Wording;
import ringbook.ledger.Formula;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.problems.Nearest;
import ringbook.problems.Problems;

/**
 * Reads a table with one value wrong: {@code items:} (a {@code quantity:}, or {@code name:}, {@code
 * value:} and {@code like:}) and {@code faults:} ({@code item:}, {@code way:}, {@code because:}).
 */
final class FaultReader {

  private final ExerciseFields fields;
  private final Reckoning reckoning;
  private final Problems problems;
  private final List<String> names = new ArrayList<>();

  FaultReader(ExerciseFields fields, Reckoning reckoning, Problems problems) {
    this.fields = fields;
    this.reckoning = reckoning;
    this.problems = problems;
  }

  /** The task with that tolerance; empty, with the faults told, where there is none. */
  Optional<Task> read(OptionalDouble tolerance) {
    int before = problems.size();
    List<FaultTask.Item> items = new ArrayList<>();
    for (YamlNode node : fields.items("items")) {
      fields
          .below(
              node,
              "an item",
              "write '- quantity: …' for each",
              Set.of("quantity", "name", "value", "like"))
          .flatMap(this::item)
          .ifPresent(items::add);
    }
    List<FaultTask.Fault> faults = new ArrayList<>();
    for (YamlNode node : fields.items("faults")) {
      fields
          .below(
              node,
              "a fault",
              "write 'item: …', 'way: …' and 'because: …' below it",
              Set.of("item", "way", "because"))
          .flatMap(this::fault)
          .ifPresent(faults::add);
    }
    boolean mend = fields.flag("mend", "write true where the right value is asked for too");
    if (problems.size() > before) {
      return Optional.empty();
    }
    if (items.size() < FaultTask.FEWEST || items.size() > ChoiceTask.MOST || faults.isEmpty()) {
      problems.add(
          fields.position("items"),
          "there must be 3 to 9 items and a fault, here are "
              + items.size()
              + " and "
              + faults.size(),
          "add or drop some");
      return Optional.empty();
    }
    FaultTask task = new FaultTask(items, faults, 0, mend, tolerance, List.of());
    task.unknown(reckoning)
        .ifPresent(
            reason ->
                problems.add(fields.position("items"), reason, "change the scene or the items"));
    return problems.size() > before ? Optional.empty() : Optional.of(task);
  }

  private Optional<FaultTask.Item> item(ExerciseFields item) {
    boolean plain = item.has("quantity");
    String key = item.line(plain ? "quantity" : "like").orElse("");
    Optional<Quantity> like = reckoning.ledger().find(key);
    if (like.isEmpty()) {
      if (!key.isEmpty()) {
        problems.add(
            item.position(plain ? "quantity" : "like"),
            "no quantity is called '" + key + "'",
            FormulaField.nearest(key, reckoning.ledger()));
      }
      names.add(item.has("name") ? item.line("name").orElse("") : key);
      return Optional.empty();
    }
    Optional<Wording> name =
        item.has("name") || !plain
            ? item.wording("name")
            : Optional.of(new Wording(like.get().name(), item.position("quantity")));
    Optional<Formula> value = plain ? Optional.of(Formula.of(key)) : formula(item, "value");
    names.add(item.has("name") ? item.line("name").orElse("") : key);
    return name.isPresent() && value.isPresent()
        ? Optional.of(new FaultTask.Item(name.get(), value.get(), key))
        : Optional.empty();
  }

  private Optional<FaultTask.Fault> fault(ExerciseFields fault) {
    Optional<String> name = fault.line("item");
    Optional<Formula> way = formula(fault, "way");
    Optional<Wording> because = fault.wording("because");
    if (name.isPresent() && !names.contains(name.get())) {
      problems.add(
          fault.position("item"),
          "no item is called '" + name.get() + "'",
          Nearest.help(name.get(), names));
      return Optional.empty();
    }
    return name.isPresent() && way.isPresent() && because.isPresent()
        ? Optional.of(new FaultTask.Fault(names.indexOf(name.get()), way.get(), because.get()))
        : Optional.empty();
  }

  private Optional<Formula> formula(ExerciseFields from, String name) {
    return from.line(name)
        .flatMap(
            text ->
                FormulaField.read(
                    "'" + name + "'", text, from.position(name), reckoning.ledger(), problems));
  }
}
