package ringbook.exercises;

/** What a plan of photographs lacks, in the order in which it is told. */
public enum PlanLack {
  /** Nothing: it passes with few photographs. */
  NOTHING("right"),
  /** A lens would be nearer than it can focus. */
  FOCUS("plan: too near to focus"),
  /** A lens would be where no person of the group can hold it. */
  REACH("plan: out of reach"),
  /** Neighbours on a ring are turned too far from each other. */
  STEP("plan: too few on a ring"),
  /** The photographs fall into pieces that share too little. */
  APART("plan: falls apart"),
  /** Too little of the surface is seen well. */
  SPOTS("plan: not all is seen"),
  /** It passes, with more photographs than it takes. */
  WASTE("plan: more than it takes");

  private final String label;

  PlanLack(String label) {
    this.label = label;
  }

  /** The name it goes by in lists of marks. */
  String label() {
    return label;
  }
}
