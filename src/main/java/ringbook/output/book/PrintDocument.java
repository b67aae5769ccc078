package ringbook.output.book;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** The filled template as a document tree, made ready for print step by step. */
final class PrintDocument {

  private PrintDocument() {}

  /**
   * The print document.
   *
   * @param xhtml the filled template; fragments of the page model in it are well-formed by their
   *     contract, so a fault here is a programmer's
   * @throws BookException if a link leads nowhere
   */
  static Document of(String xhtml) throws IOException {
    Document document = parse(xhtml);
    Element root = document.getDocumentElement();
    tidy(root);
    PrintLinks.resolve(root);
    PrintPunctuation.join(root);
    PrintIndex.fill(root);
    Bookmarks.add(document);
    return document;
  }

  /**
   * The print document of a sheet that is handed out by itself: as {@link #of}, but with no
   * contents to list and no place that links could lead to.
   */
  static Document sheet(String xhtml) throws IOException {
    Document document = parse(xhtml);
    Element root = document.getDocumentElement();
    tidy(root);
    PrintLinks.drop(root);
    PrintPunctuation.join(root);
    Bookmarks.add(document);
    return document;
  }

  private static void tidy(Element root) {
    PrintHeadings.close(root);
    PrintChains.open(root);
    PrintCells.mark(root);
    PrintLeads.mark(root);
    PrintInputs.runIn(root);
    PrintWords.set(root);
    PrintFractions.join(root);
    PrintDrawings.prepare(root);
  }

  /** The tree of a well-formed text. */
  static Document parse(String xhtml) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new Strict());
      return builder.parse(new InputSource(new StringReader(xhtml)));
    } catch (SAXParseException wrong) {
      throw new IllegalStateException(near(xhtml, wrong), wrong);
    } catch (ParserConfigurationException | SAXException wrong) {
      throw new IllegalStateException(wrong);
    }
  }

  private static String near(String xhtml, SAXParseException wrong) {
    String[] lines = xhtml.split("\n", -1);
    String line = lines[Math.max(0, Math.min(lines.length, wrong.getLineNumber()) - 1)];
    return "the book's text is not well-formed: " + wrong.getMessage() + " near: " + line.strip();
  }

  /** Throws what the JDK's parser would print on the error stream. */
  private static final class Strict implements ErrorHandler {
    @Override
    public void warning(SAXParseException wrong) throws SAXException {
      throw wrong;
    }

    @Override
    public void error(SAXParseException wrong) throws SAXException {
      throw wrong;
    }

    @Override
    public void fatalError(SAXParseException wrong) throws SAXException {
      throw wrong;
    }
  }
}
