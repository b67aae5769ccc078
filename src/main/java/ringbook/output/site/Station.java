package ringbook.output.site;

import java.util.ArrayList;
import java.util.List;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedLesson;

/**
 * A stop on the reader's way round: a lesson, a page at the back, or the list of quantities at the
 * end.
 *
 * @param mark what stands at its tick: the lesson's number, or a letter; nothing for a page at the
 *     back
 * @param name what it is called in a list: {@code Station 2}, {@code Appendix}
 * @param title plain text
 * @param aim one sentence, plain text
 * @param file the page, relative to the site
 */
public record Station(String mark, String name, String title, String aim, String file) {

  /** All stops in order. */
  static List<Station> all(ComposedCourse course) {
    List<Station> stations = new ArrayList<>();
    for (ComposedLesson lesson : course.lessons()) {
      String mark = Integer.toString(lesson.number());
      String file = lesson.id() + ".html";
      stations.add(new Station(mark, "Station " + mark, lesson.title(), lesson.aim(), file));
    }
    String aim =
        "Every number of the course: what it means, how it is worked out, where that is from.";
    stations.add(new Station("Q", "Appendix", "All quantities", aim, "quantities.html"));
    return stations;
  }

  /** The pages at the back, which have no place on the dial. */
  static List<Station> back(ComposedCourse course) {
    return course.back().stream()
        .map(page -> new Station("", "At the back", page.title(), page.aim(), page.id() + ".html"))
        .toList();
  }

  /** The order of the whole walk: lessons, pages at the back, quantities. */
  static List<Station> walk(ComposedCourse course) {
    List<Station> walk = new ArrayList<>(all(course));
    walk.addAll(course.lessons().size(), back(course));
    return walk;
  }
}
