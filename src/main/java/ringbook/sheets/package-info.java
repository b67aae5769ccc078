/**
 * Answer sheets: what a group handed in, as files of comma-separated values or JSON, and the lists
 * of marks that go back.
 *
 * <p><b>Contract.</b> A fault in a sheet is told with file and line; every other answer of it is
 * still there. The same answers give the same marks whichever form they come in. Everything printed
 * is in the order it was handed in.
 *
 * <p><b>Layer.</b> Above course, below output. Reads files; writes text, no files.
 *
 * <p><b>Start at</b> {@link ringbook.sheets.AnswerSheets}.
 */
package ringbook.sheets;
