package ringbook.course.compose;

import com.vladsch.flexmark.ast.BlockQuote;
import com.vladsch.flexmark.ast.BulletList;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlock;
import com.vladsch.flexmark.ast.HtmlCommentBlock;
import com.vladsch.flexmark.ast.IndentedCodeBlock;
import com.vladsch.flexmark.ast.OrderedList;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.ast.ParagraphItemContainer;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.ast.ThematicBreak;
import com.vladsch.flexmark.ext.definition.DefinitionItem;
import com.vladsch.flexmark.ext.definition.DefinitionList;
import com.vladsch.flexmark.ext.definition.DefinitionTerm;
import com.vladsch.flexmark.ext.footnotes.FootnoteBlock;
import com.vladsch.flexmark.ext.tables.TableBlock;
import com.vladsch.flexmark.util.ast.Node;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import ringbook.course.markdown.MarkSpan;

/** Writes paragraphs, lists, tables and fences of one Markdown text. */
final class BlockWriter {

  private final Scope scope;
  private final Map<Class<? extends Node>, BiConsumer<Node, Sink>> writers = new LinkedHashMap<>();

  BlockWriter(Scope scope) {
    this.scope = scope;
    addText();
    addLists();
    addRest();
  }

  /** Writes all that {@code parent} holds. */
  void write(Node parent, Sink sink) {
    for (Node child : parent.getChildren()) {
      BiConsumer<Node, Sink> writer = writers.get(child.getClass());
      if (writer == null) {
        throw new IllegalStateException("no way to write " + child.getNodeName());
      }
      writer.accept(child, sink);
    }
  }

  /** The same as markup, for the inside of something. */
  String inside(Node parent) {
    Sink sink = Sink.ofMarkup();
    write(parent, sink);
    return sink.markup();
  }

  private void addText() {
    writers.put(Paragraph.class, (node, sink) -> paragraph((Paragraph) node, sink));
    writers.put(
        Heading.class, (node, sink) -> sink.add(new HeadingWriter(scope).write((Heading) node)));
    writers.put(
        BlockQuote.class,
        (node, sink) -> sink.add("<blockquote>\n" + inside(node) + "</blockquote>"));
    writers.put(ThematicBreak.class, (node, sink) -> sink.add("<hr />"));
    writers.put(
        IndentedCodeBlock.class,
        (node, sink) ->
            sink.add(
                "<pre><code>"
                    + Xhtml.text(((IndentedCodeBlock) node).getContentChars().normalizeEOL())
                    + "</code></pre>"));
  }

  private void addLists() {
    writers.put(BulletList.class, (node, sink) -> sink.add(list("ul", "", node)));
    writers.put(
        OrderedList.class,
        (node, sink) -> {
          int start = ((OrderedList) node).getStartNumber();
          sink.add(list("ol", start == 1 ? "" : " start=\"" + start + "\"", node));
        });
    writers.put(DefinitionList.class, (node, sink) -> sink.add("<dl>\n" + inside(node) + "</dl>"));
    writers.put(
        DefinitionTerm.class,
        (node, sink) ->
            sink.add("<dt>" + InlineWriter.write(node.getFirstChild(), scope) + "</dt>"));
    writers.put(
        DefinitionItem.class, (node, sink) -> sink.add("<dd>" + inside(node).strip() + "</dd>"));
  }

  private void addRest() {
    writers.put(
        TableBlock.class,
        (node, sink) -> sink.add(new TableWriter(scope).write((TableBlock) node)));
    writers.put(
        FencedCodeBlock.class,
        (node, sink) -> new FenceWriter(scope).write((FencedCodeBlock) node, sink));
    writers.put(HtmlBlock.class, (node, sink) -> sink.add(RawHtml.block(node, scope)));
    writers.put(HtmlCommentBlock.class, (node, sink) -> {});
    writers.put(FootnoteBlock.class, (node, sink) -> {});
    writers.put(Reference.class, (node, sink) -> {});
  }

  private void paragraph(Paragraph paragraph, Sink sink) {
    String text = InlineWriter.write(paragraph, scope);
    boolean bare =
        paragraph.getParent() instanceof ParagraphItemContainer item
            && item.isParagraphInTightListItem(paragraph);
    String classes =
        paragraph.getLastChild() instanceof MarkSpan mark && !InlineWriter.ofSpan(mark)
            ? mark.classes()
            : "";
    sink.add(bare ? text : "<p" + Xhtml.optional("class", classes) + ">" + text + "</p>");
  }

  private String list(String element, String attributes, Node list) {
    StringBuilder out = new StringBuilder("<" + element + attributes + ">\n");
    for (Node item : list.getChildren()) {
      out.append("<li>").append(inside(item).strip()).append("</li>\n");
    }
    return out.append("</").append(element).append('>').toString();
  }
}
