package ringbook.course;

/**
 * One entry of the ledger as the appendix shows it.
 *
 * @param key its key
 * @param name its name
 * @param meaning one sentence
 * @param symbolXhtml its symbol, typeset
 * @param formulaXhtml its formula typeset, or its rule in words
 * @param value its value for the course's scene, or why there is none
 * @param range where its values can lie, in a few words
 * @param source where the formula comes from
 * @param checks ids of its outside checks, joined by commas
 */
public record ComposedQuantity(
    String key,
    String name,
    String meaning,
    String symbolXhtml,
    String formulaXhtml,
    String value,
    String range,
    String source,
    String checks) {

  /** What stands instead of a formula where the scene states the value. */
  public static final String STATED = "stated for the group";

  /** Whether the scene states it; else it is worked out. */
  public boolean stated() {
    return formulaXhtml.equals(STATED);
  }
}
