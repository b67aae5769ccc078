package ringbook.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.NumberTask;
import ringbook.exercises.Task;
import ringbook.exercises.Wording;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.SceneText;
import ringbook.units.Dimension;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** Reads what an exercise asks for; each kind has its own fields. */
final class TaskReader {

  private static final Set<String> OF_ALL = Set.of("id", "title", "kind", "ask", "scene", "hint");
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
    return kind.get().equals("number") ? number() : choice();
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
          Nearest.to(key.get(), reckoning.get().ledger().keys())
              .map(near -> "did you mean '" + near + "'?")
              .orElse("the command 'quantities' lists them all"));
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
    SceneText.Read read = SceneText.read(written.get(), Dimension.SHARE);
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

  private Optional<Task> choice() {
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
    if (problems.size() > before) {
      return Optional.empty();
    }
    return checked(options, field.get().position());
  }

  private Optional<Task> checked(List<ChoiceTask.Option> options, Position position) {
    long right = options.stream().filter(ChoiceTask.Option::right).count();
    if (options.size() < 2 || options.size() > ChoiceTask.MOST) {
      problems.add(
          position,
          "a choice has 2 to " + ChoiceTask.MOST + " options, here are " + options.size(),
          "add or drop some");
      return Optional.empty();
    }
    if (right != 1) {
      problems.add(
          position,
          right == 0 ? "none of the options is right" : right + " options are right",
          "write 'right: true' under exactly one of them");
      return Optional.empty();
    }
    Set<String> seen = new TreeSet<>();
    for (ChoiceTask.Option option : options) {
      if (!seen.add(option.text().markdown())) {
        problems.add(
            option.text().at(), "two options say '" + option.text().markdown() + "'", "drop one");
        return Optional.empty();
      }
    }
    return Optional.of(new ChoiceTask(options));
  }

  private Optional<ChoiceTask.Option> option(YamlNode item) {
    if (!(item instanceof YamlNode.Fields inner)) {
      problems.add(
          item.position(),
          "an option is a set of fields, not " + item.kind(),
          "write '- text: …' and 'because: …' below it");
      return Optional.empty();
    }
    ExerciseFields option = fields.below(inner);
    option.refuseOthers("an option", new TreeSet<>(Set.of("text", "right", "because")));
    Optional<Wording> text = option.wording("text");
    Optional<Wording> because = option.wording("because");
    boolean right = false;
    if (option.has("right")) {
      String written = option.line("right").orElse("");
      right = written.equals("true");
      if (!right && !written.isEmpty() && !written.equals("false")) {
        problems.add(
            option.position("right"),
            "'right:' cannot be '" + written + "'",
            "write true under the right option and leave it out elsewhere");
      }
    }
    if (text.isEmpty() || because.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new ChoiceTask.Option(text.get(), right, because.get()));
  }
}
