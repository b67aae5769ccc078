package ringbook.exercises;

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
    return mark.exercise()
        .task()
        .show(
            new Task.Cases<String>() {
              @Override
              public String number(NumberTask task) {
                return "Right: " + mark.exercise().answerText() + ".";
              }

              @Override
              public String choice(ChoiceTask task) {
                return "Right. " + because(task, task.rightIndex());
              }
            });
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
        .orElse(written + " has no unit, and the number fits with none.");
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
    return mark.exercise()
        .task()
        .show(
            new Task.Cases<String>() {
              @Override
              public String number(NumberTask task) {
                return task.slips().get(verdict.index()).says().markdown();
              }

              @Override
              public String choice(ChoiceTask task) {
                throw new IllegalStateException("a choice has no slips");
              }
            });
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
    return "The size is right, but the sign is turned.";
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
    return mark.exercise()
        .task()
        .show(
            new Task.Cases<String>() {
              @Override
              public String number(NumberTask task) {
                throw new IllegalStateException("a number has no options");
              }

              @Override
              public String choice(ChoiceTask task) {
                return "Not "
                    + ChoiceTask.letter(verdict.index())
                    + ". "
                    + because(task, verdict.index());
              }
            });
  }

  @Override
  public String noSuchOption(Verdict.NoSuchOption verdict) {
    char last = ChoiceTask.letter(verdict.options() - 1);
    return written + " is none of the options a " + (last == 'b' ? "and " : "to ") + last + ".";
  }

  private static String because(ChoiceTask task, int index) {
    return task.options().get(index).because().markdown();
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
