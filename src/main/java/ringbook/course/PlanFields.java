package ringbook.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.exercises.PlanTask;
import ringbook.exercises.PlanTerms;
import ringbook.exercises.Task;
import ringbook.exercises.Wording;
import ringbook.ledger.Reckoning;
import ringbook.plans.PlanReading;
import ringbook.plans.WrittenPlan;
import ringbook.problems.Problems;
import ringbook.shots.SceneText;
import ringbook.units.Decimal;
import ringbook.units.Dimension;
import ringbook.units.Lengths;

/** Reads an exercise that asks for a plan: the model plans, how much they must show, economy. */
final class PlanFields {

  /** In place of a plan: the author states none, and the ledger's numbers give one. */
  private static final String OF_LEDGER = "of the ledger";

  private final ExerciseFields fields;
  private final Optional<Reckoning> reckoning;
  private final Problems problems;

  PlanFields(ExerciseFields fields, Optional<Reckoning> reckoning, Problems problems) {
    this.fields = fields;
    this.reckoning = reckoning;
    this.problems = problems;
  }

  /**
   * The task; empty, with the faults told, where there is none. Whether the plan passes is no
   * matter of reading.
   */
  Optional<Task> read() {
    int before = problems.size();
    List<WrittenPlan> plans = plans();
    double covered = covered();
    double spare = spare();
    Optional<Wording> because = fields.wording("because");
    reckoning
        .filter(any -> !plans.isEmpty())
        .flatMap(PlanTask::missing)
        .ifPresent(
            reason ->
                problems.add(
                    fields.position("scene"),
                    "no plan can be laid out on this scene: " + reason,
                    "change the scene"));
    return problems.size() > before
        ? Optional.empty()
        : Optional.of(new PlanTask(plans, new PlanTerms(covered, spare), because.orElseThrow()));
  }

  private List<WrittenPlan> plans() {
    List<WrittenPlan> plans = new ArrayList<>();
    if (fields.has("plans")) {
      Optional<YamlNode.Field> list = fields.find("plans");
      if (list.get().value() instanceof YamlNode.Items items) {
        for (YamlNode item : items.items()) {
          fields.wording(item).flatMap(this::plan).ifPresent(plans::add);
        }
      } else {
        problems.add(
            list.get().position(), "'plans:' must hold a list", "write '- rings: …' for each");
      }
      return plans;
    }
    Optional<Wording> stated = fields.wording("plan");
    if (stated.isPresent() && !stated.get().markdown().equals(OF_LEDGER)) {
      plan(stated.get()).ifPresent(plans::add);
    }
    return plans;
  }

  private Optional<WrittenPlan> plan(Wording wording) {
    PlanReading reading = WrittenPlan.read(wording.markdown());
    if (reading.plan().isEmpty()) {
      problems.add(wording.at(), "the plan cannot be read: " + reading.message(), reading.help());
    }
    return reading.plan();
  }

  private double covered() {
    if (!fields.has("covered")) {
      return PlanTerms.USUAL_COVERED;
    }
    String written = fields.line("covered").orElse("");
    SceneText.Read read = SceneText.read(written, Dimension.SHARE, Lengths.METRIC);
    if (read.fault().isPresent() || !(read.si() > 0 && read.si() <= 1)) {
      problems.add(
          fields.position("covered"),
          "the share to be seen well cannot be '" + written + "'",
          "write a share of what can be seen, above 0 and up to 100 %, such as 95 %");
      return PlanTerms.USUAL_COVERED;
    }
    return read.si();
  }

  private double spare() {
    if (!fields.has("spare")) {
      return PlanTerms.USUAL_SPARE;
    }
    String written = fields.line("spare").orElse("");
    double factor = Decimal.parse(written).orElse(0);
    if (!(factor >= 1 && factor <= 10)) {
      problems.add(
          fields.position("spare"),
          "'spare:' cannot be '" + written + "'",
          "write how many times the photographs of the model plan earn full marks, 1 to 10, such"
              + " as 1.4");
      return PlanTerms.USUAL_SPARE;
    }
    return factor;
  }
}
