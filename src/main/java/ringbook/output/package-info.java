/**
 * Writes a composed course: one sub-package a format. Outputs read the page model only, never
 * lessons.
 *
 * <p><b>Contract.</b> The same course gives the same bytes. An output writes into a folder of its
 * own; nothing of an earlier make is touched until all outputs have succeeded.
 *
 * <p><b>Layer.</b> Above course, below cli.
 *
 * <p><b>Start at</b> {@link ringbook.output.Output}.
 */
package ringbook.output;
