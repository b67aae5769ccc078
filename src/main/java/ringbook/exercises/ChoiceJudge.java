package ringbook.exercises;

import java.util.List;

/** Finds the option a learner means: by its letter or by its whole text. */
final class ChoiceJudge {

  private static final List<String> LEAD_INS = List.of("option ", "answer ", "letter ");

  private ChoiceJudge() {}

  static Verdict judge(ChoiceTask task, String written) {
    String folded = Plain.folded(written);
    int index = byText(task, folded);
    if (index < 0) {
      index = byLetter(folded);
    }
    if (index < 0 || index >= task.options().size()) {
      return new Verdict.NoSuchOption(task.options().size());
    }
    return task.options().get(index).right() ? new Verdict.Right() : new Verdict.OtherOption(index);
  }

  /** The option whose text this is, with or without its letter in front; -1 where there is none. */
  private static int byText(ChoiceTask task, String folded) {
    for (int i = 0; i < task.options().size(); i++) {
      String text = Plain.folded(task.options().get(i).text().markdown());
      String letter = String.valueOf(ChoiceTask.letter(i));
      if (folded.equals(text)
          || List.of(
                  letter + ") " + text,
                  letter + ". " + text,
                  letter + ": " + text,
                  letter + " " + text)
              .contains(folded)) {
        return i;
      }
    }
    return -1;
  }

  /** {@code b}, {@code b)}, {@code (b)}, {@code b:}, {@code option b}; -1 for anything else. */
  private static int byLetter(String folded) {
    String rest = folded;
    for (String leadIn : LEAD_INS) {
      if (rest.startsWith(leadIn)) {
        rest = rest.substring(leadIn.length());
      }
    }
    if (rest.startsWith("(")) {
      rest = rest.substring(1);
    }
    if (rest.endsWith(")") || rest.endsWith(":")) {
      rest = rest.substring(0, rest.length() - 1);
    }
    return rest.length() == 1 ? rest.charAt(0) - 'a' : -1;
  }
}
