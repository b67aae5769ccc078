package ringbook.output.pack;

import java.util.Locale;

/** A size of paper. */
public enum Paper {
  /** ISO 216 A4. */
  A4("210mm 297mm", 210, 297),
  /** US Letter, 8.5 in by 11 in (ANSI/ASME Y14.1, size A). */
  LETTER("215.9mm 279.4mm", 215.9, 279.4);

  private final String size;
  private final double width;
  private final double height;

  Paper(String size, double width, double height) {
    this.size = size;
    this.width = width;
    this.height = height;
  }

  /** Its name in paths and on the command line. */
  public String plainName() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** As a style sheet states it. */
  public String getSize() {
    return size;
  }

  /** In millimetres. */
  public double getWidth() {
    return width;
  }

  /** In millimetres. */
  public double getHeight() {
    return height;
  }
}
