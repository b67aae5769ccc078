/**
 * What the script of a page may call: the calculations of all layers above, compiled to JavaScript.
 *
 * <p>{@link ringbook.browser.Page} is the whole of it. {@link ringbook.browser.CourseData} writes
 * what a page must know of its course. Everything here runs on the JVM as well, which is how the
 * tests know what the script must answer.
 */
package ringbook.browser;
