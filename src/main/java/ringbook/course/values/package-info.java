/**
 * The values in the sentences of a lesson: one expression at a time, worked out over the ledger of
 * a scene.
 *
 * <p><b>Contract.</b> An expression sees quantities by key ({@code distance.standoff}), words of
 * the scene ({@code kit.name}) and {@code given("aim.step = 72°")}, the same over a changed scene;
 * nothing else of the program, the machine or the clock. Values know their unit and rounding; a
 * bare number may be printed only if it is whole. A fault is an {@link
 * ringbook.course.values.ExpressionFault} with what to write instead.
 *
 * <p><b>Layer.</b> Inside course; above ledger and shots.
 *
 * <p><b>Start at</b> {@link ringbook.course.values.Expressions}.
 */
package ringbook.course.values;
