package ringbook.optics;

import ringbook.units.Details;

/**
 * A camera with its lens, described by numbers only.
 *
 * @param name what the group calls it, without make or model
 * @param sensor the sensor
 * @param lens the lens
 * @param basis how the sensor size is known
 * @param details what else is stated about it
 */
public record Kit(String name, Sensor sensor, Lens lens, Basis basis, Details details) {

  /** How the size of the sensor came to be known, and so how far to trust what hangs on it. */
  public enum Basis {
    /** Sensor size was given. */
    GIVEN,
    /**
     * Worked out from true focal length and 35 mm equivalent, which is rounded to whole
     * millimetres.
     */
    FROM_EQUIVALENT,
    /** Only the 35 mm equivalent was given: a small phone sensor was assumed. */
    ASSUMED
  }
}
