/**
 * Diagrams and charts as SVG text.
 *
 * <p><b>Contract.</b> A drawing reads its numbers from the ledger only and gives a {@link
 * ringbook.figures.Figure}: one {@code svg} element with title and description, what there is to
 * see in words, and its numbers as a table. What the ledger refuses is said in words. The same
 * scene gives the same bytes. A chart is first a list of what it shows, then drawn.
 *
 * <p><b>Colours.</b> Every element carries its colour twice: as attribute, for print and light
 * pages, and as class, for a style sheet that recolours it. Classes that set the <em>stroke</em>:
 * fig-ink, fig-faint, fig-accent, fig-second, fig-third, fig-paper (halos). Classes that set the
 * <em>fill</em>: fig-text (letters and arrow heads), fig-fill-accent, fig-fill-faint,
 * fig-fill-paper. An element has at most one of each.
 *
 * <p><b>Layer.</b> Above the ledger; pure Java, also compiled for the browser.
 *
 * <p><b>Start at</b> {@link ringbook.figures.Diagrams} and {@link ringbook.figures.SvgWriter}.
 */
package ringbook.figures;
