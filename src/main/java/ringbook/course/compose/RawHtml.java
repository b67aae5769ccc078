package ringbook.course.compose;

import com.vladsch.flexmark.util.ast.Node;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** HTML that the author wrote: it must be well-formed and hold nothing that acts. */
final class RawHtml {

  private static final String BEFORE = "<div>";
  private static final List<String> REFUSED =
      List.of("script", "style", "iframe", "object", "embed", "form", "link", "meta", "base");

  private RawHtml() {}

  /** A block of HTML, as it stands; faults are told. */
  static String block(Node node, Scope scope) {
    String html = node.getChars().toString().strip();
    try {
      parse(html);
    } catch (SAXParseException fault) {
      int offset = offset(html, fault.getLineNumber(), fault.getColumnNumber());
      scope.fault(
          node.getStartOffset() + offset,
          "this HTML is not well-formed: " + words(fault),
          "close every element, and put attribute values in quotation marks");
      return "";
    } catch (SAXException refused) {
      scope.fault(node, "this HTML cannot stand here: " + refused.getMessage(), "leave it out");
      return "";
    }
    return html;
  }

  /** Why {@code html} cannot be taken; empty if it can. */
  static Optional<String> refusal(String html) {
    try {
      parse(html);
      return Optional.empty();
    } catch (SAXParseException fault) {
      return Optional.of(words(fault));
    } catch (SAXException refused) {
      return Optional.of(refused.getMessage());
    }
  }

  private static void parse(String html) throws SAXException {
    SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
    try {
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory
          .newSAXParser()
          .parse(new InputSource(new StringReader(BEFORE + html + "</div>")), new Refusing());
    } catch (ParserConfigurationException impossible) {
      throw new IllegalStateException(impossible);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static String words(SAXParseException fault) {
    String message = fault.getMessage();
    return message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
  }

  /** The parser says how far it had read; the fault lies at or before that place. */
  private static int offset(String html, int line, int column) {
    int start = 0;
    for (int i = 1; i < line; i++) {
      start = html.indexOf('\n', start) + 1;
    }
    int offset = start + column - 1 - (line == 1 ? BEFORE.length() : 0);
    return Math.max(0, Math.min(offset, html.length() - 1));
  }

  private static final class Refusing extends DefaultHandler {
    @Override
    public void startElement(String uri, String local, String name, Attributes attributes)
        throws SAXException {
      if (REFUSED.contains(name)) {
        throw new SAXException("a lesson has no <" + name + ">");
      }
      for (int i = 0; i < attributes.getLength(); i++) {
        String attribute = attributes.getQName(i);
        if (attribute.startsWith("on") || attribute.equals("id")) {
          throw new SAXException("a lesson has no attribute '" + attribute + "'");
        }
      }
    }

    @Override
    public void fatalError(SAXParseException fault) throws SAXException {
      throw fault;
    }
  }
}
