package ringbook.exercises;

import java.util.List;
import ringbook.ledger.Reckoning;

/**
 * Judges which item a learner calls wrong, and the value given for it: {@code c}, {@code c 12°}.
 */
final class FaultJudge {

  private static final List<String> LEAD_INS =
      List.of("row ", "line ", "item ", "letter ", "answer ", "the ");

  private FaultJudge() {}

  static Verdict judge(FaultTask task, String written, Reckoning reckoning) {
    String folded = Plain.folded(written);
    int cut = 0;
    for (String leadIn : LEAD_INS) {
      if (folded.startsWith(leadIn, cut)) {
        cut += leadIn.length();
      }
    }
    for (int i = 0; i < task.items().size(); i++) {
      String name = Plain.folded(task.items().get(i).name().markdown());
      for (String call : List.of(Letters.of(i), "(" + Letters.of(i) + ")", name)) {
        if (stands(call, folded, cut)) {
          return judge(task, i, rest(folded, cut + call.length()), reckoning);
        }
      }
    }
    return new Verdict.NoSuchOption(task.items().size());
  }

  /** Whether {@code call} stands there as a word of its own. */
  private static boolean stands(String call, String folded, int at) {
    int end = at + call.length();
    return folded.startsWith(call, at)
        && (end == folded.length() || " ,;:=)-.".indexOf(folded.charAt(end)) >= 0);
  }

  /** The value behind the item, without signs and small words between them. */
  private static String rest(String text, int from) {
    int at = Math.min(from, text.length());
    while (at < text.length()
        && (Plain.isBlank(text.charAt(at)) || ",;:=)→".indexOf(text.charAt(at)) >= 0)) {
      at++;
    }
    String rest = text.substring(at);
    for (String small : List.of("should be ", "must be ", "is ", "-> ", "- ")) {
      if (rest.startsWith(small)) {
        return rest.substring(small.length());
      }
    }
    return rest;
  }

  private static Verdict judge(FaultTask task, int item, String value, Reckoning reckoning) {
    if (item != task.fault().item()) {
      return new Verdict.OtherItem(item);
    }
    if (value.isEmpty()) {
      return task.mend() ? new Verdict.ValueOpen(false) : new Verdict.Right();
    }
    NumberJudge judge = new NumberJudge(task, task.spread(task.chosen(), reckoning), reckoning);
    return judge.judge(value) instanceof Verdict.Right
        ? new Verdict.Right()
        : new Verdict.ValueOpen(true);
  }
}
