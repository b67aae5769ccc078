package ringbook.exercises;

import ringbook.units.Dimension;
import ringbook.units.Words;

/** What to do next, for each verdict. */
final class NextWords implements Verdict.Cases<String> {

  private static final String FOLLOW =
      "Go through the working line by line and put your own numbers beside it.";

  private final Mark mark;

  NextWords(Mark mark) {
    this.mark = mark;
  }

  @Override
  public String right() {
    return "";
  }

  @Override
  public String blank() {
    return "Read the working, cover it up, and try it yourself.";
  }

  @Override
  public String unreadable(Verdict.Unreadable verdict) {
    String write = "Write " + mark.exercise().answerHint() + ", and nothing else.";
    String help = verdict.help();
    if (help.isEmpty()) {
      return write;
    }
    String begun = Words.upper(help.substring(0, 1)) + help.substring(1);
    return help.endsWith("?") ? begun + " " + write : begun + ".";
  }

  @Override
  public String unitMissing(Verdict.UnitMissing verdict) {
    return verdict.fits().isPresent()
        ? "Write the unit beside every number: without it nobody can use your notes."
        : "Write the unit beside every number, then compare with the working.";
  }

  @Override
  public String wrongKind(Verdict.WrongKind verdict) {
    return "Read the question again and say in words what is asked for, then look at the working.";
  }

  @Override
  public String slip(Verdict.SlipMade verdict) {
    return "Find the step in the working where your way turned off, and go on from there.";
  }

  @Override
  public String unitSwapped(Verdict.UnitSwapped verdict) {
    return "Check which unit each number you put in is in, and which one comes out.";
  }

  @Override
  public String tenfold(Verdict.Tenfold verdict) {
    boolean length = verdictDimension() == Dimension.LENGTH;
    return length
        ? "Turn all lengths into one unit before you put them in: "
            + mark.exercise()
                .reckoning()
                .scene()
                .aim()
                .lengths()
                .either("1 m = 100 cm = 1000 mm.", "1 ft = 12 in, 1 in = 25.4 mm.")
        : "Turn all numbers into one unit before you put them in, and check the decimal point.";
  }

  @Override
  public String signTurned() {
    return "Make a sketch and mark which direction counts as plus.";
  }

  @Override
  public String roundedEarly() {
    return "Keep all digits until the last line, and round only there.";
  }

  @Override
  public String notWhole() {
    return "See in the working whether the number is to be rounded up or down.";
  }

  @Override
  public String oneOff(Verdict.OneOff verdict) {
    return "See in the working how the number is rounded, and count the first and the last only"
        + " once.";
  }

  @Override
  public String off(Verdict.Off verdict) {
    return FOLLOW;
  }

  @Override
  public String otherOption(Verdict.OtherOption verdict) {
    return "Compare your reason with the one of the right answer.";
  }

  @Override
  public String noSuchOption(Verdict.NoSuchOption verdict) {
    boolean several =
        mark.exercise().task() instanceof SeveralTask
            || mark.exercise().task() instanceof OrderTask;
    return several ? "Write only letters, such as a, b." : "Write only the letter of the option.";
  }

  @Override
  public String severalOff(Verdict.SeveralOff verdict) {
    return "Go through the options one by one and give a reason for each before you compare.";
  }

  @Override
  public String orderOff(Verdict.OrderOff verdict) {
    return "Ask of every step what must be done before it can begin.";
  }

  @Override
  public String pairsOff(Verdict.PairsOff verdict) {
    return "Cover the right side, say in your own words what belongs to each number, then look"
        + " again.";
  }

  @Override
  public String otherItem(Verdict.OtherItem verdict) {
    return "Work every line out for yourself, one after the other, and compare.";
  }

  @Override
  public String valueOpen(Verdict.ValueOpen verdict) {
    return "Work the right value out and put it in the place of the wrong one.";
  }

  @Override
  public String planOff(Verdict.PlanOff verdict) {
    return switch (verdict.lack()) {
      case FOCUS, REACH ->
          "Work out where the lens would be: at which height, how far from walls and"
              + " furniture.";
      case STEP -> "Divide 360° by the number of photographs and compare with the largest step.";
      case APART ->
          "Go from photograph to photograph: does each share enough with one that came"
              + " before?";
      case SPOTS ->
          "Ask of every side, edge, hollow and the underside which photographs look"
              + " squarely at it, and at least three must.";
      default -> "Leave out one run after the other and ask what only that run shows.";
    };
  }

  private Dimension verdictDimension() {
    Exercise exercise = mark.exercise();
    return exercise
        .task()
        .asked()
        .map(key -> exercise.reckoning().ledger().get(key).unit().dimension())
        .orElse(Dimension.RATIO);
  }
}
