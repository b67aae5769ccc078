package ringbook.course.compose;

/**
 * The text of a lesson.
 *
 * @param file the name for messages; pictures are looked up beside it
 * @param text its content
 */
public record LessonSource(String file, String text) {}
