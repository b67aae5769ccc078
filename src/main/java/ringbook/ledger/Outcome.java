package ringbook.ledger;

/** What working out a quantity gives: a number, or the reason why there is none. */
public sealed interface Outcome {

  /**
   * The number, in SI; infinite only for quantities whose entry says so.
   *
   * @param si never NaN
   */
  record Known(double si) implements Outcome {
    public Known {
      if (Double.isNaN(si)) {
        throw new IllegalArgumentException("an outcome must be a number");
      }
    }
  }

  /**
   * No such number exists for this scene.
   *
   * @param reason one sentence a newcomer understands
   * @param help the nearest thing that would work; may be empty
   */
  record Refused(String reason, String help) implements Outcome {}
}
