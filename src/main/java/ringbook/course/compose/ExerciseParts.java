package ringbook.course.compose;

import java.util.ArrayList;
import java.util.List;
import ringbook.course.ComposedExercise;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Exercise;
import ringbook.exercises.FaultTask;
import ringbook.exercises.NumberTask;
import ringbook.exercises.OrderTask;
import ringbook.exercises.PairsTask;
import ringbook.exercises.PlanTask;
import ringbook.exercises.SeveralTask;
import ringbook.exercises.Task;
import ringbook.exercises.Wording;
import ringbook.ledger.Working;

/** What differs between the kinds of task: what is listed below the question, and the solution. */
final class ExerciseParts implements Task.Cases<ExerciseParts> {

  private final Exercise exercise;
  private final WordingWriter words;
  private final List<ComposedExercise.Option> options = new ArrayList<>();
  private final StringBuilder solution = new StringBuilder();
  private String question = "";
  private String answer = "";
  private String kind = "";

  ExerciseParts(Exercise exercise, WordingWriter words) {
    this.exercise = exercise;
    this.words = words;
  }

  /** Blocks that follow the question, before the options. */
  String question() {
    return question;
  }

  /** What goes by a letter. */
  List<ComposedExercise.Option> options() {
    return options;
  }

  /** The right answer in a few words. */
  String answer() {
    return answer;
  }

  /** How it is answered; see {@link ComposedExercise#kind}. */
  String kind() {
    return kind;
  }

  /** The solution as blocks. */
  String solution() {
    return solution.toString();
  }

  @Override
  public ExerciseParts number(NumberTask task) {
    kind = "number";
    answer = exercise.answerText();
    workings();
    return this;
  }

  @Override
  public ExerciseParts choice(ChoiceTask task) {
    kind = "choice";
    reasons(task.options());
    answer =
        letter(task.rightIndex()) + ") " + PlainText.of(options.get(task.rightIndex()).textXhtml());
    return this;
  }

  @Override
  public ExerciseParts several(SeveralTask task) {
    kind = "several";
    reasons(task.options());
    answer = exercise.answerText();
    return this;
  }

  @Override
  public ExerciseParts order(OrderTask task) {
    kind = "order";
    for (int i = 0; i < task.steps().size(); i++) {
      option(i, words.line(task.step(i)));
    }
    answer = exercise.answerText();
    solution.append("<ol class=\"steps\">\n");
    for (int index : task.rightOrder()) {
      solution.append("<li>").append(named(letter(index), words.line(task.step(index))));
    }
    solution.append("</ol>\n").append(words.blocks(task.because()));
    return this;
  }

  @Override
  public ExerciseParts pairs(PairsTask task) {
    kind = "pairs";
    StringBuilder lefts = new StringBuilder("<ol class=\"lefts\">\n");
    for (PairsTask.Pair pair : task.pairs()) {
      lefts.append("<li>").append(words.line(pair.left())).append("</li>\n");
    }
    question = lefts.append("</ol>\n").toString();
    for (int i = 0; i < task.shown().size(); i++) {
      option(i, words.line(task.thing(i)));
    }
    answer = exercise.answerText();
    solution.append("<ul class=\"reasons\">\n");
    for (int i = 0; i < task.pairs().size(); i++) {
      String pair = (i + 1) + letter(task.rightLetters().get(i)) + ":";
      solution.append("<li>").append(named(pair, words.line(task.pairs().get(i).because())));
    }
    solution.append("</ul>\n");
    return this;
  }

  @Override
  public ExerciseParts fault(FaultTask task) {
    kind = task.mend() ? "mend" : "fault";
    for (int i = 0; i < task.items().size(); i++) {
      option(
          i,
          words.line(task.items().get(i).name())
              + ": "
              + Xhtml.text(task.shown(i, exercise.reckoning())));
    }
    int wrong = task.fault().item();
    answer = letter(wrong) + "; it must be " + task.wrongItem().text(exercise.reckoning());
    solution.append(words.blocks(task.fault().because()));
    workings();
    return this;
  }

  @Override
  public ExerciseParts plan(PlanTask task) {
    kind = "plan";
    question =
        "<p class=\"conditions\">" + Xhtml.text(task.conditions(exercise.reckoning())) + "</p>\n";
    answer = exercise.answerText();
    solution
        .append("<p>")
        .append(Xhtml.text(task.modelWords(exercise.reckoning())))
        .append("</p>\n")
        .append(words.blocks(task.because()));
    return this;
  }

  private void option(int index, String text) {
    options.add(new ComposedExercise.Option(letter(index), text));
  }

  private static String letter(int index) {
    return String.valueOf(ChoiceTask.letter(index));
  }

  private static String named(String name, String text) {
    return "<b>" + name + "</b> " + text + "</li>\n";
  }

  private void reasons(List<ChoiceTask.Option> all) {
    solution.append("<ul class=\"reasons\">\n");
    for (int i = 0; i < all.size(); i++) {
      ChoiceTask.Option one = all.get(i);
      option(i, words.line(one.text()));
      Wording because = one.because();
      String name = letter(i) + (one.right() ? ", right:" : ", wrong:");
      solution.append("<li>").append(named(name, words.line(because)));
    }
    solution.append("</ul>\n");
  }

  private void workings() {
    List<Working> workings = exercise.workings();
    StringBuilder steps = new StringBuilder();
    for (Working working : workings) {
      String name = exercise.reckoning().ledger().get(working.key()).name();
      steps
          .append("<div class=\"working\">\n")
          .append("<p class=\"step\">" + Xhtml.text(name) + "</p>\n")
          .append(WorkingWriter.steps(working, exercise.reckoning()))
          .append("</div>\n");
    }
    solution.append(
        workings.size() > 1 ? "<div class=\"chain\">\n" + steps + "</div>\n" : steps.toString());
  }
}
