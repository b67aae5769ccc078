package ringbook.geometry;

import java.util.Optional;

/**
 * A symmetric matrix of three rows: the covariance of a point in space, or its inverse, the weight.
 * Units are those of the numbers put in, squared.
 *
 * @param xx first row, first column
 * @param xy first row, second column
 * @param xz first row, third column
 * @param yy second row, second column
 * @param yz second row, third column
 * @param zz third row, third column
 */
public record Spread(double xx, double xy, double xz, double yy, double yz, double zz) {

  /** All zeros. */
  public static final Spread ZERO = new Spread(0, 0, 0, 0, 0, 0);

  /** A spread counts as endless if its inverse is this small a part of its size cubed. */
  private static final double FLAT = 1e-12;

  /**
   * What lies across a line: {@code I − u uᵀ}, the part of space that one line of sight fixes.
   *
   * @param direction u, of length 1
   */
  public static Spread across(Vec3 direction) {
    double x = direction.x();
    double y = direction.y();
    double z = direction.z();
    return new Spread(1 - x * x, -x * y, -x * z, 1 - y * y, -y * z, 1 - z * z);
  }

  /** Sum. */
  public Spread plus(Spread o) {
    return new Spread(xx + o.xx, xy + o.xy, xz + o.xz, yy + o.yy, yz + o.yz, zz + o.zz);
  }

  /** This, times a number. */
  public Spread times(double k) {
    return new Spread(k * xx, k * xy, k * xz, k * yy, k * yz, k * zz);
  }

  /** Determinant. */
  public double determinant() {
    return xx * (yy * zz - yz * yz) - xy * (xy * zz - yz * xz) + xz * (xy * yz - yy * xz);
  }

  /** Sum of the diagonal. */
  public double trace() {
    return xx + yy + zz;
  }

  /** The inverse by cofactors; empty if there is none to be trusted. */
  public Optional<Spread> inverse() {
    double determinant = determinant();
    double size = trace() / 3;
    if (!(determinant > FLAT * size * size * size)) {
      return Optional.empty();
    }
    return Optional.of(
        new Spread(
                yy * zz - yz * yz,
                xz * yz - xy * zz,
                xy * yz - xz * yy,
                xx * zz - xz * xz,
                xy * xz - xx * yz,
                xx * yy - xy * xy)
            .times(1 / determinant));
  }

  /** Square of the spread along a direction of length 1: {@code uᵀ M u}. */
  public double along(Vec3 u) {
    return xx * u.x() * u.x()
        + yy * u.y() * u.y()
        + zz * u.z() * u.z()
        + 2 * (xy * u.x() * u.y() + xz * u.x() * u.z() + yz * u.y() * u.z());
  }
}
