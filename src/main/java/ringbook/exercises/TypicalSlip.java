package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Wrong ways that learners take again and again, by name, so that an author need not write their
 * formulas. Each changes the formula of what is asked for. Common practice, no source.
 */
public enum TypicalSlip {
  RADIUS_FOR_DIAMETER(
      "radius for diameter",
      "(KEY / 2)",
      "You put in half of NAME. Take the whole of it: from side to side, not from the middle."),
  DIAMETER_FOR_RADIUS(
      "diameter for radius",
      "(KEY * 2)",
      "You put in twice NAME. Take it once: from the middle, not from side to side."),
  HALF_THE_ANGLE(
      "half the angle", "(KEY / 2)", "You put in half of NAME. The whole angle belongs here."),
  TWICE_THE_ANGLE("twice the angle", "(KEY * 2)", "You put in twice NAME. Take the angle once."),
  CENTIMETRES_FOR_METRES(
      "centimetres for metres",
      "(KEY * 100)",
      "You put in NAME in centimetres among lengths in metres. Turn all lengths into one unit"
          + " first."),
  MILLIMETRES_FOR_CENTIMETRES(
      "millimetres for centimetres",
      "(KEY * 10)",
      "You put in NAME in millimetres among lengths in centimetres. Turn all lengths into one unit"
          + " first."),
  FORGOT_THE_EQUIVALENCE(
      "forgot the equivalence",
      "kit.equivalent",
      "You put in the 35 mm equivalent. It belongs to a 36 mm wide sensor; this sensor goes with"
          + " the real focal length."),
  FORGOT_TO_ROUND_UP(
      "forgot to round up",
      "",
      "You rounded down. Whatever is left over needs one more: round up."),
  FROM_THE_FAR_FACE(
      "from the far face",
      "",
      "You measured from the far face. The question asks from the near one."),
  FROM_THE_MIDDLE(
      "from the middle",
      "",
      "You measured from the middle of the object. The question asks from its near face.");

  private static final String EQUIVALENCE_OF = "kit.focalLength";

  private final String label;
  private final String instead;
  private final String says;

  TypicalSlip(String label, String instead, String says) {
    this.label = label;
    this.instead = instead;
    this.says = says;
  }

  /** How an author calls it: {@code half the angle}. */
  public String label() {
    return label;
  }

  /** All labels. */
  public static List<String> labels() {
    List<String> labels = new ArrayList<>();
    for (TypicalSlip slip : values()) {
      labels.add(slip.label);
    }
    return labels;
  }

  /** The slip of that label, if there is one. */
  public static Optional<TypicalSlip> labelled(String label) {
    for (TypicalSlip slip : values()) {
      if (slip.label.equals(label)) {
        return Optional.of(slip);
      }
    }
    return Optional.empty();
  }

  /** Whether the author must say of which quantity: {@code of: ring.realStep}. */
  public boolean needsQuantity() {
    return instead.indexOf("KEY") >= 0;
  }

  /**
   * The wrong way to {@code asked}; empty where its formula has no place for this slip.
   *
   * @param asked key of what is asked for
   * @param formula its formula, as text; empty where a rule gives it
   * @param of key of the quantity that is put in wrongly; empty where none is needed
   */
  public Optional<String> way(String asked, String formula, String of) {
    return switch (this) {
      case FROM_THE_FAR_FACE -> Optional.of(asked + " + distance.turningWidth");
      case FROM_THE_MIDDLE -> Optional.of(asked + " + distance.turningWidth / 2");
      case FORGOT_TO_ROUND_UP -> changed(formula, "ceil", "floor");
      case FORGOT_THE_EQUIVALENCE -> changed(formula, EQUIVALENCE_OF, instead);
      default -> changed(formula, of, instead.replace("KEY", of));
    };
  }

  /** What the learner is told; {@code name} is the name of the quantity put in wrongly. */
  public String says(String name) {
    return says.replace("NAME", "the " + name);
  }

  /** The formula with every {@code old} that stands as a whole name replaced. */
  private static Optional<String> changed(String formula, String old, String other) {
    StringBuilder out = new StringBuilder();
    int from = 0;
    int at = old.isEmpty() ? -1 : formula.indexOf(old);
    while (at >= 0) {
      int end = at + old.length();
      boolean whole =
          (at == 0 || !isPartOfName(formula.charAt(at - 1)))
              && (end == formula.length() || !isPartOfName(formula.charAt(end)));
      out.append(formula, from, at).append(whole ? other : old);
      from = end;
      at = formula.indexOf(old, end);
    }
    String changed = out.append(formula.substring(from)).toString();
    return changed.equals(formula) ? Optional.empty() : Optional.of(changed);
  }

  private static boolean isPartOfName(char c) {
    return c == '.' || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
  }
}
