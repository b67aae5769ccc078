package ringbook.geometry;

import java.util.List;

/**
 * Points in space, and things that belong to parts with a name: what {@link Mesh} and {@link
 * Patches} have in common.
 */
public abstract sealed class Parted permits Mesh, Patches {

  private final double[] xyz;
  private final int[] part;
  private final List<String> parts;

  Parted(double[] xyz, int[] part, List<String> parts) {
    this.xyz = xyz;
    this.part = part;
    this.parts = List.copyOf(parts);
  }

  /** The coordinates themselves, three a point; not to be changed. */
  final double[] coordinates() {
    return xyz;
  }

  /** The numbers of the parts themselves; not to be changed. */
  final int[] partNumbers() {
    return part;
  }

  /** x of a point, metres. */
  public final double x(int point) {
    return xyz[3 * point];
  }

  /** y of a point, metres. */
  public final double y(int point) {
    return xyz[3 * point + 1];
  }

  /** z of a point, metres. */
  public final double z(int point) {
    return xyz[3 * point + 2];
  }

  /** A point, metres. */
  public final Vec3 point(int point) {
    return new Vec3(x(point), y(point), z(point));
  }

  /** The number of the part that a triangle or a patch belongs to. */
  public final int part(int i) {
    return part[i];
  }

  /** Names of the parts. */
  public final List<String> parts() {
    return parts;
  }
}
