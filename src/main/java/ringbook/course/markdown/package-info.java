/**
 * The Markdown of lessons and exercises as a tree.
 *
 * <p><b>Contract.</b> Markdown is parsed as the author wrote it, before any value is put in, so
 * every node knows its place in the file and a value can never be taken for Markdown. Besides
 * tables, footnotes, definition lists and typographic marks, lessons know values ({@code ${…}}),
 * formulas (<code>$`…`$</code>) and marks (<code>{#name .class}</code>); a brace that begins none
 * of them is plain text.
 *
 * <p><b>Layer.</b> Inside course; uses no other part of the project.
 *
 * <p><b>Start at</b> {@link ringbook.course.markdown.Markdown}.
 */
package ringbook.course.markdown;
