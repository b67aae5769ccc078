package ringbook.course.compose;

/** A lesson while it is being written. */
final class Page {

  private final String lesson;
  private final CourseScope course;
  private final PageIds ids;
  private final Footnotes footnotes = new Footnotes();
  private int exercises;

  Page(String lesson, CourseScope course) {
    this.lesson = lesson;
    this.course = course;
    this.ids = new PageIds(lesson);
  }

  /** The id of the lesson. */
  String lesson() {
    return lesson;
  }

  CourseScope course() {
    return course;
  }

  PageIds ids() {
    return ids;
  }

  Footnotes footnotes() {
    return footnotes;
  }

  /** The number of the next exercise, from 1. */
  int nextExercise() {
    return ++exercises;
  }
}
