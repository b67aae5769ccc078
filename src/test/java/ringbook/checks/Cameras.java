package ringbook.checks;

import georegression.struct.point.Point3D_F64;
import georegression.struct.point.Vector3D_F64;
import georegression.struct.se.Se3_F64;
import org.ejml.data.DMatrixRMaj;
import ringbook.geometry.Vec3;
import ringbook.shots.Ring;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * Stations of a ring as cameras of the computer vision library the tests check by: x right, y down,
 * z forward.
 */
final class Cameras {

  private Cameras() {}

  /** From the frame of the room to the frame of a camera at that station, held level. */
  static Se3_F64 worldToCamera(Station station) {
    Vec3 forward = station.view();
    Vec3 right = forward.cross(Vec3.UP).unit();
    Vec3 down = forward.cross(right);
    DMatrixRMaj rotation = new DMatrixRMaj(3, 3);
    int row = 0;
    for (Vec3 axis : new Vec3[] {right, down, forward}) {
      rotation.set(row, 0, axis.x());
      rotation.set(row, 1, axis.y());
      rotation.set(row++, 2, axis.z());
    }
    Vec3 lens = station.position();
    return new Se3_F64(
        rotation, new Vector3D_F64(-right.dot(lens), -down.dot(lens), -forward.dot(lens)));
  }

  /** A station round the origin, by direction, elevation and distance in metres. */
  static Station station(double azimuthDegrees, double elevationDegrees, double metres) {
    Angle azimuth = Angle.ofDegrees(azimuthDegrees);
    Ring ring = new Ring(Length.ZERO, new Length(metres), Angle.ofDegrees(elevationDegrees), 1);
    return new Station(1, azimuth, ring.positionAt(azimuth), ring.target());
  }

  /** The library's point. */
  static Point3D_F64 point(Vec3 v) {
    return new Point3D_F64(v.x(), v.y(), v.z());
  }
}
