package ringbook.shots;

import ringbook.units.Angle;
import ringbook.units.Details;
import ringbook.units.Length;
import ringbook.units.Lengths;

/**
 * What the photographs must achieve and the limits the group works to.
 *
 * @param detail smallest detail the model must show
 * @param pixelsPerDetail how many pixels that detail must span
 * @param fill largest share of the frame the object may take up, 0 to 1
 * @param hold how the camera is held
 * @param sharpShare share of the object's depth that one photograph must hold sharp, from the near
 *     face
 * @param blurLimit widest blur spot taken for sharp, in pixels
 * @param diffractionLimit widest diffraction disc accepted, in pixels
 * @param elevation of the ring above the horizontal through the middle of the object
 * @param step turn from one photograph to the next
 * @param stepLimit largest turn that still gives reliable matches
 * @param incidenceLimit most slanted view that still counts as seeing a surface
 * @param decay turn over which the look of a surface changes so much that matches fall to 1/e
 * @param lengths in which measures lengths are told
 * @param details what else is stated about it
 */
public record Aim(
    Length detail,
    double pixelsPerDetail,
    double fill,
    Hold hold,
    double sharpShare,
    double blurLimit,
    double diffractionLimit,
    Angle elevation,
    Angle step,
    Angle stepLimit,
    Angle incidenceLimit,
    Angle decay,
    Lengths lengths,
    Details details) {

  /** The same with lengths told in other measures. */
  Aim in(Lengths other) {
    return new Aim(
        detail,
        pixelsPerDetail,
        fill,
        hold,
        sharpShare,
        blurLimit,
        diffractionLimit,
        elevation,
        step,
        stepLimit,
        incidenceLimit,
        decay,
        other,
        details);
  }

  /** How the camera is held. */
  public enum Hold {
    /** Long side of the picture upright. */
    UPRIGHT,
    /** Long side of the picture level. */
    LEVEL
  }
}
