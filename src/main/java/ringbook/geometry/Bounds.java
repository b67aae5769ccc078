package ringbook.geometry;

/**
 * The upright block that just holds something, in metres.
 *
 * @param low its corner with the smallest coordinates
 * @param high its corner with the largest ones
 */
public record Bounds(Vec3 low, Vec3 high) {

  /** From low to high corner. */
  public Vec3 size() {
    return high.minus(low);
  }

  /** Its middle. */
  public Vec3 middle() {
    return low.plus(high).times(0.5);
  }

  /** From corner to opposite corner, in metres. */
  public double diagonal() {
    return size().norm();
  }

  /** The block that holds both. */
  public Bounds with(Bounds other) {
    return new Bounds(
        new Vec3(
            Math.min(low.x(), other.low.x()),
            Math.min(low.y(), other.low.y()),
            Math.min(low.z(), other.low.z())),
        new Vec3(
            Math.max(high.x(), other.high.x()),
            Math.max(high.y(), other.high.y()),
            Math.max(high.z(), other.high.z())));
  }
}
