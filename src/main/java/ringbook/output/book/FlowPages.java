package ringbook.output.book;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The pages of one lesson as they will come out, reckoned from the heights of its units. */
final class FlowPages {

  /** Height of the text block, in points. */
  static final double HEIGHT = BookStyle.textHeight();

  /** Less room than this at the foot of a page is no gap: about five lines. */
  private static final double NO_GAP = 78;

  /** A page with more room than this at its foot looks unfinished. */
  private static final double LARGE_GAP = 0.3 * HEIGHT;

  /** A figure is parted from its numbers only where that spares so much more room. */
  private static final double PRICE_OF_PARTING = 90;

  /** So empty may a page be left for the summary to have company on the next. */
  private static final double SLIGHTLY_EMPTY = 0.42 * HEIGHT;

  private static final double MOST_EMPTY = 0.53 * HEIGHT;

  /**
   * A unit with its place.
   *
   * @param page on which it begins, from 0
   * @param top where, from the top of the text block, in points
   */
  record Placed(FlowUnit unit, int page, double top) {}

  private final List<FlowUnit> units;
  private final TallPages measures;
  private final List<Placed> placed = new ArrayList<>();
  private int page;
  private double down;

  FlowPages(List<FlowUnit> units, TallPages measures) {
    this.units = new ArrayList<>(units);
    this.measures = measures;
  }

  List<Placed> placed() {
    return placed;
  }

  /** The number of pages. */
  int pages() {
    return page + 1;
  }

  /** Places all units, and moves figures behind text that fills the page before them. */
  void fill() {
    for (int i = 0; i < units.size(); i++) {
      FlowUnit unit = units.get(i);
      double room = HEIGHT - down;
      if (unit.fitting(room) == 0 && unit.isPlate() && room > NO_GAP) {
        i = plate(i, room);
      } else {
        place(unit);
      }
    }
  }

  private void place(FlowUnit unit) {
    double fits = unit.fitting(HEIGHT - down);
    if (fits == 0 && down > 0) {
      page++;
      down = -unit.above();
      fits = unit.fitting(HEIGHT + unit.above());
    }
    placed.add(new Placed(unit, page, down));
    down += unit.height();
    if (fits > 0 && fits < unit.height()) {
      page++;
      down = unit.height() - fits;
    }
    while (down > HEIGHT) { // higher than a page: parted somewhere
      page++;
      down -= HEIGHT;
    }
  }

  /**
   * A figure that has no room as a whole: text goes first, or its numbers follow overleaf, or it
   * leaves a gap, whichever is least empty.
   *
   * @return the index of the last unit that is placed then
   */
  private int plate(int i, double room) {
    FlowUnit unit = units.get(i);
    double led = unit.height() - measures.height(unit.block());
    int after = i + 1;
    double left = room - led;
    while (mayGoFirst(unit, after, i, room)) {
      FlowUnit next = units.get(after);
      double fits = next.fitting(left);
      boolean whole = fits == next.height();
      if (fits == 0 || (!whole && led > 0 && after == i + 1)) {
        break;
      }
      left = whole ? left - fits : 0;
      after++;
      if (!whole) {
        break;
      }
    }
    while (after > i + 1 && after < units.size() && units.get(after).goesOn()) {
      after--;
      left = room - led - heights(i + 1, after);
    }
    double figure = unit.height() - numbers(unit);
    boolean parts = numbers(unit) > 0 && figure <= room;
    if (parts && room - figure + PRICE_OF_PARTING < left) {
      placed.add(new Placed(unit, page, down));
      part(unit);
      page++;
      down = numbers(unit);
      return i;
    }
    if (after == i + 1) {
      place(unit);
      return i;
    }
    moveBehind(i, after - 1, led);
    for (int moved = i; moved < after; moved++) {
      place(units.get(moved));
    }
    return after - 1;
  }

  private double heights(int from, int to) {
    return units.subList(from, to).stream().mapToDouble(FlowUnit::height).sum();
  }

  /** Text goes before a figure; below a heading only if else a large part of the page is empty. */
  private boolean mayGoFirst(FlowUnit plate, int next, int at, double room) {
    if (next == units.size() || !units.get(next).isText()) {
      return false;
    }
    boolean leads = !plate.leads().isEmpty();
    return !leads || (plate.isHeadedOnly() && (room > LARGE_GAP || next > at + 1));
  }

  /**
   * Puts the figure {@code i} behind the unit {@code last}; its heading stays for what is first.
   */
  private void moveBehind(int i, int last, double led) {
    FlowUnit plate = units.get(i);
    Element behind = units.get(last).block();
    behind.getParentNode().insertBefore(plate.block(), behind.getNextSibling());
    if (led > 0) {
      units.set(i + 1, units.get(i + 1).ledBy(plate.leads(), led));
    }
    units.add(last + 1, plate.alone(measures.height(plate.block())));
    units.remove(i);
  }

  private double numbers(FlowUnit plate) {
    return Elements.children(plate.block()).stream()
        .filter(child -> Elements.hasClass(child, "readings"))
        .mapToDouble(measures::height)
        .sum();
  }

  /** Lets the page end between a figure and its numbers, and says above these where it stands. */
  private static void part(FlowUnit plate) {
    Elements.addClass(plate.block(), "parted");
    Element figure = Elements.children(plate.block()).get(0);
    for (Element head : Elements.named(plate.block(), "p")) {
      if (Elements.hasClass(head, "readings-head")) {
        Document document = head.getOwnerDocument();
        Element link = document.createElementNS(head.getNamespaceURI(), "a");
        link.setAttribute("class", "turn");
        link.setAttribute("href", "#" + figure.getAttribute("id"));
        link.appendChild(document.createTextNode("Figure on page"));
        head.appendChild(document.createTextNode(". "));
        head.appendChild(link);
      }
    }
  }

  /**
   * Gives the summary company if it would stand on the last page alone: it joins the exercises on
   * the page before, set closer; or takes the last one along, if that leaves no large gap; or
   * stands at the foot of an earlier page among the exercises.
   */
  void placeSummary() {
    int last = placed.size() - 1;
    if (last < 2 || !isSummary(placed.get(last)) || placed.get(last).top() > 0) {
      return;
    }
    Placed before = placed.get(last - 1);
    boolean fits = before.unit().height() + placed.get(last).unit().height() <= HEIGHT;
    double gap = fits && before.top() > 0 ? HEIGHT - before.top() : HEIGHT;
    if (joined(last, last)) {
      return;
    }
    if (gap <= SLIGHTLY_EMPTY || (!movedUp(last) && gap <= MOST_EMPTY)) {
      keepTogether(before.unit(), placed.get(last).unit());
    }
  }

  private boolean movedUp(int last) {
    for (int i = last - 1; i > 0 && isExercise(placed.get(i - 1)); i--) {
      if (placed.get(i).page() > placed.get(i - 1).page() && joined(last, i)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Sets the summary at the foot of the page before that of the unit {@code i}, if it can stand.
   */
  private boolean joined(int last, int i) {
    FlowUnit summary = placed.get(last).unit();
    Placed before = placed.get(i - 1);
    double foot = before.top() + before.unit().height();
    double excess = foot + summary.height() - HEIGHT;
    List<FlowUnit> dense = new ArrayList<>(List.of(summary));
    for (Placed other : placed.subList(0, i)) {
      if (other.page() == before.page() && isExercise(other)) {
        dense.add(other.unit());
      }
    }
    if (excess > dense.stream().mapToDouble(FlowUnit::spared).sum()) {
      return false;
    }
    if (excess > 0) {
      dense.forEach(unit -> Elements.addClass(unit.block(), "dense"));
    }
    Element next = placed.get(i).unit().first();
    if (i < last) {
      next.getParentNode().insertBefore(summary.block(), next);
    }
    placed.remove(last);
    placed.add(i, new Placed(summary, before.page(), foot));
    page--;
    return true;
  }

  private static void keepTogether(FlowUnit exercise, FlowUnit summary) {
    Element first = exercise.first();
    Element kept = first.getOwnerDocument().createElementNS(first.getNamespaceURI(), "div");
    kept.setAttribute("class", "kept");
    first.getParentNode().insertBefore(kept, first);
    Node node = first;
    while (node != null) {
      Node next = node.getNextSibling();
      kept.appendChild(node);
      node = node == summary.block() ? null : next;
    }
  }

  private static boolean isSummary(Placed placed) {
    return Elements.hasClass(placed.unit().block(), "summary");
  }

  private static boolean isExercise(Placed placed) {
    return Elements.hasClass(placed.unit().block(), "exercise");
  }
}
