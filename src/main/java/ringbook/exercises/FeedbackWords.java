package ringbook.exercises;

import java.util.List;
import ringbook.units.Dimension;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** One kind sentence for each verdict. */
final class FeedbackWords implements Verdict.Cases<String> {

  /** Beyond this no ratio helps. */
  private static final double FAR = 100;

  private final Mark mark;
  private final String written;

  FeedbackWords(Mark mark) {
    this.mark = mark;
    this.written = Plain.quoted(mark.answer().text());
  }

  @Override
  public String right() {
    return mark.exercise().task().show(new RightWords(mark.exercise(), mark.answer().text()));
  }

  @Override
  public String blank() {
    return "Nothing was handed in for this one.";
  }

  @Override
  public String unreadable(Verdict.Unreadable verdict) {
    return "This cannot be read: " + verdict.message() + ".";
  }

  @Override
  public String unitMissing(Verdict.UnitMissing verdict) {
    return verdict
        .fits()
        .map(
            unit -> "The number is right, but its unit is missing: you mean " + inWords(unit) + ".")
        .orElse(written + " has no unit, and the number is not right in any unit.");
  }

  @Override
  public String wrongKind(Verdict.WrongKind verdict) {
    return "The question asks for "
        + verdict.asked().noun()
        + "; "
        + written
        + " is "
        + verdict.given().noun()
        + ".";
  }

  @Override
  public String slip(Verdict.SlipMade verdict) {
    if (mark.exercise().task() instanceof NumberTask task) {
      return task.slips().get(verdict.index()).says().markdown();
    }
    throw new IllegalStateException("only numbers have slips");
  }

  @Override
  public String unitSwapped(Verdict.UnitSwapped verdict) {
    return "The number would be right in "
        + inWords(verdict.meant())
        + ", but you wrote "
        + inWords(verdict.given())
        + ".";
  }

  @Override
  public String tenfold(Verdict.Tenfold verdict) {
    return "The digits are right, but "
        + written
        + " is "
        + verdict.factor()
        + " times too "
        + (verdict.tooLarge() ? "large." : "small.");
  }

  @Override
  public String signTurned() {
    return "The size is right, but plus and minus are the wrong way round.";
  }

  @Override
  public String roundedEarly() {
    return written + " is very near: the way is right, but something was rounded too early.";
  }

  @Override
  public String notWhole() {
    return "Only whole things can be counted; " + written + " is not a whole number.";
  }

  @Override
  public String oneOff(Verdict.OneOff verdict) {
    return "Nearly: " + written + " is one too " + (verdict.tooMany() ? "many." : "few.");
  }

  @Override
  public String off(Verdict.Off verdict) {
    if (verdict.ratio().isEmpty()) {
      return written + " is not the answer.";
    }
    double ratio = verdict.ratio().getAsDouble();
    if (ratio > FAR || ratio < 1 / FAR) {
      return written + " is far too " + (ratio > 1 ? "large." : "small.");
    }
    if (ratio < 1.5 && ratio > 1 / 1.5) {
      return written + " is too " + (ratio > 1 ? "large." : "small.");
    }
    return ratio > 1
        ? written + " is about " + Numbers.significant(ratio, 2) + " times the right answer."
        : written
            + " is too small: the right answer is about "
            + Numbers.significant(1 / ratio, 2)
            + " times as large.";
  }

  @Override
  public String otherOption(Verdict.OtherOption verdict) {
    if (mark.exercise().task() instanceof ChoiceTask task) {
      return "Not " + Letters.of(verdict.index()) + ". " + because(task.options(), verdict.index());
    }
    throw new IllegalStateException("only a choice has one right option");
  }

  @Override
  public String noSuchOption(Verdict.NoSuchOption verdict) {
    char last = ChoiceTask.letter(verdict.options() - 1);
    return written + " is none of the options a " + (last == 'b' ? "and " : "to ") + last + ".";
  }

  @Override
  public String severalOff(Verdict.SeveralOff verdict) {
    List<ChoiceTask.Option> options = ((SeveralTask) mark.exercise().task()).options();
    StringBuilder words = new StringBuilder();
    for (int index : verdict.wrong()) {
      words.append("Not ").append(Letters.of(index)).append(". ");
      words.append(because(options, index)).append(' ');
    }
    for (int index : verdict.missed()) {
      words.append("Also ").append(Letters.of(index)).append(". ");
      words.append(because(options, index)).append(' ');
    }
    return words.substring(0, words.length() - 1);
  }

  @Override
  public String orderOff(Verdict.OrderOff verdict) {
    OrderTask task = (OrderTask) mark.exercise().task();
    String away =
        verdict.swaps() == 1
            ? "Nearly: two steps side by side must change places. "
            : "Two steps side by side must change places "
                + verdict.swaps()
                + " times until the order is right. ";
    return away
        + "Step "
        + Letters.of(verdict.sooner())
        + " ("
        + Plain.unstopped(task.step(verdict.sooner()).markdown())
        + ") comes before step "
        + Letters.of(verdict.later())
        + " ("
        + Plain.unstopped(task.step(verdict.later()).markdown())
        + ").";
  }

  @Override
  public String pairsOff(Verdict.PairsOff verdict) {
    PairsTask task = (PairsTask) mark.exercise().task();
    int right = task.pairs().size() - verdict.wrong().size() - verdict.open().size();
    StringBuilder words = new StringBuilder();
    words.append(right == 0 ? "None" : right).append(" of the ").append(task.pairs().size());
    words.append(right > 1 ? " pairs are right." : " pairs is right.");
    for (int index : verdict.wrong()) {
      PairsTask.Pair pair = task.pairs().get(index);
      words.append(" For ").append(index + 1).append(": ").append(pair.because().markdown());
    }
    if (!verdict.open().isEmpty()) {
      words.append(" Some numbers have no letter yet.");
    }
    return words.toString();
  }

  @Override
  public String otherItem(Verdict.OtherItem verdict) {
    FaultTask task = (FaultTask) mark.exercise().task();
    return "Line "
        + Letters.of(verdict.index())
        + " ("
        + task.items().get(verdict.index()).name().markdown()
        + ") is right as it stands.";
  }

  @Override
  public String valueOpen(Verdict.ValueOpen verdict) {
    FaultTask task = (FaultTask) mark.exercise().task();
    return "You found it: "
        + task.fault().because().markdown()
        + (verdict.given()
            ? " But your value for it is not right."
            : " Its right value is missing.");
  }

  @Override
  public String planOff(Verdict.PlanOff verdict) {
    return verdict.words();
  }

  private static String because(List<ChoiceTask.Option> options, int index) {
    return options.get(index).because().markdown();
  }

  /** The longest spelling is the unit's name in full: centimetres. */
  private static String inWords(Unit unit) {
    if (unit.dimension() == Dimension.SHARE) {
      return unit == Unit.PERCENT ? "per cent" : "a part of one";
    }
    String name = unit.symbol();
    for (String spelling : unit.spellings()) {
      name = spelling.length() > name.length() ? spelling : name;
    }
    return name;
  }
}
