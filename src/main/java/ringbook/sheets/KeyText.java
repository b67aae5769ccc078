package ringbook.sheets;

/** A learner's questions as plain text, with or without their answers. */
public final class KeyText {

  private final boolean answers;

  /** Prints answers with their workings, or questions alone. */
  public KeyText(boolean answers) {
    this.answers = answers;
  }

  /** The text of one learner, ending with an empty line. */
  public String of(AnswerKey key) {
    StringBuilder out = new StringBuilder();
    out.append(answers ? "Answers for " : "Questions for ").append(line(key.learner()));
    out.append("\n\n");
    for (AnswerKey.Line line : key.lines()) {
      out.append(line.exercise()).append(": ").append(line.title()).append('\n');
      indented(out, line.question());
      line.listed().forEach(listed -> indented(out, listed));
      if (answers) {
        indented(out, "Answer: " + line.answer());
        line.working().forEach(step -> indented(out, "  " + step));
      } else {
        indented(out, "Answer with " + line.answerWith() + ".");
      }
      out.append('\n');
    }
    return out.toString();
  }

  /** A name may come from anywhere: control characters must not reach a terminal. */
  private static String line(String name) {
    return name.strip()
        .codePoints()
        .map(c -> Character.isISOControl(c) ? ' ' : c)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static void indented(StringBuilder out, String text) {
    text.lines().forEach(line -> out.append("  ").append(line).append('\n'));
  }
}
