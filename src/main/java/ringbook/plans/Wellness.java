package ringbook.plans;

import java.util.List;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Tally;

/**
 * What some stations see together.
 *
 * @param tally their views put together
 */
record Wellness(Tally tally) {

  static Wellness of(Seeing seeing, List<Candidate> candidates) {
    Tally tally = new Tally(seeing.limits(), seeing.surface().count());
    candidates.forEach(candidate -> tally.add(candidate.view()));
    return new Wellness(tally);
  }

  boolean well(int patch) {
    return tally.classOf(patch) == PatchClass.WELL;
  }

  /** Which patches are seen well. */
  boolean[] wells() {
    boolean[] wells = new boolean[tally.patches()];
    for (int i = 0; i < wells.length; i++) {
      wells[i] = well(i);
    }
    return wells;
  }

  /** Numbers of the patches that are not. */
  int[] missing() {
    boolean[] wells = wells();
    int count = 0;
    for (boolean well : wells) {
      count += well ? 0 : 1;
    }
    int[] missing = new int[count];
    for (int i = wells.length - 1; i >= 0; i--) {
      if (!wells[i]) {
        missing[--count] = i;
      }
    }
    return missing;
  }
}
