package ringbook.output.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.text.TextPosition;

/**
 * The lines of a page of the book, from the places of its letters. (Words of drawings and formulas
 * are outlines and no letters.)
 */
final class PageLines {

  /** The text block of book.css, in points from the top of the page. */
  static final double TOP = mm(30);

  static final double BOTTOM = mm(267);
  static final double WIDTH = mm(134);

  private static final double INNER_MARGIN = mm(34);
  private static final double OUTER_MARGIN = mm(42);

  /** Letters so near in height are on one line: signs of formulas in it stand a little apart. */
  private static final double ONE_LINE = 2.2;

  /** So wide a gap is a space. */
  private static final double SPACE = 1.2;

  /** One line, all lengths in points. */
  record Line(double left, double right, double down, String font, double size, String text) {

    boolean isBody() {
      return font.startsWith("LiberationSerif") && Math.abs(size - 10.8) < 0.1;
    }

    /** Of two levels, and of a box. */
    boolean isHeading() {
      boolean bold = font.equals("LiberationSans-Bold");
      return (font.equals("LiberationSerif") && Math.abs(size - 15.5) < 0.1)
          || (bold && (Math.abs(size - 11) < 0.1 || Math.abs(size - 10.5) < 0.1));
    }

    /** Whether it is a row of a table's head, all in strong type. */
    boolean isTableHead() {
      boolean small = Math.abs(size - 9.2) < 0.1 || Math.abs(size - 8.2) < 0.1;
      return font.equals("LiberationSans-Bold") && small;
    }

    /** Whether it is a row of figures and words in a table. */
    boolean isTableRow() {
      boolean small = Math.abs(size - 9.2) < 0.1 || Math.abs(size - 8.2) < 0.1;
      return font.equals("LiberationSans") && small;
    }
  }

  private PageLines() {}

  private static double mm(double millimetres) {
    return millimetres * 72 / 25.4;
  }

  /** Where the text block of a page begins, from the left edge of the paper. */
  static double left(int page) {
    return page % 2 == 0 ? OUTER_MARGIN : INNER_MARGIN;
  }

  /** The lines of the text block, from top to bottom. */
  static List<Line> of(PressedBook book, int page) throws IOException {
    List<TextPosition> letters =
        book.letters(page).stream()
            .filter(l -> l.getYDirAdj() > TOP && l.getYDirAdj() < BOTTOM + 4)
            .filter(l -> !l.getUnicode().isBlank())
            .sorted(Comparator.comparing(TextPosition::getYDirAdj))
            .toList();
    List<Line> lines = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= letters.size(); i++) {
      if (i == letters.size()
          || letters.get(i).getYDirAdj() - letters.get(i - 1).getYDirAdj() > ONE_LINE) {
        lines.add(line(letters.subList(from, i)));
        from = i;
      }
    }
    return lines;
  }

  private static Line line(List<TextPosition> letters) {
    List<TextPosition> along = new ArrayList<>(letters);
    along.sort(Comparator.comparing(TextPosition::getXDirAdj));
    StringBuilder text = new StringBuilder();
    double right = along.get(0).getXDirAdj();
    boolean same = true;
    TextPosition first = along.get(0);
    for (TextPosition letter : along) {
      text.append(letter.getXDirAdj() - right > SPACE ? " " : "").append(letter.getUnicode());
      right = Math.max(right, letter.getXDirAdj() + letter.getWidthDirAdj());
      same &= font(letter).equals(font(first));
    }
    String font = same ? font(first) : font(first).replace("-Bold", "");
    return new Line(
        first.getXDirAdj(),
        right,
        first.getYDirAdj(),
        font,
        Math.abs(first.getYScale()),
        text.toString());
  }

  private static String font(TextPosition letter) {
    return letter.getFont().getName().replaceFirst("^[A-Z]{6}\\+", "");
  }
}
