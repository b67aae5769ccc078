/**
 * Answer sheets: what a group handed in, as files of comma-separated values or JSON, and the lists
 * of marks that go back.
 *
 * <p><b>Contract.</b> A fault in a sheet is told with file and line; every other answer of it is
 * still there. The same answers give the same marks whichever form and order they come in. Learners
 * stand by name, their answers in the order of the course. However many answers there are, only
 * some thousands are held at a time.
 *
 * <p><b>Layer.</b> Above course, below output. Reads files; writes text, and of files only working
 * ones that are deleted at the end.
 *
 * <p><b>Start at</b> {@link ringbook.sheets.AnswerSheets} and {@link ringbook.sheets.Marking}.
 */
package ringbook.sheets;
