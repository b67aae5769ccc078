package ringbook.course;

import java.util.List;
import java.util.Optional;
import ringbook.plans.FieldSheet;

/**
 * The whole course with every number worked out: the page model that each output writes in its own
 * way.
 *
 * @param info title page matter
 * @param lessons in order of the stations
 * @param back the pages at the back, in order: glossary, tables and the like
 * @param quantities all entries of the ledger for the course's scene, for the appendix
 * @param script what the pages' script must know of the course, as a script; see {@link
 *     ringbook.browser.CourseData#script}. Empty where pages are to be read only
 * @param field the plan as it is walked on the day; empty where no scene stands behind the course
 */
public record ComposedCourse(
    CourseInfo info,
    List<ComposedLesson> lessons,
    List<BackPage> back,
    List<ComposedQuantity> quantities,
    String script,
    Optional<FieldSheet> field) {

  /** The page for the shoot itself, which the website alone has, as links name it. */
  public static final String FIELD_VIEW = "field-view";

  public ComposedCourse {
    lessons = List.copyOf(lessons);
    back = List.copyOf(back);
    quantities = List.copyOf(quantities);
  }

  /** A course without pages at the back, whose pages are to be read only. */
  public ComposedCourse(
      CourseInfo info, List<ComposedLesson> lessons, List<ComposedQuantity> quantities) {
    this(info, lessons, List.of(), quantities, "", Optional.empty());
  }

  /** The same course with what its pages' script must know. */
  public ComposedCourse with(String courseScript) {
    return new ComposedCourse(info, lessons, back, quantities, courseScript, field);
  }
}
