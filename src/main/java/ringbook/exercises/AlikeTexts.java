package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.ledger.Reckoning;
import ringbook.values.ExpressionFault;
import ringbook.values.Expressions;
import ringbook.values.Template;

/**
 * Two texts among which a learner must choose and which print the same on one scene: 2 m and 200 cm
 * may differ, 2 m and 2 m do not.
 *
 * @param first the one that stands first
 * @param second the other one
 * @param text what both print
 */
public record AlikeTexts(Wording first, Wording second, String text) {

  /** The first two that print alike in what {@code task} lists. */
  public static Optional<AlikeTexts> in(Task task, Reckoning reckoning) {
    Expressions values = new Expressions(reckoning, Map.of());
    for (List<Wording> list : task.show(new Lists())) {
      Optional<AlikeTexts> alike = among(list, values);
      if (alike.isPresent()) {
        return alike;
      }
    }
    return Optional.empty();
  }

  private static Optional<AlikeTexts> among(List<Wording> list, Expressions values) {
    List<String> printed = new ArrayList<>();
    for (Wording wording : list) {
      String text = Template.fill(wording.markdown(), expression -> text(expression, values));
      int same = printed.indexOf(Plain.folded(text));
      if (same >= 0) {
        return Optional.of(new AlikeTexts(list.get(same), wording, Plain.trimmed(text)));
      }
      printed.add(Plain.folded(text));
    }
    return Optional.empty();
  }

  /** What has no value here, such as that of another kit, stays as it is written. */
  private static String text(String expression, Expressions values) {
    try {
      return values.text(expression);
    } catch (ExpressionFault fault) {
      return expression;
    }
  }

  /** Why the exercise cannot be asked. */
  String reason() {
    return "'" + text + "' stands there twice";
  }

  /** The texts that must differ from each other, list by list. */
  private static final class Lists implements Task.Cases<List<List<Wording>>> {
    @Override
    public List<List<Wording>> number(NumberTask task) {
      return List.of();
    }

    @Override
    public List<List<Wording>> choice(ChoiceTask task) {
      return List.of(task.options().stream().map(ChoiceTask.Option::text).toList());
    }

    @Override
    public List<List<Wording>> several(SeveralTask task) {
      return List.of(task.options().stream().map(ChoiceTask.Option::text).toList());
    }

    @Override
    public List<List<Wording>> order(OrderTask task) {
      return List.of(task.steps());
    }

    @Override
    public List<List<Wording>> pairs(PairsTask task) {
      List<Wording> right = new ArrayList<>();
      task.pairs().forEach(pair -> right.add(pair.right()));
      right.addAll(task.extras());
      return List.of(task.pairs().stream().map(PairsTask.Pair::left).toList(), right);
    }

    @Override
    public List<List<Wording>> fault(FaultTask task) {
      return List.of(task.items().stream().map(FaultTask.Item::name).toList());
    }

    @Override
    public List<List<Wording>> plan(PlanTask task) {
      return List.of();
    }
  }
}
