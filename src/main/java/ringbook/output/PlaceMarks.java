package ringbook.output;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names the blocks of text in fragments of the page model, so that the book can say on which page
 * each begins and another format can find it again. Both name the same fragment in the same way;
 * what they make of its formulas and links does not change the names.
 */
public final class PlaceMarks {

  /** The attribute that holds the name; no reader is meant to see it. */
  public static final String ATTRIBUTE = "data-place";

  private static final Pattern BLOCK =
      Pattern.compile(
          "<(?:p|li|h[2-6]|ul|ol|dl|dt|dd|div|section|table|td|th|pre|details|blockquote)"
              + "(?=[ />])(?:[^\"'<>/]++|\"[^\"]*+\"|'[^']*+')*+");

  private PlaceMarks() {}

  /**
   * The fragment with every block named {@code NAME.1}, {@code NAME.2} and so on.
   *
   * @param xhtml well-formed
   * @param name of the fragment, unique in the course
   */
  public static String in(String xhtml, String name) {
    StringBuilder out = new StringBuilder();
    Matcher block = BLOCK.matcher(xhtml);
    int number = 0;
    while (block.find()) {
      String mark = " " + ATTRIBUTE + "=\"" + name + "." + ++number + "\"";
      block.appendReplacement(out, Matcher.quoteReplacement(block.group() + mark));
    }
    return block.appendTail(out).toString();
  }
}
