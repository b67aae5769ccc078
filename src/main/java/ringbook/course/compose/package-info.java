/**
 * Composes lessons into the page model.
 *
 * <p><b>Contract.</b> {@link ringbook.course.compose.Composer} reads lessons, works out every
 * value, figure, table and exercise for the scene of the course, and gives a {@link
 * ringbook.course.ComposedCourse} or the problems of all lessons, each at its line and column. Its
 * fragments are well-formed XHTML; the ids of a lesson begin with the lesson's id and two hyphens.
 *
 * <p><b>Markup.</b> Outputs may rely on: {@code data.quantity} with {@code data-key}, {@code
 * data-given} (changes to the scene) and {@code data-form} ({@code number}, or another unit);
 * {@code span.word} with {@code data-key}; {@code span.value}; on any of the three {@code
 * data-value}, the whole expression where it is more than that; {@code div.branch}, see {@link
 * ringbook.course.compose.Branches}; {@code svg.math}; {@code div.working} (several in a {@code
 * div.chain}) with {@code p.rule}, {@code p.formula}, {@code p.numbers}, {@code p.result} and
 * {@code ul.inputs}; {@code section.caution}, {@code .try}, {@code .slips}, {@code .summary} with
 * an {@code h3} first; {@code div.table} round tables, cells {@code .al-right} and {@code
 * .al-center}; {@code sup.note-ref} and {@code div.footnotes}.
 *
 * <p><b>Layer.</b> The top of course; uses its other packages, exercises and ledger.
 *
 * <p><b>Start at</b> {@link ringbook.course.compose.Composer}.
 */
package ringbook.course.compose;
