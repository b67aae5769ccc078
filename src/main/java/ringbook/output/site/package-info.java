/**
 * The course as a website that opens from a folder, without a server and without a network.
 *
 * <p><b>Contract.</b> One page a lesson, a first page, and the list of all quantities. Pages load
 * nothing but the files written beside them, hold no inline script or style, and are valid HTML.
 * Templates ({@link ringbook.output.Templates}), styles and script are data in the folder {@code
 * site} of the project; this package only fills them.
 *
 * <p><b>Layer.</b> Above course, below cli. Reads the page model and the class path; writes below
 * the folder it is given.
 *
 * <p><b>Start at</b> {@link ringbook.output.site.SiteOutput}.
 */
package ringbook.output.site;
