package ringbook.assess.findings;

/** How bad a finding is, the worst first. */
public enum Gravity {
  /** The photographs do not become one model. */
  BREAKS,
  /** Part of the surface is missing from the model. */
  HOLE,
  /** Part of the surface, or the set as a whole, hangs on too little. */
  WEAK,
  /** It cannot be otherwise with this aim; good to know. */
  NOTE
}
