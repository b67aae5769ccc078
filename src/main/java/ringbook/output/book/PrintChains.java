package ringbook.output.book;

import org.w3c.dom.Element;

/**
 * Takes the common box off the steps of a solution: the page maker keeps the whole block behind a
 * heading on the heading's page, and only single steps can find room there.
 */
final class PrintChains {

  private PrintChains() {}

  static void open(Element root) {
    for (Element chain : Elements.named(root, "div")) {
      if (Elements.hasClass(chain, "chain")) {
        for (Element step : Elements.named(chain, "div")) {
          if (Elements.hasClass(step, "working")) {
            Elements.addClass(step, "linked");
          }
        }
        while (chain.getFirstChild() != null) {
          chain.getParentNode().insertBefore(chain.getFirstChild(), chain);
        }
        chain.getParentNode().removeChild(chain);
      }
    }
  }
}
