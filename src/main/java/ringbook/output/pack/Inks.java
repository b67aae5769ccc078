package ringbook.output.pack;

import java.util.Locale;
import java.util.Map;
import ringbook.figures.Ink;

/** With which inks sheets are printed. */
public enum Inks {
  /** The earthen accent of the book. */
  COLOUR,
  /**
   * Black on white. A colour becomes the grey of its lightness; those that would fall together are
   * moved apart.
   */
  GREY;

  private static final String RULE = "#b9a78f";

  /** Greys of inks whose own lightness lies too near to that of another, or to white. */
  private static final Map<String, String> MOVED =
      Map.of(
          Ink.INK.colour(),
          "#000000",
          Ink.SECOND.colour(),
          "#2f2f2f",
          Ink.ACCENT.colour(),
          "#5a5a5a",
          Ink.FAINT.colour(),
          "#8a8a8a",
          Ink.THIRD.colour(),
          "#b0b0b0",
          RULE,
          "#858585");

  /** Its name in paths and on the command line. */
  public String plainName() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The colour, {@code #rrggbb}, in which {@code colour} is printed; other values stay. */
  public String of(String colour) {
    if (this == COLOUR || !colour.matches("#[0-9a-fA-F]{6}")) {
      return colour;
    }
    String plain = colour.toLowerCase(Locale.ROOT);
    return MOVED.containsKey(plain) ? MOVED.get(plain) : grey(plain);
  }

  /** The grey of the same luminance, by IEC 61966-2-1 (sRGB). */
  private static String grey(String colour) {
    double luminance =
        0.2126 * linear(colour, 1) + 0.7152 * linear(colour, 3) + 0.0722 * linear(colour, 5);
    double part =
        luminance <= 0.0031308 ? 12.92 * luminance : 1.055 * Math.pow(luminance, 1 / 2.4) - 0.055;
    int level = (int) Math.min(255, Math.max(0, Math.round(255 * part)));
    return String.format(Locale.ROOT, "#%02x%02x%02x", level, level, level);
  }

  private static double linear(String colour, int at) {
    double part = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
    return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }

  /** Text. */
  public String getInk() {
    return of("#2a2420");
  }

  /** Side remarks. */
  public String getSoft() {
    return of("#6b5f55");
  }

  /** What stands out. */
  public String getAccent() {
    return of("#9a4a26");
  }

  /** Rules between things. */
  public String getRule() {
    return of(RULE);
  }

  /** Behind boxes. */
  public String getTint() {
    return of("#f6efe4");
  }
}
