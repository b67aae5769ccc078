package ringbook.browser;

import java.util.OptionalDouble;
import ringbook.exercises.PlanCheck;
import ringbook.exercises.PlanTask;
import ringbook.figures.CoverageMap;
import ringbook.ledger.Reckoning;
import ringbook.plans.PlanReading;
import ringbook.plans.WrittenPlan;
import ringbook.plans.WrittenRun;
import ringbook.shots.Pose;
import ringbook.units.Lengths;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** Plans that a reader writes, as JSON. */
final class PlanJson {

  private PlanJson() {}

  static String fault(String message, String help) {
    return new JsonText()
        .object()
        .member("message", message)
        .member("help", help)
        .endObject()
        .toString();
  }

  /** See {@link SightPage#plan}. */
  static String read(String text, Lengths lengths) {
    PlanReading reading = WrittenPlan.read(text, lengths);
    if (reading.plan().isEmpty()) {
      return fault(reading.message(), reading.help());
    }
    WrittenPlan plan = reading.plan().get();
    JsonText out = new JsonText().object().member("text", plan.text(lengths)).name("rows").array();
    plan.runs().forEach(run -> row(run, lengths, out));
    return out.endArray().endObject().toString();
  }

  private static void row(WrittenRun run, Lengths lengths, JsonText out) {
    WrittenRun.Directions directions = run.where().directions();
    out.object()
        .member("kind", run.kind().label())
        .member("photos", Numbers.fixed(run.photos(), 0));
    out.name("turned").value(run.pose() == Pose.TURNED_OVER);
    out.member("elevation", text(run.where().elevation()));
    out.member("standoff", standoff(run.where().standoff(), lengths));
    out.member("sort", directions.sort().word());
    out.member("from", Numbers.shortest(directions.from()));
    out.member("to", Numbers.shortest(directions.to())).endObject();
  }

  /** In metres, or in inches to a hundredth. */
  private static String standoff(OptionalDouble metres, Lengths lengths) {
    return metres.isPresent() && lengths == Lengths.IMPERIAL
        ? Numbers.trimmed(Numbers.fixed(Unit.INCH.fromSi(metres.getAsDouble()), 2))
        : text(metres);
  }

  private static String text(OptionalDouble number) {
    return number.isPresent() ? Numbers.shortest(number.getAsDouble()) : "";
  }

  /** See {@link SightPage#judge}. */
  static String judged(PlanTask task, WrittenPlan plan, Reckoning reckoning, String idPrefix) {
    PlanCheck check = task.check(plan, reckoning);
    int most = task.most(reckoning);
    JsonText out = new JsonText().object();
    out.member("photos", Numbers.fixed(check.photos(), 0));
    out.member("most", most == Integer.MAX_VALUE ? "" : Numbers.fixed(most, 0));
    out.member("shown", percent(check.shown()));
    out.member("covered", percent(task.terms().covered()));
    out.name("passes").value(check.passes());
    out.member("lacks", check.lacks().stream().map(PlanCheck.Lack::words).toList());
    out.member("focus", check.focusWords());
    if (check.coverage().isPresent()) {
      String name = reckoning.scene().subject().name();
      out.name("figure");
      FigureJson.write(CoverageMap.of(check.coverage().get(), name, idPrefix), out);
    }
    return out.endObject().toString();
  }

  /** Rounded down, so that what falls short never looks as if it were enough. */
  private static String percent(double share) {
    return Numbers.fixed(Math.floor(100 * share + 1e-9), 0);
  }
}
