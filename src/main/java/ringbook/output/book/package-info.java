/**
 * The course as a printed book: one tagged PDF with contents, chapters, solutions, an appendix of
 * quantities and an index.
 *
 * <p><b>Contract.</b> The same course gives the same bytes. The fonts travel with the program and
 * are embedded; a letter they lack, a link that leads nowhere and any warning of the page maker
 * stop the make with a clear text rather than spoil a page.
 *
 * <p><b>Layer.</b> Output: reads the page model only. The look is in {@code site/book}: {@code
 * book.ftlh} says what stands where, {@code book.css} how it looks.
 *
 * <p><b>Start at</b> {@link ringbook.output.book.BookOutput}.
 */
package ringbook.output.book;
