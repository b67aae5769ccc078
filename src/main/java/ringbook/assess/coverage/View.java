package ringbook.assess.coverage;

import ringbook.geometry.Vec3;

/**
 * What one station sees, patch by patch. Worked out once by {@link Seeing}, then put together with
 * others by {@link Tally}.
 */
public final class View {

  private final Viewpoint viewpoint;
  private final Vec3 position;
  private final Look[] looks;
  private final boolean[] inSight;
  private final int[] wells;
  private final double[] rays;
  private final double[] sampling;
  private final double[] sigma;
  private final double area;

  View(Viewpoint viewpoint, Vec3 position, Look[] looks, boolean[] inSight, Wells found) {
    this.viewpoint = viewpoint;
    this.position = position;
    this.looks = looks;
    this.inSight = inSight;
    wells = found.patches();
    rays = found.rays();
    sampling = found.sampling();
    sigma = found.sigma();
    area = found.area();
  }

  private View(View from, Viewpoint viewpoint) {
    this.viewpoint = viewpoint;
    position = from.position;
    looks = from.looks;
    inSight = from.inSight;
    wells = from.wells;
    rays = from.rays;
    sampling = from.sampling;
    sigma = from.sigma;
    area = from.area;
  }

  /** The same view from a station with another number. */
  public View numbered(int number) {
    Viewpoint again = new Viewpoint(viewpoint.station().numbered(number), viewpoint.setup());
    return new View(this, again);
  }

  /** Which patches that face the lens nothing of the object hides; not to be changed. */
  boolean[] inSight() {
    return inSight;
  }

  /** Where from. */
  public Viewpoint viewpoint() {
    return viewpoint;
  }

  /** The lens in the frame of the standing object, in metres. */
  public Vec3 position() {
    return position;
  }

  /** How patch {@code i} looks from here. */
  public Look look(int i) {
    return looks[i];
  }

  /** The numbers of the patches seen well, rising. */
  public int[] wells() {
    return wells.clone();
  }

  /** How many patches are seen well. */
  public int count() {
    return wells.length;
  }

  /** Square metres seen well. */
  public double area() {
    return area;
  }

  /** The patch at a place in {@link #wells}. */
  int patch(int slot) {
    return wells[slot];
  }

  /** Component {@code axis} of the direction, of length 1, from that patch to the lens. */
  double ray(int slot, int axis) {
    return rays[3 * slot + axis];
  }

  /** Metres of that patch's surface, along its slope, on one pixel. */
  double sampling(int slot) {
    return sampling[slot];
  }

  /** Metres across the ray that one picture coordinate is uncertain by. */
  double sigma(int slot) {
    return sigma[slot];
  }
}
