/**
 * What a person must mend in a file they wrote: the message, the place, the way to mend it.
 *
 * <p><b>Contract.</b> Immutable values. A fault in a file is a {@link ringbook.problems.Problem},
 * never an exception; readers gather all problems of a file in {@link ringbook.problems.Problems}
 * before anything is built.
 *
 * <p><b>Layer.</b> Lowest: uses only java.lang and java.util; usable by every other layer.
 *
 * <p><b>Start at</b> {@link ringbook.problems.Problem}.
 */
package ringbook.problems;
