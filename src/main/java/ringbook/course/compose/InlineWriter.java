package ringbook.course.compose;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.Emphasis;
import com.vladsch.flexmark.ast.HardLineBreak;
import com.vladsch.flexmark.ast.HtmlEntity;
import com.vladsch.flexmark.ast.HtmlInline;
import com.vladsch.flexmark.ast.HtmlInlineComment;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.StrongEmphasis;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.ast.TextBase;
import com.vladsch.flexmark.ext.footnotes.Footnote;
import com.vladsch.flexmark.ext.typographic.TypographicQuotes;
import com.vladsch.flexmark.ext.typographic.TypographicSmarts;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import com.vladsch.flexmark.util.sequence.Escaping;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import ringbook.course.markdown.FormulaSpan;
import ringbook.course.markdown.MarkSpan;
import ringbook.course.markdown.ValueSpan;

/** Writes what stands inside a line: text, values, formulas, emphasis, links. */
final class InlineWriter {

  private final Scope scope;
  private final LinkWriter links;
  private final SpanWriter spans;
  private final RawTags tags;
  private final Map<Class<? extends Node>, Function<Node, String>> writers = new LinkedHashMap<>();

  private InlineWriter(Scope scope) {
    this.scope = scope;
    this.links = new LinkWriter(scope);
    this.spans = new SpanWriter(scope);
    this.tags = new RawTags(scope);
    addText();
    addLinks();
    addOwn();
  }

  /** The content of {@code parent} as XHTML. */
  static String write(Node parent, Scope scope) {
    InlineWriter writer = new InlineWriter(scope);
    String xhtml = writer.children(parent);
    writer.tags.finish();
    return xhtml.strip();
  }

  private void addText() {
    writers.put(Text.class, node -> plain(node.getChars()));
    writers.put(TextBase.class, this::children);
    writers.put(HtmlEntity.class, node -> plain(node.getChars()));
    writers.put(SoftLineBreak.class, node -> "\n");
    writers.put(HardLineBreak.class, node -> "<br />\n");
    writers.put(Emphasis.class, node -> "<em>" + children(node) + "</em>");
    writers.put(StrongEmphasis.class, node -> "<strong>" + children(node) + "</strong>");
    writers.put(
        Code.class,
        node -> "<code>" + Xhtml.text(((Code) node).getText().normalizeEOL()) + "</code>");
    writers.put(
        TypographicSmarts.class, node -> entity(((TypographicSmarts) node).getTypographicText()));
    writers.put(TypographicQuotes.class, node -> quoted((TypographicQuotes) node));
    writers.put(HtmlInline.class, node -> tags.write((HtmlInline) node));
    writers.put(HtmlInlineComment.class, node -> "");
  }

  private void addLinks() {
    writers.put(
        Link.class,
        node -> {
          Link link = (Link) node;
          return links.write(link, link.getUrl(), children(node));
        });
    writers.put(LinkRef.class, node -> links.reference((LinkRef) node, children(node)));
    writers.put(AutoLink.class, node -> links.bare(node, ((AutoLink) node).getText()));
    writers.put(MailLink.class, node -> links.mail((MailLink) node));
    writers.put(Image.class, node -> spans.image((Image) node));
    writers.put(ImageRef.class, node -> spans.imageReference((ImageRef) node));
    writers.put(Footnote.class, node -> spans.footnote((Footnote) node));
  }

  private void addOwn() {
    writers.put(ValueSpan.class, node -> spans.value((ValueSpan) node));
    writers.put(FormulaSpan.class, node -> spans.formula((FormulaSpan) node));
  }

  private String children(Node parent) {
    StringBuilder out = new StringBuilder();
    String last = "";
    for (Node child : parent.getChildren()) {
      if (child instanceof MarkSpan mark) {
        boolean ofSpan = ofSpan(mark);
        last = ofSpan ? marked(mark, last) : last.stripTrailing();
      } else {
        out.append(last);
        last = write(child);
      }
    }
    return out.append(last).toString();
  }

  private String write(Node node) {
    Function<Node, String> writer = writers.get(node.getClass());
    if (writer == null) {
      throw new IllegalStateException("no way to write " + node.getNodeName());
    }
    return writer.apply(node);
  }

  /** Whether the mark belongs to what stands right before it, not to the whole block. */
  static boolean ofSpan(MarkSpan mark) {
    Node before = mark.getPrevious();
    return before != null
        && before.getEndOffset() == mark.getStartOffset()
        && !(before instanceof Text)
        && !(before instanceof SoftLineBreak)
        && !(before instanceof TextBase);
  }

  private String marked(MarkSpan mark, String xhtml) {
    if (!mark.id().isEmpty()) {
      scope.fault(mark, "only a heading can have a name", "leave out '#" + mark.id() + "'");
    }
    return "<span" + Xhtml.optional("class", mark.classes()) + ">" + xhtml + "</span>";
  }

  private String quoted(TypographicQuotes quotes) {
    return entity(quotes.getTypographicOpening())
        + children(quotes)
        + entity(quotes.getTypographicClosing());
  }

  private static String plain(BasedSequence chars) {
    return Xhtml.text(chars.unescape());
  }

  private static String entity(String name) {
    return Xhtml.text(Escaping.unescapeHtml(name));
  }
}
