package ringbook.photos;

import java.nio.file.Path;
import java.util.Optional;
import ringbook.shots.Subject.Surface;
import ringbook.units.Numbers;
import ringbook.units.Words;

/**
 * What the middle of one test photograph shows of the object's surface. A hint, no proof: one
 * picture cannot tell a highlight from a white spot, nor a plain object from a blurred picture.
 *
 * @param texturedShare share of the tiles with detail in both directions
 * @param clippedShare share of the pixels that are burnt out
 * @param spots how many burnt-out spots look like highlights
 * @param spotShare share of the pixels in these spots
 */
public record SurfaceFacts(double texturedShare, double clippedShare, int spots, double spotShare) {

  /** The part that is judged, in width and in height; the object should fill it. */
  private static final double MIDDLE = 0.6;

  /** Least share of textured tiles for the word; common practice, no source. */
  private static final double TEXTURED = 0.5;

  /** Least share of the pixels in spots for the word glossy; common practice, no source. */
  private static final double GLOSSY = 0.0005;

  /** More spots than this are a white pattern, not highlights; common practice, no source. */
  private static final int MOST_SPOTS = 40;

  /** Measures the photograph; empty where its pixels cannot be decoded. */
  public static Optional<SurfaceFacts> of(Path file) {
    return LumaReader.read(file).map(SurfaceFacts::of);
  }

  static SurfaceFacts of(Luma whole) {
    Luma middle = whole.middle(MIDDLE);
    Highlights highlights = Highlights.of(middle);
    return new SurfaceFacts(
        Texture.share(middle),
        highlights.clippedShare(),
        highlights.spots(),
        highlights.spotShare());
  }

  /** The word of the course file that fits best; never clear, which no picture tells. */
  public Surface likely() {
    if (spots >= 1 && spots <= MOST_SPOTS && spotShare >= GLOSSY) {
      return Surface.GLOSSY;
    }
    return texturedShare >= TEXTURED ? Surface.TEXTURED : Surface.PLAIN;
  }

  /** The word, the numbers it rests on, and what one picture cannot know. */
  public String reasoned() {
    String numbers =
        "in the middle of the picture "
            + percent(texturedShare, 0)
            + " of the tiles have detail in both directions ("
            + percent(TEXTURED, 0)
            + " are wanted), "
            + percent(clippedShare, 1)
            + " of the pixels are burnt out, "
            + Words.count(spots, "spot")
            + (spots == 1 ? " looks" : " look")
            + " like a highlight. ";
    return Words.lower(likely().name()) + ", it seems: " + numbers + caveat();
  }

  private String caveat() {
    return switch (likely()) {
      case GLOSSY ->
          "One picture cannot tell a highlight from a white spot: move the camera, and a highlight"
              + " wanders.";
      case PLAIN ->
          "A blurred or dark picture, or one that the object does not fill, looks plain too.";
      default -> "Noise at a high ISO setting looks textured too, and the other sides may differ.";
    };
  }

  private static String percent(double share, int decimals) {
    return Numbers.fixed(share * 100, decimals) + " %";
  }
}
