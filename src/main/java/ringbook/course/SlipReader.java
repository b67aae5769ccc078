package ringbook.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringbook.exercises.Credit;
import ringbook.exercises.NumberTask;
import ringbook.exercises.Slip;
import ringbook.exercises.Task;
import ringbook.exercises.TypicalSlip;
import ringbook.exercises.Wording;
import ringbook.ledger.Formula;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.problems.Nearest;
import ringbook.problems.Problems;
import ringbook.shots.SceneText;
import ringbook.units.Dimension;
import ringbook.units.Lengths;

/**
 * Reads the slips of a number question: {@code way:} over the ledger or the name of a {@code
 * typical:} one, what it {@code says:} and what it is {@code worth:}.
 */
final class SlipReader {

  private static final Set<String> FIELDS =
      new TreeSet<>(Set.of("way", "typical", "of", "says", "worth"));

  private final Reckoning reckoning;
  private final Problems problems;
  private final String asked;

  private SlipReader(String asked, Reckoning reckoning, Problems problems) {
    this.asked = asked;
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
    return new SlipReader(task.quantity(), reckoning, problems).read(fields, task, items);
  }

  private Optional<Task> read(ExerciseFields fields, NumberTask task, YamlNode.Items items) {
    int before = problems.size();
    List<Slip> slips = new ArrayList<>();
    for (YamlNode item : items.items()) {
      fields
          .below(item, "a slip", "write '- way: …'", FIELDS)
          .flatMap(this::slip)
          .ifPresent(slips::add);
    }
    return problems.size() > before
        ? Optional.empty()
        : Optional.of(new NumberTask(task.quantity(), task.tolerance(), slips));
  }

  private Optional<Slip> slip(ExerciseFields fields) {
    Credit worth = worth(fields);
    if (fields.has("typical")) {
      return typical(fields, worth);
    }
    Optional<String> way = fields.line("way");
    Optional<Wording> says = fields.wording("says");
    Optional<Formula> formula =
        way.flatMap(
            text ->
                FormulaField.read(
                    "the way", text, fields.position("way"), reckoning.ledger(), problems));
    return formula.isPresent() && says.isPresent()
        ? Optional.of(new Slip(formula.get(), says.get(), worth))
        : Optional.empty();
  }

  private Optional<Slip> typical(ExerciseFields fields, Credit worth) {
    String label = fields.line("typical").orElse("");
    Optional<TypicalSlip> slip = TypicalSlip.labelled(label);
    if (slip.isEmpty()) {
      problems.add(
          fields.position("typical"),
          "there is no typical slip '" + label + "'",
          Nearest.help(label, TypicalSlip.labels()));
      return Optional.empty();
    }
    if (slip.get().needsQuantity() && !fields.has("of")) {
      problems.add(
          fields.position("typical"),
          "'" + label + "' does not say of what",
          "write the key of what is put in wrongly: of: ring.realStep");
      return Optional.empty();
    }
    String of = fields.has("of") ? fields.line("of").orElse("") : "";
    String formula =
        reckoning.ledger().find(asked).flatMap(Quantity::formula).map(Formula::notation).orElse("");
    Optional<String> way = slip.get().way(asked, formula, of);
    if (way.isEmpty()) {
      problems.add(
          fields.position(fields.has("of") ? "of" : "typical"),
          "'" + label + "' has no place in the formula of " + asked,
          formula.isEmpty()
              ? "it is worked out by a rule: write the wrong way with 'way:'"
              : "the formula is " + formula);
      return Optional.empty();
    }
    String name = reckoning.ledger().find(of).map(Quantity::name).orElse("");
    Wording says =
        fields.has("says")
            ? fields.wording("says").orElseThrow()
            : new Wording(slip.get().says(name), fields.position("typical"));
    return Optional.of(new Slip(Formula.of(way.get()), says, worth));
  }

  /** A share in quarters. */
  private Credit worth(ExerciseFields fields) {
    if (!fields.has("worth")) {
      return Credit.QUARTER;
    }
    String written = fields.line("worth").orElse("");
    SceneText.Read read = SceneText.read(written, Dimension.SHARE, Lengths.METRIC);
    double quarters = 4 * read.si();
    if (read.fault().isPresent()
        || quarters != Math.rint(quarters)
        || quarters < 0
        || quarters > 3) {
      problems.add(
          fields.position("worth"),
          "a slip cannot be worth '" + written + "'",
          "write 0 %, 25 %, 50 % or 75 %");
      return Credit.QUARTER;
    }
    return new Credit((int) quarters);
  }
}
