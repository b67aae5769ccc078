package ringbook.photos;

import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.units.FNumber;
import ringbook.units.Length;

/**
 * The camera's settings as the photograph states them; empty where it does not or states nothing of
 * use.
 *
 * @param focalLength true focal length
 * @param equivalent 35 mm equivalent focal length, in whole millimetres
 * @param fNumber f-number set
 * @param widest smallest f-number of the lens, where it is stated; often coarse
 * @param exposureSeconds exposure time in seconds
 * @param iso ISO setting
 * @param sensorWidth long side of the sensor, by the focal plane resolution
 * @param sensorHeight short side of the sensor, by the focal plane resolution
 * @param digitalZoom how many times the picture was enlarged in the camera; 1 for not at all
 */
public record Settings(
    Optional<Length> focalLength,
    Optional<Length> equivalent,
    Optional<FNumber> fNumber,
    Optional<FNumber> widest,
    OptionalDouble exposureSeconds,
    OptionalDouble iso,
    Optional<Length> sensorWidth,
    Optional<Length> sensorHeight,
    double digitalZoom) {}
