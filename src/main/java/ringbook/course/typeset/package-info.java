/**
 * Formulas as drawings.
 *
 * <p><b>Contract.</b> A formula becomes one {@code svg} path in the colour of the text, sized in
 * em, standing on the baseline, with its spoken form as label: the same in every output. It carries
 * no ids. The same TeX gives the same bytes.
 *
 * <p><b>Layer.</b> Inside course; uses no other part of the project.
 *
 * <p><b>Start at</b> {@link ringbook.course.typeset.Formulas}.
 */
package ringbook.course.typeset;
