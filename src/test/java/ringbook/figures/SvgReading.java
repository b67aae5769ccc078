package ringbook.figures;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a drawing back with the XML parser of the JDK. */
public final class SvgReading {

  private SvgReading() {}

  /** The root of a drawing; fails if the text is not well-formed. */
  public static Element root(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
    factory.setNamespaceAware(true);
    return factory
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)))
        .getDocumentElement();
  }

  /** All elements of a name, in order. */
  public static List<Element> all(Element root, String name) {
    List<Element> found = new ArrayList<>();
    NodeList nodes = root.getElementsByTagNameNS("*", name);
    for (int i = 0; i < nodes.getLength(); i++) {
      found.add((Element) nodes.item(i));
    }
    return found;
  }

  /** An attribute as a number. */
  public static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }
}
