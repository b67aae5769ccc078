/**
 * The print pack: the sheets that a trainer carries into the room, tagged PDF, on A4 and US Letter,
 * in colour and in grey.
 *
 * <p><b>Contract.</b> The same course gives the same bytes. Numbers come from the ledger, runs from
 * the plan, single lines from the summaries of the lessons. Nothing is printed nearer than 8 mm to
 * an edge; every file has an even number of pages.
 *
 * <p><b>Layer.</b> Output; sets its pages with the press of the book. The look is in {@code
 * site/pack}, one template a sheet, {@code sheet.ftlh} for what they share.
 *
 * <p><b>Start at</b> {@link ringbook.output.pack.PackOutput}.
 */
package ringbook.output.pack;
