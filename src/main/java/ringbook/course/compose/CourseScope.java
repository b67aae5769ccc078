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
  private final Set<String> leftOut = new LinkedHashSet<>();
  private final List<LinkUse> links = new ArrayList<>();
  private final Set<String> placed = new LinkedHashSet<>();
  private final Glossary glossary = new Glossary();
  private final TermUses uses = new TermUses();
  private final List<String> numbered = new ArrayList<>();
  private boolean othersLeftOut;
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

  /** Lessons that this course does not take though others of its lessons speak of them. */
  void leaveOut(Set<String> ids) {
    leftOut.addAll(ids);
  }

  /** The same for every lesson that is not of this course. */
  void leaveOutOthers() {
    othersLeftOut = true;
  }

  /** Whether links to a lesson are written without their link. */
  boolean isLeftOut(String lesson) {
    return leftOut.contains(lesson) || (othersLeftOut && !lessons.contains(lesson));
  }

  /** The trade words of the course. */
  Glossary glossary() {
    return glossary;
  }

  /** Where the lessons use them. */
  TermUses uses() {
    return uses;
  }

  /** Gives the next lesson of the course its number, from 1. */
  int nextLesson(String lesson) {
    numbered.add(lesson);
    return numbered.size();
  }

  /** The lessons of this course so far. */
  List<String> inOrder() {
    return List.copyOf(numbered);
  }

  /** The number of a lesson of this course; 0 if it has not come yet. */
  int number(String lesson) {
    return numbered.indexOf(lesson) + 1;
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
