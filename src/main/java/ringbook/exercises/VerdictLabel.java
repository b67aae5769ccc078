package ringbook.exercises;

/** The short name of each verdict. */
final class VerdictLabel implements Verdict.Cases<String> {

  static final VerdictLabel LABEL = new VerdictLabel();

  private VerdictLabel() {}

  @Override
  public String right() {
    return "right";
  }

  @Override
  public String blank() {
    return "no answer";
  }

  @Override
  public String unreadable(Verdict.Unreadable verdict) {
    return "not readable";
  }

  @Override
  public String unitMissing(Verdict.UnitMissing verdict) {
    return verdict.fits().isPresent() ? "unit missing" : "wrong, unit missing";
  }

  @Override
  public String wrongKind(Verdict.WrongKind verdict) {
    return "wrong kind of unit";
  }

  @Override
  public String slip(Verdict.SlipMade verdict) {
    return "slip " + (verdict.index() + 1);
  }

  @Override
  public String unitSwapped(Verdict.UnitSwapped verdict) {
    return "units mixed up";
  }

  @Override
  public String tenfold(Verdict.Tenfold verdict) {
    return verdict.factor() + " times " + (verdict.tooLarge() ? "too large" : "too small");
  }

  @Override
  public String signTurned() {
    return "sign turned";
  }

  @Override
  public String roundedEarly() {
    return "rounded too early";
  }

  @Override
  public String notWhole() {
    return "not a whole number";
  }

  @Override
  public String oneOff(Verdict.OneOff verdict) {
    return verdict.tooMany() ? "one too many" : "one too few";
  }

  @Override
  public String off(Verdict.Off verdict) {
    return "wrong";
  }

  @Override
  public String otherOption(Verdict.OtherOption verdict) {
    return "wrong option";
  }

  @Override
  public String noSuchOption(Verdict.NoSuchOption verdict) {
    return "no such option";
  }

  @Override
  public String severalOff(Verdict.SeveralOff verdict) {
    return "not just the right ones";
  }

  @Override
  public String orderOff(Verdict.OrderOff verdict) {
    return "another order";
  }

  @Override
  public String pairsOff(Verdict.PairsOff verdict) {
    return "not all pairs";
  }

  @Override
  public String otherItem(Verdict.OtherItem verdict) {
    return "right item called wrong";
  }

  @Override
  public String valueOpen(Verdict.ValueOpen verdict) {
    return verdict.given() ? "found, value wrong" : "found, value missing";
  }

  @Override
  public String planOff(Verdict.PlanOff verdict) {
    return verdict.lack().label();
  }
}
