package ringbook.output.book;

import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.LineBox;
import com.openhtmltopdf.render.PageBox;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.output.PlaceMarks;
import ringbook.output.PrintedPages;

/**
 * Reads from the pages as they are set where each named place begins: on the page of its first line
 * or drawing. (A box itself may begin at the foot of the page before, empty.)
 */
final class PlacedBoxes {

  private static final int NOWHERE = 0;

  private final List<PageBox> pages;
  private final Map<String, Integer> starts = new LinkedHashMap<>();

  private PlacedBoxes(List<PageBox> pages) {
    this.pages = pages;
  }

  /** The pages below {@code root}, which is laid out. */
  static PrintedPages of(BlockBox root) {
    PlacedBoxes places = new PlacedBoxes(root.getLayer().getPages());
    places.walk(root);
    return new PrintedPages(places.starts);
  }

  /** The page on which the box shows something first, from 1; 0 if it shows nothing. */
  private int walk(Box box) {
    int first = NOWHERE;
    if (box instanceof LineBox || (box instanceof BlockBox block && block.isReplaced())) {
      first = page(box.getAbsY());
    } else {
      for (int i = 0; i < box.getChildCount(); i++) {
        int page = walk(box.getChild(i));
        first = first == NOWHERE ? page : first;
      }
    }
    if (first != NOWHERE && box.getElement() != null) {
      String place = box.getElement().getAttribute(PlaceMarks.ATTRIBUTE);
      if (!place.isEmpty()) {
        starts.putIfAbsent(place, first);
      }
    }
    return first;
  }

  private int page(int down) {
    for (int i = 0; i < pages.size(); i++) {
      if (down < pages.get(i).getBottom()) {
        return i + 1;
      }
    }
    return NOWHERE;
  }
}
