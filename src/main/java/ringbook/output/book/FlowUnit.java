package ringbook.output.book;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;

/**
 * Blocks of a chapter that no page parts: a block alone, or headings and sentences that lead up to
 * something, with what they lead up to.
 *
 * @param leads what comes first and stays with the block
 * @param block the block; the last of the leads where nothing follows
 * @param height of all, in points
 * @param above space above its first line that is dropped where it begins a page
 * @param cuts how much of it may stand on a page before the rest goes to the next, rising
 */
record FlowUnit(
    List<Element> leads, Element block, double height, double above, List<Double> cuts) {

  private static final int LINES_TOGETHER = BookStyle.linesTogether();
  private static final double ROOM_FOR_HEADING = BookStyle.roomForHeading();
  private static final double SPARED_BY_BOX = BookStyle.sparedByBox();
  private static final double SPARED_BY_ITEM = BookStyle.sparedByItem();
  private static final double SPARED_BY_PARAGRAPH = BookStyle.sparedByParagraph();

  private static final List<String> TEXT = List.of("p", "ul", "ol", "dl", "blockquote");

  /** The children of a chapter as units. */
  static List<FlowUnit> of(Element chapter, TallPages measures) {
    List<FlowUnit> units = new ArrayList<>();
    List<Element> leads = new ArrayList<>();
    double height = 0;
    for (Element child : Elements.children(chapter)) {
      if (measures.height(child) > 0) {
        height += measures.height(child);
        if (isHeading(child) || Elements.hasClass(child, "leads")) {
          leads.add(child);
        } else {
          units.add(unit(List.copyOf(leads), child, height, measures));
          leads.clear();
          height = 0;
        }
      }
    }
    return units;
  }

  private static FlowUnit unit(
      List<Element> leads, Element block, double height, TallPages measures) {
    Element first = leads.isEmpty() ? block : leads.get(0);
    boolean words = TEXT.contains(first.getNodeName());
    double above = words ? measures.lines(first).get(0) : 0;
    if (!TEXT.contains(block.getNodeName())) {
      return new FlowUnit(leads, block, height, above, List.of());
    }
    boolean items = !block.getNodeName().equals("p");
    List<Double> lines = measures.lines(block);
    double led = height - measures.height(block);
    List<Double> cuts = new ArrayList<>();
    if (items || leads.isEmpty()) {
      int apart = items ? 1 : LINES_TOGETHER;
      for (int line = apart; line <= lines.size() - apart; line++) {
        cuts.add(led + lines.get(line));
      }
    }
    return new FlowUnit(leads, block, height, above, cuts);
  }

  private static boolean isHeading(Element element) {
    return List.of("h1", "h2", "h3", "h4").contains(element.getNodeName());
  }

  /** How much of it can stand in {@code room}; 0 if it must go to the next page as a whole. */
  double fitting(double room) {
    if (isHeaded() && room < ROOM_FOR_HEADING) {
      return 0;
    }
    if (height <= room) {
      return height;
    }
    boolean lines = block.getNodeName().equals("p");
    if (lines && cuts.size() == 1) {
      return 0; // the page maker does not part four lines
    }
    double most = 0;
    for (double cut : cuts) {
      most = cut <= room ? cut : most;
    }
    return most;
  }

  /** Whether it is a figure with what belongs to it. */
  boolean isPlate() {
    return Elements.hasClass(block, "plate");
  }

  /** Whether it is text of the same thought, before which a figure need not stand. */
  boolean isText() {
    boolean working = Elements.hasClass(block, "working");
    return (TEXT.contains(block.getNodeName()) || working) && !isHeaded();
  }

  boolean isHeaded() {
    return leads.stream().anyMatch(FlowUnit::isHeading);
  }

  /** How much lower it becomes, in points, with the class {@code dense} of book.css. */
  double spared() {
    double spared = SPARED_BY_BOX + SPARED_BY_ITEM * Elements.named(block, "li").size();
    for (Element child : Elements.children(block)) {
      spared += child.getNodeName().equals("p") ? SPARED_BY_PARAGRAPH : 0;
    }
    return spared;
  }

  /** Whether it goes on with the sentence that a formula before it interrupts. */
  boolean goesOn() {
    String text = Elements.text(first());
    return isText() && !text.isEmpty() && Character.isLowerCase(text.charAt(0));
  }

  /** Whether nothing but headings leads up to it. */
  boolean isHeadedOnly() {
    return leads.stream().allMatch(FlowUnit::isHeading);
  }

  /** The same behind these, which take {@code led} points; nothing is parted then. */
  FlowUnit ledBy(List<Element> headings, double led) {
    List<Element> all = new ArrayList<>(headings);
    all.addAll(leads);
    return new FlowUnit(List.copyOf(all), block, height + led, 0, List.of());
  }

  /** The block without what leads up to it. */
  FlowUnit alone(double blockHeight) {
    return new FlowUnit(List.of(), block, blockHeight, 0, List.of());
  }

  /** Its first element. */
  Element first() {
    return leads.isEmpty() ? block : leads.get(0);
  }
}
