/**
 * The course as an e-book: an EPUB 3.3 publication.
 *
 * <p><b>Contract.</b> One file, {@code course.epub}, the same bytes for the same course on the same
 * Java; times in it come from the course file. Colours are the reading system's, but for drawings,
 * which bring their own ground.
 *
 * <p><b>Layer.</b> In output.
 *
 * <p><b>Start at</b> {@link ringbook.output.ebook.EbookOutput}.
 */
package ringbook.output.ebook;
