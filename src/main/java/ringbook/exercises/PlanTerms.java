package ringbook.exercises;

/**
 * When a plan passes and what it is worth.
 *
 * @param covered share of what can be seen at all that must be seen well, above 0 and up to 1
 * @param spare how many times the photographs of the model plan earn full marks, at least 1
 */
public record PlanTerms(double covered, double spare) {

  /** Share asked for where the author states none. */
  public static final double USUAL_COVERED = 0.95;

  /** Times the photographs of the model plan where the author states none. */
  public static final double USUAL_SPARE = 1.4;

  /** Times the full marks' number from which a plan that passes is worth only half. */
  static final double HALF_FROM = 1.5;

  /** Times the full marks' number from which a plan that passes is worth only a quarter. */
  static final double QUARTER_FROM = 2;

  public PlanTerms {
    if (!(covered > 0 && covered <= 1) || !(spare >= 1)) {
      throw new IllegalArgumentException("a share up to 1 and a factor from 1 are needed");
    }
  }

  /** Most photographs with full marks, if the model plan has {@code photos}. */
  int most(int photos) {
    return (int) Math.floor(photos * spare + 1e-9);
  }

  /** What a plan that passes is worth. */
  Credit worth(int photos, int most) {
    if (photos <= most) {
      return Credit.FULL;
    }
    if (photos <= HALF_FROM * most) {
      return Credit.THREE_QUARTERS;
    }
    return photos <= QUARTER_FROM * most ? Credit.HALF : Credit.QUARTER;
  }

  /**
   * What a plan that does not pass is worth: half if only a part is missing and it shows three
   * quarters of what was asked for, a quarter if it shows half of it.
   *
   * @param shown share of what can be seen at all that it shows well
   * @param sound whether nothing but coverage is wrong
   */
  Credit part(double shown, boolean sound) {
    double part = shown / covered;
    if (sound && part >= 0.75) {
      return Credit.HALF;
    }
    return part >= 0.5 ? Credit.QUARTER : Credit.NONE;
  }
}
