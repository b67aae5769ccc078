package ringbook.geometry;

import java.util.Arrays;
import java.util.List;

/**
 * A surface cut into patches of nearly the same area. Each is known by a point on the surface near
 * its middle ({@link #point}), the outward normal, its area and its part.
 */
public final class Patches extends Parted {

  private static final Bounds NONE = new Bounds(Vec3.ZERO, Vec3.ZERO);

  private final double[] normal;
  private final double[] area;
  private final Bounds bounds;

  Patches(double[] centre, double[] normal, double[] area, int[] part, List<String> parts) {
    super(centre, part, parts);
    this.normal = normal;
    this.area = area;
    this.bounds = area.length == 0 ? NONE : around(centre);
  }

  /**
   * The patches of a mesh. Each part gets its share, at least one, so the number comes out near
   * {@code wanted} and never below the number of parts that have area.
   *
   * @param mesh the surface
   * @param wanted how many, at least 1
   */
  public static Patches of(Mesh mesh, int wanted) {
    if (wanted < 1) {
      throw new IllegalArgumentException("at least one patch must be wanted, got " + wanted);
    }
    return new PatchCutter(mesh, wanted).patches();
  }

  /** Some of these patches, in the order of {@code numbers}; the parts keep their numbers. */
  public Patches only(int[] numbers) {
    double[] someCentre = new double[3 * numbers.length];
    double[] someNormal = new double[3 * numbers.length];
    double[] someArea = new double[numbers.length];
    int[] somePart = new int[numbers.length];
    for (int i = 0; i < numbers.length; i++) {
      System.arraycopy(coordinates(), 3 * numbers[i], someCentre, 3 * i, 3);
      System.arraycopy(normal, 3 * numbers[i], someNormal, 3 * i, 3);
      someArea[i] = area[numbers[i]];
      somePart[i] = part(numbers[i]);
    }
    return new Patches(someCentre, someNormal, someArea, somePart, parts());
  }

  /** How many there are. */
  public int count() {
    return area.length;
  }

  /** x of the outward normal of length 1. */
  public double normalX(int patch) {
    return normal[3 * patch];
  }

  /** y of the outward normal of length 1. */
  public double normalY(int patch) {
    return normal[3 * patch + 1];
  }

  /** z of the outward normal of length 1. */
  public double normalZ(int patch) {
    return normal[3 * patch + 2];
  }

  /** The outward normal, of length 1. */
  public Vec3 normal(int patch) {
    return new Vec3(normalX(patch), normalY(patch), normalZ(patch));
  }

  /** Area, square metres. */
  public double area(int patch) {
    return area[patch];
  }

  /** Area of all, square metres: that of the mesh. */
  public double area() {
    double sum = 0;
    for (double one : area) {
      sum += one;
    }
    return sum;
  }

  /**
   * The block that holds all their points.
   *
   * @throws IllegalStateException if there are none
   */
  public Bounds bounds() {
    if (count() == 0) {
      throw new IllegalStateException("no patches have no bounds");
    }
    return bounds;
  }

  private static Bounds around(double[] xyz) {
    double[] low = {xyz[0], xyz[1], xyz[2]};
    double[] high = low.clone();
    for (int i = 0; i < xyz.length; i++) {
      low[i % 3] = Math.min(low[i % 3], xyz[i]);
      high[i % 3] = Math.max(high[i % 3], xyz[i]);
    }
    return new Bounds(new Vec3(low[0], low[1], low[2]), new Vec3(high[0], high[1], high[2]));
  }

  /**
   * How unequal the areas are: the factor by which {@code share} of the patches stay within the
   * mean area, times or divided.
   *
   * @param share from 0 to 1
   */
  public double spread(double share) {
    double mean = area() / count();
    double[] factors = new double[count()];
    for (int i = 0; i < factors.length; i++) {
      factors[i] = Math.max(area[i] / mean, mean / area[i]);
    }
    Arrays.sort(factors);
    return factors[Math.min(factors.length - 1, (int) (share * factors.length))];
  }
}
