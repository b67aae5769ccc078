package ringbook.output.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedLesson;
import ringbook.course.ComposedLesson.ExerciseBlock;

/**
 * Exercises to print, lesson by lesson.
 *
 * @param title of the sheet
 * @param learner whose own numbers they have; empty for the numbers of the book
 * @param shown the learner's name in letters that can be printed
 * @param lessons those that have exercises
 * @param learners sheets of learners, for the answer key
 * @param form whether answers are written on it
 */
public record Worksheet(
    String title,
    String learner,
    String shown,
    List<Part> lessons,
    List<Worksheet> learners,
    boolean form) {

  private static final String HINT = "(?s)<details class=\"hint\">.*?</details>\n?";

  public Worksheet {
    lessons = List.copyOf(lessons);
    learners = List.copyOf(learners);
  }

  /**
   * The exercises of a lesson.
   *
   * @param id of the lesson
   * @param number of the lesson
   * @param title of the lesson
   * @param exercises in order, without their hints
   */
  public record Part(String id, int number, String title, List<ComposedExercise> exercises) {

    public Part {
      exercises = List.copyOf(exercises);
    }
  }

  /** All exercises of the course as the book prints them. */
  static Worksheet of(ComposedCourse course) {
    List<Part> parts = new ArrayList<>();
    for (ComposedLesson lesson : course.lessons()) {
      List<ComposedExercise> exercises = new ArrayList<>();
      for (ComposedLesson.Block block : lesson.blocks()) {
        if (block instanceof ExerciseBlock asked && !asked.exercise().answerHint().isEmpty()) {
          exercises.add(withoutHint(asked.exercise()));
        }
      }
      if (!exercises.isEmpty()) {
        parts.add(new Part(lesson.id(), lesson.number(), lesson.title(), exercises));
      }
    }
    return new Worksheet("Worksheet", "", "", parts, List.of(), true);
  }

  /** The same exercises with the numbers of a learner. */
  Worksheet own(String name, String shown, Map<String, ComposedExercise> byId) {
    List<Part> parts = new ArrayList<>();
    for (Part part : lessons) {
      List<ComposedExercise> exercises =
          part.exercises().stream().map(e -> withoutHint(byId.get(e.id()))).toList();
      parts.add(new Part(part.id(), part.number(), part.title(), exercises));
    }
    return new Worksheet("Worksheet of " + shown, name, shown, parts, List.of(), true);
  }

  /** The answers to the same, and to the sheets of learners. */
  Worksheet key(List<Worksheet> sheets) {
    return new Worksheet("Answer key", "", "", lessons, sheets, false);
  }

  private static ComposedExercise withoutHint(ComposedExercise exercise) {
    return exercise.withTexts(
        exercise.questionXhtml().replaceAll(HINT, ""), exercise.solutionXhtml());
  }
}
