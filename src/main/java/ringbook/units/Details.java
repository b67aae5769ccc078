package ringbook.units;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * Numbers that may be stated or left to their usual value: only those stated, in SI, by key.
 *
 * @param stated never changes
 */
public record Details(Map<String, Double> stated) {

  /** Nothing stated. */
  public static final Details NONE = new Details(Map.of());

  public Details {
    // Sorted, so that two equal ones also look alike.
    stated = InOrder.byKey(stated);
  }

  /** The number stated under {@code key}. */
  public OptionalDouble find(String key) {
    Double number = stated.get(key);
    return number == null ? OptionalDouble.empty() : OptionalDouble.of(number);
  }
}
