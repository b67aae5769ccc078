package ringbook.sheets;

import ringbook.ledger.Reckoning;
import ringbook.shots.Aim.Hold;
import ringbook.units.Length;

/**
 * What a shot table means where it says nothing: stations look at the middle of the object, which
 * stands.
 *
 * @param middleHeight floor to the middle of the object
 * @param hold how the camera is held
 * @param focus focus distance
 */
public record ShotDefaults(Length middleHeight, Hold hold, Length focus) {

  /** What the numbers of a group say, which must allow a focus distance. */
  public static ShotDefaults of(Reckoning reckoning) {
    return new ShotDefaults(
        reckoning.length("ring.middleHeight"),
        reckoning.scene().aim().hold(),
        reckoning.length("sharp.focus"));
  }
}
