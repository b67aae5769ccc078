/**
 * Writes the marks of a class into a folder: a page and a PDF for each learner, a summary for the
 * trainer, the grade book, and the marks for a program.
 *
 * <p><b>Contract.</b> Learners come one by one and none is held; every page stands alone and loads
 * nothing. The same marks give the same bytes.
 *
 * <p><b>Layer.</b> Above sheets, below cli.
 *
 * <p><b>Start at</b> {@link ringbook.output.marks.MarkFolder}.
 */
package ringbook.output.marks;
