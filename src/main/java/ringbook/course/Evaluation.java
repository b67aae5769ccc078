package ringbook.course;

/**
 * That a person judged the e-book of a course against WCAG 2.1, level AA, and EPUB Accessibility
 * 1.1.
 *
 * @param by who judged it
 * @param date when, ISO 8601; not before the edition's
 */
public record Evaluation(String by, String date) {}
