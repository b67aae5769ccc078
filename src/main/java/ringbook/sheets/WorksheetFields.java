package ringbook.sheets;

/**
 * Names of the fields of a worksheet that are no answers. Answers stand in fields that are named as
 * their exercises, whose ids never begin with this sign.
 */
public final class WorksheetFields {

  /** Who fills it in. */
  public static final String LEARNER = "@learner";

  /** Whose numbers stand on it: {@code own} or {@code book}. */
  public static final String NUMBERS = "@numbers";

  /** The title of the course it belongs to. */
  public static final String COURSE = "@course";

  private WorksheetFields() {}
}
