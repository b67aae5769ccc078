package ringbook.geometry;

import ringbook.units.Angle;
import ringbook.units.Num;

/** A tilt and the azimuth it leans to, worked out once for many points. */
record Turn(double cosTilt, double sinTilt, double cosAzimuth, double sinAzimuth) {

  static Turn of(Angle tilt, Angle azimuth) {
    return new Turn(
        Num.cos(tilt.radians()),
        Num.sin(tilt.radians()),
        Num.cos(azimuth.radians()),
        Num.sin(azimuth.radians()));
  }

  Vec3 turned(Vec3 v) {
    // Turned back by the azimuth first, so that a tilt of zero leaves everything where it is.
    double u = cosAzimuth * v.x() + sinAzimuth * v.y();
    double w = cosAzimuth * v.y() - sinAzimuth * v.x();
    double forward = cosTilt * u + sinTilt * v.z();
    return new Vec3(
        cosAzimuth * forward - sinAzimuth * w,
        sinAzimuth * forward + cosAzimuth * w,
        cosTilt * v.z() - sinTilt * u);
  }
}
