package ringbook.figures;

/**
 * A line of text with its place.
 *
 * @param text plain text
 * @param at where its base line is anchored
 * @param anchor which end of it lies there
 * @param size of the letters
 * @param weight whether it stands out
 */
public record Label(String text, Point at, Anchor anchor, double size, Weight weight) {

  /** Size of ordinary labels. */
  public static final double SIZE = 14;

  /** Size of numbers at ticks and of side remarks. */
  public static final double SMALL = 12;

  /** Which part of the text lies at its point. */
  public enum Anchor {
    START("start"),
    MIDDLE("middle"),
    END("end");

    private final String svg;

    Anchor(String svg) {
      this.svg = svg;
    }

    String svg() {
      return svg;
    }
  }

  /** Whether a text stands out. */
  public enum Weight {
    NORMAL,
    BOLD
  }

  /** An ordinary label. */
  public static Label of(String text, Point at, Anchor anchor) {
    return new Label(text, at, anchor, SIZE, Weight.NORMAL);
  }

  /** A small label. */
  public static Label small(String text, Point at, Anchor anchor) {
    return new Label(text, at, anchor, SMALL, Weight.NORMAL);
  }

  /** The same label in bold. */
  public Label bold() {
    return new Label(text, at, anchor, size, Weight.BOLD);
  }

  /** The same label elsewhere. */
  public Label movedTo(Point place, Anchor end) {
    return new Label(text, place, end, size, weight);
  }

  /** The rectangle it covers. */
  public Box box() {
    double width = TextWidth.of(text, size) * (weight == Weight.BOLD ? 1.08 : 1);
    double left =
        switch (anchor) {
          case START -> at.x();
          case MIDDLE -> at.x() - width / 2;
          case END -> at.x() - width;
        };
    return new Box(left, at.y() - 0.75 * size, left + width, at.y() + 0.22 * size);
  }
}
