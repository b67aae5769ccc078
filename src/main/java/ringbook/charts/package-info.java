/**
 * Draws charts, and is the shelf that all figures are taken from.
 *
 * <p><b>Contract.</b> A {@link ringbook.figures.ChartModel} becomes SVG text that follows the same
 * rules as the diagrams of {@link ringbook.figures}; the same model gives the same bytes whatever
 * the language and the fonts of the machine.
 *
 * <p><b>Layer.</b> Above figures; uses JFreeChart and Batik.
 *
 * <p><b>Start at</b> {@link ringbook.charts.FigureShelf}.
 */
package ringbook.charts;
