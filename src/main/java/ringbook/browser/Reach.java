package ringbook.browser;

import java.util.Optional;
import ringbook.exercises.PlanTask;
import ringbook.geometry.Shape;

/**
 * How far one of the two scripts goes in the data of a course. What looks at the object patch by
 * patch is large and slow, so only the worker's script has it.
 */
interface Reach {

  /** The form of the object; empty where it is not stated or not wanted. */
  Optional<Shape> shape(JsonTree solids);

  /**
   * The task of an exercise that asks for a plan.
   *
   * @throws IllegalArgumentException if plans are not judged here
   */
  PlanTask plan(JsonTree task);

  /** Numbers and words: no number of the ledger asks for more than the sizes of the object. */
  final class Numbers implements Reach {
    @Override
    public Optional<Shape> shape(JsonTree solids) {
      return Optional.empty();
    }

    @Override
    public PlanTask plan(JsonTree task) {
      throw new IllegalArgumentException("plans are judged by the worker");
    }
  }

  /** All of it. */
  final class Sight implements Reach {
    @Override
    public Optional<Shape> shape(JsonTree solids) {
      return solids.items().isEmpty() ? Optional.empty() : Optional.of(ShapeData.read(solids));
    }

    @Override
    public PlanTask plan(JsonTree task) {
      return TaskData.plan(task);
    }
  }
}
