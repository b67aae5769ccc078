package ringbook.assess.coverage;

import java.util.Arrays;

/** Gathers what a station sees well; one entry a patch, in the order of the patches. */
final class Wells {

  private int count;
  private int[] patches;
  private double[] rays;
  private double[] sampling;
  private double[] sigma;
  private double area;

  /** Room for so many at first. */
  Wells(int room) {
    patches = new int[room];
    rays = new double[3 * room];
    sampling = new double[room];
    sigma = new double[room];
  }

  void add(int patch, double x, double y, double z) {
    if (count == patches.length) {
      grow();
    }
    patches[count] = patch;
    rays[3 * count] = x;
    rays[3 * count + 1] = y;
    rays[3 * count + 2] = z;
    count++;
  }

  /** Says how large and how finely shown the patch added last is; lengths in metres. */
  void size(double patchArea, double onSlope, double spot) {
    area += patchArea;
    sampling[count - 1] = onSlope;
    sigma[count - 1] = spot;
  }

  private void grow() {
    int room = 2 * patches.length + 16;
    patches = Arrays.copyOf(patches, room);
    rays = Arrays.copyOf(rays, 3 * room);
    sampling = Arrays.copyOf(sampling, room);
    sigma = Arrays.copyOf(sigma, room);
  }

  int[] patches() {
    return Arrays.copyOf(patches, count);
  }

  double[] rays() {
    return Arrays.copyOf(rays, 3 * count);
  }

  double[] sampling() {
    return Arrays.copyOf(sampling, count);
  }

  double[] sigma() {
    return Arrays.copyOf(sigma, count);
  }

  double area() {
    return area;
  }
}
