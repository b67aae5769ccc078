/**
 * Reads the files of a course (course file, lessons, exercises) and composes the page model that
 * every output writes.
 *
 * <p><b>Contract.</b> The flow is one way: read, compute, compose. What a person must mend is
 * gathered as {@link ringbook.problems.Problem} with file, line and column; a {@link
 * ringbook.course.ComposedCourse} exists only if there is none. Fragments in it are well-formed
 * XHTML with ids that are unique in the whole course.
 *
 * <p><b>Layer.</b> Above figures and charts, below output. Reads files; writes none.
 *
 * <p><b>Start at</b> {@link ringbook.course.ComposedCourse}.
 */
package ringbook.course;
