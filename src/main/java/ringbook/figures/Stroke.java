package ringbook.figures;

/**
 * A pen.
 *
 * @param ink its colour
 * @param width in drawing units
 * @param dash lengths of dash and gap as SVG writes them; empty for a solid line
 */
public record Stroke(Ink ink, double width, String dash) {

  /** An ordinary outline. */
  public static final Stroke OUTLINE = solid(Ink.INK, 1.5);

  /** A dimension line. */
  public static final Stroke THIN = solid(Ink.INK, 1);

  /** A guide. */
  public static final Stroke GUIDE = dashed(Ink.FAINT, 1, "4 3");

  /** A solid pen. */
  public static Stroke solid(Ink ink, double width) {
    return new Stroke(ink, width, "");
  }

  /** A dashed pen. */
  public static Stroke dashed(Ink ink, double width, String dash) {
    return new Stroke(ink, width, dash);
  }
}
