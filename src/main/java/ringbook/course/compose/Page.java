package ringbook.course.compose;

/** A lesson, or a page at the back, while it is being written. */
final class Page {

  private final String lesson;
  private final CourseScope course;
  private final PageIds ids;
  private final boolean back;
  private final Footnotes footnotes = new Footnotes();
  private int exercises;

  Page(String lesson, CourseScope course) {
    this(lesson, course, false);
  }

  private Page(String lesson, CourseScope course, boolean back) {
    this.back = back;
    this.lesson = lesson;
    this.course = course;
    this.ids = new PageIds(lesson);
  }

  /** A page at the back, which is no lesson. */
  static Page back(String id, CourseScope course) {
    return new Page(id, course, true);
  }

  /** Whether it is a page at the back. */
  boolean isBack() {
    return back;
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
