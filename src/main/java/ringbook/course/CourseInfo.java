package ringbook.course;

import java.util.Optional;

/**
 * What stands on the title page.
 *
 * @param title of the course
 * @param subtitle may be empty
 * @param organiser who gives the course; may be empty
 * @param date of the edition as written in the course file, ISO 8601 ({@code 2026-11-02}); never
 *     the clock's
 * @param language of the texts, as a BCP 47 tag
 * @param group one sentence that says for which kit, object and place the numbers hold
 * @param evaluated who judged how accessible the e-book is, where somebody did
 */
public record CourseInfo(
    String title,
    String subtitle,
    String organiser,
    String date,
    String language,
    String group,
    Optional<Evaluation> evaluated) {

  /** What nobody has evaluated. */
  public CourseInfo(
      String title, String subtitle, String organiser, String date, String language, String group) {
    this(title, subtitle, organiser, date, language, group, Optional.empty());
  }
}
