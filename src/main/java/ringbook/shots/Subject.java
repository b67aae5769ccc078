package ringbook.shots;

import ringbook.units.Details;
import ringbook.units.Length;

/**
 * The object to photograph, by its outer sizes as it stands on the table.
 *
 * @param name what the group calls it
 * @param outline its shape seen from above
 * @param height from table to top
 * @param width the longer side seen from above; the diameter of a round object
 * @param depth the shorter side seen from above; the diameter of a round object
 * @param surface how its surface looks to a camera
 * @param details what else is stated about it
 */
public record Subject(
    String name,
    Outline outline,
    Length height,
    Length width,
    Length depth,
    Surface surface,
    Details details) {

  /** Shape seen from above. */
  public enum Outline {
    ROUND,
    RECTANGULAR
  }

  /** How much a camera finds on the surface to hold on to. */
  public enum Surface {
    /** Matt with texture all over: good. */
    TEXTURED,
    /** Matt and plain: little to match. */
    PLAIN,
    /** Shows highlights that wander with the camera. */
    GLOSSY,
    /** Lets light through. */
    CLEAR
  }
}
