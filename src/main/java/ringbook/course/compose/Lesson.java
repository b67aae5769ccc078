package ringbook.course.compose;

import com.vladsch.flexmark.util.ast.Document;

/**
 * A lesson as it was read.
 *
 * @param id its name in links
 * @param title plain text
 * @param aim one sentence, plain text
 * @param body the Markdown below the front matter
 * @param lines finds the places of its nodes
 */
record Lesson(String id, String title, String aim, Document body, Lines lines) {}
