package ringbook.cli;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.List;
import ringbook.exercises.ExerciseSource;
import ringbook.sheets.AnswerKey;
import ringbook.sheets.KeyJson;
import ringbook.sheets.KeyText;

/** Prints the questions of learners with their own numbers, one learner after the other. */
final class KeyPrinter {

  private final List<ExerciseSource> exercises;
  private final boolean answers;
  private final PrintWriter out;

  KeyPrinter(List<ExerciseSource> exercises, boolean answers, PrintWriter out) {
    this.exercises = exercises;
    this.answers = answers;
    this.out = out;
  }

  void text(Collection<String> learners) {
    KeyText text = new KeyText(answers);
    learners.forEach(learner -> out.print(text.of(AnswerKey.of(learner, exercises))));
    out.flush();
  }

  void json(Collection<String> learners) {
    KeyJson json = new KeyJson(answers);
    learners.forEach(learner -> out.print(json.of(AnswerKey.of(learner, exercises))));
    out.print(json.end());
    out.flush();
  }
}
