package ringbook.course.compose;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ringbook.problems.Problems;

/** What the whole course shares while it is being written. */
final class CourseScope {

  private final Problems problems;
  private final CourseParts parts;
  private final Set<String> lessons;
  private final List<LinkUse> links = new ArrayList<>();
  private final Set<String> placed = new LinkedHashSet<>();
  private int figures;

  CourseScope(CourseParts parts, Set<String> lessons, Problems problems) {
    this.parts = parts;
    this.lessons = new LinkedHashSet<>(lessons);
    this.problems = problems;
  }

  Problems problems() {
    return problems;
  }

  /** What lessons can place. */
  CourseParts parts() {
    return parts;
  }

  /** The ids of all lessons. */
  Set<String> lessons() {
    return lessons;
  }

  /** Notes a link, to be checked in the end. */
  void link(LinkUse use) {
    links.add(use);
  }

  List<LinkUse> links() {
    return links;
  }

  /** Notes that an exercise has been placed; whether it had not been before. */
  boolean place(String exercise) {
    return placed.add(exercise);
  }

  /** The number of the next figure, from 1. */
  int nextFigure() {
    return ++figures;
  }
}
