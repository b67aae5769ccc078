package ringbook.ledger;

/** Carries a refusal out of a computing method; never leaves {@link Reckoning}. */
public final class RefusedException extends RuntimeException {

  private final transient Outcome.Refused refusal;

  /** A refusal with its reason and the nearest thing that would work. */
  public RefusedException(String reason, String help) {
    this(new Outcome.Refused(reason, help));
  }

  RefusedException(Outcome.Refused refusal) {
    super(refusal.reason());
    this.refusal = refusal;
  }

  /** The refusal itself. */
  public Outcome.Refused refusal() {
    return refusal;
  }
}
