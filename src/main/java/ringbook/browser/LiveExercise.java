package ringbook.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import ringbook.exercises.Answer;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Exercise;
import ringbook.exercises.FaultTask;
import ringbook.exercises.Feedback;
import ringbook.exercises.Mark;
import ringbook.exercises.Marker;
import ringbook.exercises.NumberTask;
import ringbook.exercises.OrderTask;
import ringbook.exercises.PairsTask;
import ringbook.exercises.PlanTask;
import ringbook.exercises.SeveralTask;
import ringbook.exercises.Task;
import ringbook.exercises.VariedExercise;
import ringbook.exercises.Wording;
import ringbook.figures.SvgWriter;
import ringbook.ledger.Reckoning;
import ringbook.optics.Kit;
import ringbook.plans.PlanReading;
import ringbook.plans.WrittenPlan;
import ringbook.units.Lengths;
import ringbook.units.Words;
import ringbook.values.ExpressionFault;
import ringbook.values.Expressions;
import ringbook.values.Template;

/** An exercise that a page poses and marks: the one of the book, or a learner's own. */
final class LiveExercise {

  private final VariedExercise varied;
  private final Map<String, String> shown;
  private final Map<String, Kit> kits;

  /** Drawing a learner's numbers takes long, and a page asks for the same ones again and again. */
  private String lastLearner;

  private Lengths lastLengths;
  private Exercise last;
  private Marker lastMarker;

  LiveExercise(VariedExercise varied, Map<String, String> shown, Map<String, Kit> kits) {
    this.varied = varied;
    this.shown = shown;
    this.kits = kits;
  }

  /** Tells lengths in these measures from now on; what is right stays as it is. */
  LiveExercise told(Lengths lengths) {
    if (lengths != lastLengths) {
      lastLengths = lengths;
      lastLearner = null;
    }
    return this;
  }

  /** The exercise of one learner; of the book where the name is blank. */
  private Exercise of(String learner) {
    if (!learner.equals(lastLearner)) {
      Exercise drawn = Words.isBlank(learner) ? varied.own() : varied.forLearner(learner);
      Reckoning told = drawn.reckoning().told(lastLengths);
      last = told == drawn.reckoning() ? drawn : drawn.on(told);
      lastMarker = null;
      lastLearner = learner;
    }
    return last;
  }

  /** A marker of it, with the values put into the words of its task. */
  private Marker marker(String learner) {
    Exercise posed = of(learner);
    if (lastMarker == null) {
      UnaryOperator<String> values = values(posed, false);
      lastMarker =
          Marker.of(
              posed.with(
                  posed
                      .task()
                      .worded(words -> words.with(Template.fill(words.markdown(), values)))));
    }
    return lastMarker;
  }

  /** The question as JSON; see {@link Page#question}. */
  String question(String learner) {
    Exercise exercise = of(learner);
    UnaryOperator<String> values = values(exercise, true);
    JsonText out = new JsonText().object().member("id", exercise.id());
    out.member("title", exercise.title());
    out.member("ask", Template.fill(exercise.ask().markdown(), values));
    out.member(
        "hint", exercise.hint().map(hint -> Template.fill(hint.markdown(), values)).orElse(""));
    out.member("answerHint", exercise.answerHint()).name("varies").value(varied.varies());
    exercise.task().show(new Listed(out, shown, values, exercise.reckoning()));
    return out.endObject().toString();
  }

  /** The mark as JSON; see {@link Page#mark}. */
  String mark(String learner, String answer) {
    Mark mark = marker(learner).mark(new Answer(learner, varied.id(), answer));
    Feedback feedback = mark.feedback();
    JsonText out = new JsonText().object();
    out.member("verdict", mark.verdict().label()).member("credit", mark.credit().text());
    out.member("happened", feedback.happened()).member("working", feedback.working());
    out.member("next", feedback.next()).member("answer", mark.exercise().answerText());
    return out.endObject().toString();
  }

  /** What a plan comes to, as JSON; see {@link SightPage#judge}. */
  String judge(String learner, String written, String idPrefix) {
    Exercise exercise = of(learner);
    PlanReading reading = WrittenPlan.read(written, lastLengths);
    String missing = PlanTask.missing(exercise.reckoning()).orElse("");
    if (!(exercise.task() instanceof PlanTask task)) {
      throw new IllegalArgumentException("'" + varied.id() + "' asks for no plan");
    }
    return reading.plan().isEmpty() || !missing.isEmpty()
        ? PlanJson.fault(missing.isEmpty() ? reading.message() : missing, reading.help())
        : PlanJson.judged(task, reading.plan().get(), exercise.reckoning(), idPrefix);
  }

  private UnaryOperator<String> values(Exercise exercise, boolean xhtml) {
    Expressions expressions = new Expressions(exercise.asked(), kits);
    return expression -> {
      String text = text(expression, expressions);
      return xhtml ? SvgWriter.escaped(text) : text;
    };
  }

  /** As printed; what the scene refuses is empty, as the composed exercise has it. */
  private static String text(String expression, Expressions expressions) {
    try {
      return expressions.text(expression);
    } catch (ExpressionFault fault) {
      return "";
    }
  }

  /** What is listed below the question: its letters, and for pairs its numbers. */
  private record Listed(
      JsonText out, Map<String, String> shown, UnaryOperator<String> values, Reckoning reckoning)
      implements Task.Cases<JsonText> {

    @Override
    public JsonText number(NumberTask task) {
      return listed("number", List.of(), List.of());
    }

    @Override
    public JsonText choice(ChoiceTask task) {
      return listed("choice", task.options().stream().map(ChoiceTask.Option::text).toList());
    }

    @Override
    public JsonText several(SeveralTask task) {
      return listed("several", task.options().stream().map(ChoiceTask.Option::text).toList());
    }

    @Override
    public JsonText order(OrderTask task) {
      List<Wording> steps = new ArrayList<>();
      for (int i = 0; i < task.steps().size(); i++) {
        steps.add(task.step(i));
      }
      return listed("order", steps);
    }

    @Override
    public JsonText pairs(PairsTask task) {
      List<String> things = new ArrayList<>();
      for (int i = 0; i < task.shown().size(); i++) {
        things.add(xhtml(task.thing(i)));
      }
      List<String> left = task.pairs().stream().map(pair -> xhtml(pair.left())).toList();
      return listed("pairs", things, left);
    }

    @Override
    public JsonText fault(FaultTask task) {
      List<String> items = new ArrayList<>();
      for (int i = 0; i < task.items().size(); i++) {
        String value = SvgWriter.escaped(task.shown(i, reckoning));
        items.add(xhtml(task.items().get(i).name()) + ": " + value);
      }
      return listed("fault", items, List.of());
    }

    @Override
    public JsonText plan(PlanTask task) {
      out.member("conditions", task.conditions(reckoning));
      return listed("plan", List.of(), List.of());
    }

    private JsonText listed(String kind, List<Wording> lettered) {
      return listed(kind, lettered.stream().map(this::xhtml).toList(), List.of());
    }

    private JsonText listed(String kind, List<String> lettered, List<String> numbered) {
      return out.member("kind", kind).member("options", lettered).member("numbered", numbered);
    }

    private String xhtml(Wording wording) {
      String plain = wording.markdown();
      return Template.fill(shown.getOrDefault(plain, SvgWriter.escaped(plain)), values);
    }
  }
}
