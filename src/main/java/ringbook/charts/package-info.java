/**
 * Column charts of a class's marks, drawn by JFreeChart to SVG.
 *
 * <p><b>Contract.</b> The same model gives the same text on every machine: typeface, colours, marks
 * of the axes and their texts are all given. Figures of lessons are not drawn here but in {@code
 * figures}, because the pages draw them again without the JDK.
 *
 * <p><b>Layer.</b> The first one that uses libraries; above {@code figures}, whose inks, tones and
 * {@code Figure} it shares. <b>Start at</b> {@link ringbook.charts.ColumnChart}.
 */
package ringbook.charts;
