package ringbook.course;

import java.util.List;

/**
 * The whole course with every number worked out: the page model that each output writes in its own
 * way.
 *
 * @param info title page matter
 * @param lessons in order of the stations
 * @param quantities all entries of the ledger for the course's scene, for the appendix
 */
public record ComposedCourse(
    CourseInfo info, List<ComposedLesson> lessons, List<ComposedQuantity> quantities) {

  public ComposedCourse {
    lessons = List.copyOf(lessons);
    quantities = List.copyOf(quantities);
  }
}
