package ringbook.plans;

import java.util.Optional;

/**
 * What came of reading a plan that a person wrote.
 *
 * @param plan the plan; empty where something cannot be read
 * @param message what was read there and what is wrong with it, without a full stop; empty if all
 *     is well
 * @param help what was expected, without a full stop; empty if all is well
 */
public record PlanReading(Optional<WrittenPlan> plan, String message, String help) {

  static PlanReading of(WrittenPlan plan) {
    return new PlanReading(Optional.of(plan), "", "");
  }

  static PlanReading fault(String message, String help) {
    return new PlanReading(Optional.empty(), message, help);
  }
}
