package ringbook.geometry;

/**
 * A solid at its place that is asked of many points whether it holds them: what {@link
 * Placed#contains} gives, with the turn worked out once and most points told by the block around
 * it.
 */
final class Probe {

  private final Solid solid;
  private final Bounds block;
  private final double reserve;
  private final Vec3 at;
  private final Turn back;

  /**
   * Of one solid.
   *
   * @param reserve metres by which the block is taken larger, against rounding
   */
  Probe(Placed placed, double reserve) {
    this.solid = placed.solid();
    this.block = placed.bounds();
    this.reserve = reserve;
    this.at = placed.placement().at();
    this.back = placed.placement().back();
  }

  /** Whether a point of the shape's frame lies in the solid. */
  boolean contains(Vec3 p) {
    return nearBlock(p) && solid.contains(back.turned(p.minus(at)));
  }

  private boolean nearBlock(Vec3 p) {
    return p.x() >= block.low().x() - reserve
        && p.x() <= block.high().x() + reserve
        && p.y() >= block.low().y() - reserve
        && p.y() <= block.high().y() + reserve
        && p.z() >= block.low().z() - reserve
        && p.z() <= block.high().z() + reserve;
  }

  /** Whether a block comes as near. */
  boolean meets(Bounds other) {
    return other.low().x() <= block.high().x() + reserve
        && block.low().x() <= other.high().x() + reserve
        && other.low().y() <= block.high().y() + reserve
        && block.low().y() <= other.high().y() + reserve
        && other.low().z() <= block.high().z() + reserve
        && block.low().z() <= other.high().z() + reserve;
  }
}
