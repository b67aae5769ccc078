package ringbook.assess.coverage;

import java.util.Optional;
import ringbook.geometry.Vec3;
import ringbook.optics.DepthOfField;
import ringbook.optics.Diffraction;
import ringbook.optics.Kit;
import ringbook.optics.ThinLens;
import ringbook.shots.Aim;
import ringbook.shots.Aim.Hold;
import ringbook.shots.Station;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * One photograph's pyramid of sight in the frame of the standing object: where the lens is, where
 * the edges of the picture run, and between which depths it is sharp.
 *
 * <p>The picture is level: its upright side lies in the upright plane through the line of sight.
 * Looking straight up or down, its top points away from the photographer.
 *
 * @param position of the lens
 * @param view line of sight, of length 1
 * @param right to the right in the picture, of length 1
 * @param up upwards in the picture, of length 1
 * @param halfAcross half the picture's width at depth 1
 * @param halfUp half the picture's height at depth 1
 * @param sharpFrom nearest sharp depth in metres
 * @param sharpTo farthest sharp depth in metres, may be infinite; below {@code sharpFrom} if the
 *     aperture itself spreads every point too widely
 */
record Camera(
    Vec3 position,
    Vec3 view,
    Vec3 right,
    Vec3 up,
    double halfAcross,
    double halfUp,
    double sharpFrom,
    double sharpTo) {

  /** Share by which a depth may miss a limit that the distance was worked out from. */
  private static final double HAIR = 1e-9;

  /** Sine of the angle to the upright below which the picture's top has no direction of its own. */
  private static final double STRAIGHT = 1e-9;

  static Camera of(Viewpoint viewpoint, Vec3 middle, Kit kit, FNumber fNumber, Aim aim) {
    Station station = viewpoint.station();
    Vec3 view = station.view();
    Vec3 level = view.cross(Vec3.UP);
    double azimuth = station.azimuth().radians();
    Vec3 right =
        level.norm() > STRAIGHT ? level.unit() : new Vec3(-Num.sin(azimuth), Num.cos(azimuth), 0);
    Vec3 up = right.cross(view);
    Length focus = viewpoint.setup().focus();
    Length image = ThinLens.imageDistance(kit.lens().focalLength(), focus);
    double wide = kit.sensor().width().over(image) / 2;
    double low = kit.sensor().height().over(image) / 2;
    boolean upright = viewpoint.setup().hold() == Hold.UPRIGHT;
    double[] sharp = sharp(kit, fNumber, focus, aim);
    return new Camera(
        viewpoint.setup().pose().place(station.position(), middle),
        viewpoint.setup().pose().turn(view),
        viewpoint.setup().pose().turn(right),
        viewpoint.setup().pose().turn(up),
        upright ? low : wide,
        upright ? wide : low,
        sharp[0],
        sharp[1]);
  }

  private static double[] sharp(Kit kit, FNumber fNumber, Length focus, Aim aim) {
    Length focal = kit.lens().focalLength();
    Length pitch = kit.sensor().pixelPitch();
    FNumber effective = Diffraction.effective(fNumber, ThinLens.magnification(focal, focus));
    Length disc = Diffraction.disc(Diffraction.GREEN, effective);
    if (disc.over(pitch) > aim.diffractionLimit() * (1 + HAIR)) {
      return new double[] {0, -1};
    }
    Length hyperfocal = DepthOfField.hyperfocal(focal, fNumber, pitch.times(aim.blurLimit()));
    Length near = DepthOfField.nearLimit(focal, hyperfocal, focus);
    Optional<Length> far = DepthOfField.farLimit(focal, hyperfocal, focus);
    return new double[] {
      near.metres() * (1 - HAIR),
      far.map(Length::metres).orElse(Double.POSITIVE_INFINITY) * (1 + HAIR)
    };
  }

  boolean isSharp(double depth) {
    return depth >= sharpFrom && depth <= sharpTo;
  }
}
