package ringbook.sheets;

import java.util.List;
import java.util.Optional;

/**
 * What answer sheets are read by.
 *
 * @param exercises ids, in the order of the course
 * @param group who may hand in; empty where anybody may
 * @param ownNumbers whether an answer that does not say so was worked out from the learner's own
 *     numbers, or else from those printed in the course
 */
public record SheetRules(List<String> exercises, Optional<ClassList> group, boolean ownNumbers) {

  public SheetRules {
    exercises = List.copyOf(exercises);
  }
}
