package ringbook.exercises;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.plans.PlanReading;
import ringbook.plans.WrittenPlan;
import ringbook.units.Lengths;
import ringbook.units.Words;

/**
 * Asks for a plan: which photographs to take, from where. It is judged by what its photographs
 * would see of the object in its room, not by a list of right plans; a plan of the author proves
 * that it can be done and says with how many photographs. Without one, the plans that the ledger's
 * numbers give take its place ({@link LedgerPlans}): such a task holds for any object in any room,
 * and nobody has proved that it can be done there.
 */
public final class PlanTask implements Task {

  private static final String[] NEEDED = {
    "ring.radius",
    "ring.middleHeight",
    "sharp.focus",
    "sharp.fNumber",
    "rings.lowest",
    "rings.highest"
  };

  private static final String NONE = "No plan can be laid out here: ";

  private final List<WrittenPlan> plans;
  private final PlanTerms terms;
  private final Wording because;
  private final PlanBench bench;

  /**
   * A task.
   *
   * @param plans of the author, the model first; the others serve where the first does not pass,
   *     such as for another variant. Empty: those of the ledger
   * @param terms when a plan passes and what it is worth
   * @param because why the model is as it is
   */
  public PlanTask(List<WrittenPlan> plans, PlanTerms terms, Wording because) {
    this(plans, terms, because, new PlanBench(plans, terms.covered()));
  }

  private PlanTask(List<WrittenPlan> plans, PlanTerms terms, Wording because, PlanBench bench) {
    this.plans = List.copyOf(plans);
    this.terms = terms;
    this.because = because;
    this.bench = bench;
  }

  /** The author's plans. */
  public List<WrittenPlan> plans() {
    return plans;
  }

  private boolean isOfLedger() {
    return plans.isEmpty();
  }

  /** When a plan passes and what it is worth. */
  public PlanTerms terms() {
    return terms;
  }

  /** Why the model is as it is. */
  public Wording because() {
    return because;
  }

  @Override
  public <T> T show(Cases<T> cases) {
    return cases.plan(this);
  }

  @Override
  public void check(Reckoning reckoning) {
    missing(reckoning)
        .filter(reason -> !isOfLedger())
        .ifPresent(
            reason -> {
              throw new IllegalArgumentException(reason);
            });
  }

  /** The first number that laying out a plan needs and this scene does not have, in words. */
  public static Optional<String> missing(Reckoning reckoning) {
    for (String key : NEEDED) {
      if (reckoning.of(key) instanceof Outcome.Refused refused) {
        return Optional.of(key + " has no value: " + refused.reason());
      }
    }
    return Optional.empty();
  }

  /** The same, with what the plan of the ledger needs besides. */
  private Optional<String> lacking(Reckoning reckoning) {
    boolean rings = !isOfLedger() || !(reckoning.of("rings.count") instanceof Outcome.Refused);
    return rings ? missing(reckoning) : Optional.of("no ring is within reach of the lens");
  }

  @Override
  public Optional<String> blur(Reckoning reckoning) {
    return lacking(reckoning);
  }

  @Override
  public Optional<String> unsolved(Reckoning reckoning) {
    return isOfLedger() || bench.model(reckoning).isPresent()
        ? Optional.empty()
        : Optional.of("the author's plan does not pass: " + bench.reason(reckoning));
  }

  @Override
  public String answerHint(Reckoning reckoning) {
    return "a plan, such as rings: 24 at 10°, 24 at 20°; low ring: 24; top: 2 (how many photographs"
        + " at which elevation; behind them, where you need it, a distance such as at "
        + WrittenPlan.example(lengths(reckoning))
        + " or an arc such as without 30° to 80°; write turned over: before what is taken"
        + " upside down)";
  }

  /** What is asked of a plan, in one or two sentences. */
  public String conditions(Reckoning reckoning) {
    Optional<String> missing = lacking(reckoning);
    if (missing.isPresent()) {
      return NONE + missing.get() + ".";
    }
    return "Your plan passes if those of its photographs that hang together show at least "
        + PlanJudge.percent(terms.covered())
        + " of all that can be seen of the object well, and if you can take each of them in this"
        + " room. Up to "
        + Words.count(most(reckoning), "photograph")
        + fullMarks(most(reckoning))
        + "; more earn less.";
  }

  /** Most photographs with full marks. */
  public int most(Reckoning reckoning) {
    return bench
        .best(reckoning)
        .map(model -> terms.most(model.check().photos()))
        .orElse(Integer.MAX_VALUE);
  }

  @Override
  public String answerText(Reckoning reckoning) {
    if (lacking(reckoning).isPresent()) {
      return "";
    }
    return bench.best(reckoning).map(model -> model.plan().text(lengths(reckoning))).orElse("");
  }

  private static Lengths lengths(Reckoning reckoning) {
    return reckoning.scene().aim().lengths();
  }

  /** Whether {@link #answerText} passes: always, but for a plan of the ledger. */
  public boolean isProved(Reckoning reckoning) {
    return lacking(reckoning).isEmpty() && bench.model(reckoning).isPresent();
  }

  /** What the model comes to, in one sentence. */
  public String modelWords(Reckoning reckoning) {
    Optional<String> missing = lacking(reckoning);
    if (missing.isPresent()) {
      return NONE + missing.get() + ".";
    }
    if (bench.model(reckoning).isEmpty()) {
      return "It does not pass as it stands: " + bench.reason(reckoning);
    }
    return bench
        .model(reckoning)
        .map(
            model ->
                Words.count(model.check().photos(), "photograph")
                    + (model.check().photos() == 1 ? "; it shows " : "; they show ")
                    + PlanJudge.percent(model.check().shown())
                    + " of what can be seen at all well."
                    + asides(model.check()))
        .orElse("");
  }

  @Override
  public PlanTask worded(UnaryOperator<Wording> change) {
    return new PlanTask(plans, terms, change.apply(because), bench);
  }

  @Override
  public Verdict judge(String written, Reckoning reckoning) {
    Optional<String> missing = lacking(reckoning);
    if (missing.isPresent()) {
      return new Verdict.Unreadable(NONE + missing.get() + ".", "");
    }
    PlanReading reading = WrittenPlan.read(written, lengths(reckoning));
    if (reading.plan().isEmpty()) {
      return new Verdict.Unreadable(reading.message(), reading.help());
    }
    return judged(bench.check(reading.plan().get(), reckoning), reckoning);
  }

  private Verdict judged(PlanCheck check, Reckoning reckoning) {
    if (check.passes()) {
      int most = most(reckoning);
      return check.photos() <= most
          ? new Verdict.Right()
          : new Verdict.PlanOff(
              PlanLack.WASTE, waste(check, most), terms.worth(check.photos(), most));
    }
    PlanCheck.Lack first = check.lacks().get(0);
    boolean sound = first.kind() == PlanLack.SPOTS;
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < Math.min(2, check.lacks().size()); i++) {
      words.append(i == 0 ? "" : " ").append(check.lacks().get(i).words());
    }
    return new Verdict.PlanOff(first.kind(), words.toString(), terms.part(check.shown(), sound));
  }

  private static String waste(PlanCheck check, int most) {
    return "The plan passes: it shows "
        + PlanJudge.percent(check.shown())
        + " of what can be seen. But "
        + Words.count(check.photos(), "photograph")
        + " are more than it takes; up to "
        + most
        + fullMarks(most)
        + "."
        + asides(check);
  }

  private static String fullMarks(int most) {
    return (most == 1 ? " earns" : " earn") + " full marks";
  }

  /** What is said of a plan that passes: which focus it needs, what of it is of no use. */
  static String asides(PlanCheck check) {
    String focus = check.focusWords();
    return loose(check) + (focus.isEmpty() ? "" : " " + focus);
  }

  /** What is said of photographs that are joined to no others; nothing without any. */
  static String loose(PlanCheck check) {
    return check.loose() == 0
        ? ""
        : " Photographs that share too little with the others to be joined: "
            + check.loose()
            + ". The rest will do without them.";
  }

  /** Judges on a surface of so many patches, to see whether a verdict is stable. */
  PlanCheck check(WrittenPlan plan, Reckoning reckoning, int patches) {
    return bench.check(plan, reckoning, patches);
  }

  /** Judges a plan. */
  public PlanCheck check(WrittenPlan plan, Reckoning reckoning) {
    return bench.check(plan, reckoning);
  }
}
