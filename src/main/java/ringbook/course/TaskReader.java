package ringbook.course;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import ringbook.exercises.NumberTask;
import ringbook.exercises.Task;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.SceneText;
import ringbook.units.Dimension;
import ringbook.units.Lengths;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** Reads what an exercise asks for; each kind has its own fields. */
final class TaskReader {

  private static final Set<String> OF_ALL =
      Set.of("id", "title", "kind", "ask", "scene", "hint", "vary", "where", "sensible");
  private static final Map<String, Set<String>> OF_KIND = kinds();

  private final ExerciseFields fields;
  private final Optional<Reckoning> reckoning;
  private final Problems problems;

  private TaskReader(ExerciseFields fields, Optional<Reckoning> reckoning, Problems problems) {
    this.fields = fields;
    this.reckoning = reckoning;
    this.problems = problems;
  }

  /**
   * The task; empty, with the faults told, where there is none.
   *
   * @param reckoning the quantities of the exercise's scene; empty where the scene has a fault
   */
  static Optional<Task> read(
      ExerciseFields fields, Optional<Reckoning> reckoning, Problems problems) {
    return new TaskReader(fields, reckoning, problems).read();
  }

  private static Map<String, Set<String>> kinds() {
    Map<String, Set<String>> kinds = new LinkedHashMap<>();
    kinds.put("number", Set.of("quantity", "tolerance", "slips"));
    kinds.put("choice", Set.of("options"));
    kinds.put("several", Set.of("options"));
    kinds.put("order", Set.of("steps", "because"));
    kinds.put("pairs", Set.of("pairs", "extras"));
    kinds.put("plan", Set.of("plan", "plans", "covered", "spare", "because"));
    kinds.put("fault", Set.of("items", "faults", "mend", "tolerance"));
    return kinds;
  }

  private Optional<Task> read() {
    Optional<String> kind = fields.line("kind");
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    if (!OF_KIND.containsKey(kind.get())) {
      problems.add(
          fields.position("kind"),
          "there is no kind of exercise '" + kind.get() + "'",
          Nearest.help(kind.get(), OF_KIND.keySet()));
      return Optional.empty();
    }
    Set<String> known = new TreeSet<>(OF_ALL);
    known.addAll(OF_KIND.get(kind.get()));
    fields.refuseOthers("an exercise of kind '" + kind.get() + "'", known);
    return switch (kind.get()) {
      case "number" -> number();
      case "choice" -> new OptionsReader(fields, problems).choice();
      case "several" -> new OptionsReader(fields, problems).several();
      case "order" -> new ListsReader(fields, problems).order();
      case "pairs" -> new ListsReader(fields, problems).pairs();
      case "plan" -> new PlanFields(fields, reckoning, problems).read();
      default -> reckoning.flatMap(all -> new FaultReader(fields, all, problems).read(tolerance()));
    };
  }

  private Optional<Task> number() {
    Optional<String> key = fields.line("quantity");
    OptionalDouble tolerance = tolerance();
    if (key.isEmpty() || reckoning.isEmpty()) {
      return Optional.empty();
    }
    Position position = fields.position("quantity");
    Optional<Quantity> quantity = reckoning.get().ledger().find(key.get());
    if (quantity.isEmpty()) {
      problems.add(
          position,
          "no quantity is called '" + key.get() + "'",
          FormulaField.nearest(key.get(), reckoning.get().ledger()));
      return Optional.empty();
    }
    if (quantity.get().unit() == Unit.ANSWER) {
      problems.add(
          position,
          "'" + key.get() + "' is yes or no, not a number",
          "ask it as kind: choice, so that each answer can say why");
      return Optional.empty();
    }
    if (reckoning.get().of(key.get()) instanceof Outcome.Refused refused) {
      problems.add(
          position,
          "'" + key.get() + "' has no value on this scene: " + refused.reason(),
          "change the scene, or ask what stands in the way as kind: choice");
      return Optional.empty();
    }
    return SlipReader.read(fields, new NumberTask(key.get(), tolerance), reckoning.get(), problems);
  }

  private OptionalDouble tolerance() {
    if (!fields.has("tolerance")) {
      return OptionalDouble.empty();
    }
    Optional<String> written = fields.line("tolerance");
    if (written.isEmpty()) {
      return OptionalDouble.empty();
    }
    SceneText.Read read = SceneText.read(written.get(), Dimension.SHARE, Lengths.METRIC);
    double share = read.si();
    if (read.fault().isPresent() || !(share > 0 && share <= NumberTask.WIDEST_TOLERANCE)) {
      problems.add(
          fields.position("tolerance"),
          "the tolerance cannot be '" + written.get() + "'",
          "write a share of the answer, above 0 and up to "
              + Numbers.significant(Unit.PERCENT.fromSi(NumberTask.WIDEST_TOLERANCE), 3)
              + " %, such as 3 %");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(share);
  }
}
