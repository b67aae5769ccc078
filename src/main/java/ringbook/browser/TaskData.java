package ringbook.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Credit;
import ringbook.exercises.FaultTask;
import ringbook.exercises.NumberTask;
import ringbook.exercises.OrderTask;
import ringbook.exercises.PairsTask;
import ringbook.exercises.PlanTask;
import ringbook.exercises.PlanTerms;
import ringbook.exercises.SeveralTask;
import ringbook.exercises.Slip;
import ringbook.exercises.Task;
import ringbook.exercises.Wording;
import ringbook.ledger.Formula;
import ringbook.plans.WrittenPlan;
import ringbook.problems.Position;
import ringbook.units.Numbers;

/** What an exercise asks for, as data. */
final class TaskData {

  private static final Position NOWHERE = Position.ofFile("");

  private static final String YES = "yes";
  private static final String NO = "no";

  private TaskData() {}

  /** Writes {@code task} as an object; its wordings are templates in plain text. */
  static void write(Task task, JsonText out) {
    out.object();
    task.show(new Writer(out));
    out.endObject();
  }

  /** The task that {@link #write} wrote. */
  static Task read(JsonTree data, Reach reach) {
    return switch (data.text("kind")) {
      case "number" -> number(data);
      case "choice" -> new ChoiceTask(options(data));
      case "several" -> new SeveralTask(options(data));
      case "order" ->
          new OrderTask(
              wordings(data.at("steps")), wholes(data.at("shown")), wording(data.text("because")));
      case "pairs" ->
          new PairsTask(pairs(data), wordings(data.at("extras")), wholes(data.at("shown")));
      case "fault" ->
          new FaultTask(
              items(data),
              faults(data),
              whole(data.text("chosen")),
              data.text("mend").equals(YES),
              tolerance(data),
              List.of());
      case "plan" -> reach.plan(data);
      default ->
          throw new IllegalArgumentException("no kind of task is called " + data.text("kind"));
    };
  }

  /** A text of the data as a wording. */
  static Wording wording(String text) {
    return new Wording(text, NOWHERE);
  }

  private static NumberTask number(JsonTree data) {
    List<Slip> slips = new ArrayList<>();
    for (JsonTree slip : data.at("slips").items()) {
      slips.add(
          new Slip(
              Formula.of(slip.text("way")),
              wording(slip.text("says")),
              new Credit(whole(slip.text("quarters")))));
    }
    return new NumberTask(data.text("quantity"), tolerance(data), slips);
  }

  private static OptionalDouble tolerance(JsonTree data) {
    return data.has("tolerance")
        ? OptionalDouble.of(SceneData.number(data.text("tolerance")))
        : OptionalDouble.empty();
  }

  private static List<ChoiceTask.Option> options(JsonTree data) {
    List<ChoiceTask.Option> options = new ArrayList<>();
    for (JsonTree option : data.at("options").items()) {
      options.add(
          new ChoiceTask.Option(
              wording(option.text("text")),
              option.text("right").equals(YES),
              wording(option.text("because"))));
    }
    return options;
  }

  private static List<PairsTask.Pair> pairs(JsonTree data) {
    List<PairsTask.Pair> pairs = new ArrayList<>();
    for (JsonTree pair : data.at("pairs").items()) {
      pairs.add(
          new PairsTask.Pair(
              wording(pair.text("left")),
              wording(pair.text("right")),
              wording(pair.text("because"))));
    }
    return pairs;
  }

  private static List<FaultTask.Item> items(JsonTree data) {
    List<FaultTask.Item> items = new ArrayList<>();
    for (JsonTree item : data.at("items").items()) {
      items.add(
          new FaultTask.Item(
              wording(item.text("name")), Formula.of(item.text("value")), item.text("like")));
    }
    return items;
  }

  private static List<FaultTask.Fault> faults(JsonTree data) {
    List<FaultTask.Fault> faults = new ArrayList<>();
    for (JsonTree fault : data.at("faults").items()) {
      faults.add(
          new FaultTask.Fault(
              whole(fault.text("item")),
              Formula.of(fault.text("way")),
              wording(fault.text("because"))));
    }
    return faults;
  }

  /** The task that asks for a plan; see {@link Reach#plan}. */
  static PlanTask plan(JsonTree data) {
    List<WrittenPlan> plans = new ArrayList<>();
    for (JsonTree plan : data.at("plans").items()) {
      plans.add(WrittenPlan.read(plan.text()).plan().orElseThrow());
    }
    PlanTerms terms =
        new PlanTerms(SceneData.number(data.text("covered")), SceneData.number(data.text("spare")));
    return new PlanTask(plans, terms, wording(data.text("because")));
  }

  private static List<Wording> wordings(JsonTree list) {
    return list.items().stream().map(item -> wording(item.text())).toList();
  }

  private static List<Integer> wholes(JsonTree list) {
    return list.items().stream().map(item -> whole(item.text())).toList();
  }

  private static int whole(String text) {
    return (int) SceneData.number(text);
  }

  private record Writer(JsonText out) implements Task.Cases<JsonText> {

    @Override
    public JsonText number(NumberTask task) {
      out.member("kind", "number").member("quantity", task.quantity());
      tolerance(task);
      out.name("slips").array();
      for (Slip slip : task.slips()) {
        out.object().member("way", slip.way().notation());
        out.member("says", slip.says().markdown());
        out.member("quarters", String.valueOf(slip.worth().quarters())).endObject();
      }
      return out.endArray();
    }

    @Override
    public JsonText choice(ChoiceTask task) {
      return options("choice", task.options());
    }

    @Override
    public JsonText several(SeveralTask task) {
      return options("several", task.options());
    }

    @Override
    public JsonText order(OrderTask task) {
      out.member("kind", "order").member("steps", texts(task.steps()));
      out.member("shown", wholes(task.shown()));
      return out.member("because", task.because().markdown());
    }

    @Override
    public JsonText pairs(PairsTask task) {
      out.member("kind", "pairs").name("pairs").array();
      for (PairsTask.Pair pair : task.pairs()) {
        out.object().member("left", pair.left().markdown());
        out.member("right", pair.right().markdown());
        out.member("because", pair.because().markdown()).endObject();
      }
      out.endArray().member("extras", texts(task.extras()));
      return out.member("shown", wholes(task.shown()));
    }

    @Override
    public JsonText fault(FaultTask task) {
      out.member("kind", "fault").name("items").array();
      for (FaultTask.Item item : task.items()) {
        out.object().member("name", item.name().markdown());
        out.member("value", item.value().notation()).member("like", item.like()).endObject();
      }
      out.endArray().name("faults").array();
      for (FaultTask.Fault fault : task.faults()) {
        out.object().member("item", String.valueOf(fault.item()));
        out.member("way", fault.way().notation());
        out.member("because", fault.because().markdown()).endObject();
      }
      out.endArray().member("chosen", String.valueOf(task.chosen()));
      tolerance(task);
      return out.member("mend", task.mend() ? YES : NO);
    }

    @Override
    public JsonText plan(PlanTask task) {
      out.member("kind", "plan");
      out.member("plans", task.plans().stream().map(WrittenPlan::text).toList());
      out.member("covered", Numbers.shortest(task.terms().covered()));
      out.member("spare", Numbers.shortest(task.terms().spare()));
      return out.member("because", task.because().markdown());
    }

    private void tolerance(Task task) {
      if (task.tolerance().isPresent()) {
        out.member("tolerance", Numbers.shortest(task.tolerance().getAsDouble()));
      }
    }

    private static List<String> texts(List<Wording> wordings) {
      return wordings.stream().map(Wording::markdown).toList();
    }

    private static List<String> wholes(List<Integer> numbers) {
      return numbers.stream().map(String::valueOf).toList();
    }

    private JsonText options(String kind, List<ChoiceTask.Option> options) {
      out.member("kind", kind).name("options").array();
      for (ChoiceTask.Option option : options) {
        out.object().member("text", option.text().markdown());
        out.member("right", option.right() ? YES : NO);
        out.member("because", option.because().markdown()).endObject();
      }
      return out.endArray();
    }
  }
}
