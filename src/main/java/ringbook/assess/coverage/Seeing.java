package ringbook.assess.coverage;

import ringbook.geometry.Vec3;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Scene;
import ringbook.units.FNumber;
import ringbook.units.Length;

/**
 * Looks at the object from single stations. Patches are tried at their middles, as points; the
 * finer the patches, the nearer is every share of the surface to the true one, and what stands on
 * an edge evens out.
 *
 * <p>A patch is seen well if, in this order: it is turned to the lens, inside the picture, not
 * behind another part of the object, not behind table, wall or furniture ({@link Room}), no more
 * slanted than the aim's limit, and within the sharp depths at the f-number and focus. How finely
 * it is shown does not decide whether it is seen; {@link Coverage} asks for it at the best view.
 */
public final class Seeing {

  private final Scene scene;
  private final Surface surface;
  private final FNumber fNumber;
  private final Limits limits;
  private final Room room;
  private final Vec3 middle;
  private final double reach;

  /**
   * Before one object in one room.
   *
   * @param surface standing on its table in the frame of the room
   * @param fNumber the f-number set on the lens
   */
  public Seeing(Scene scene, Surface surface, FNumber fNumber) {
    this.scene = scene;
    this.surface = surface;
    this.fNumber = fNumber;
    limits = Limits.of(scene);
    room = Room.of(scene.place());
    double half = scene.subject().height().metres() / 2;
    middle = new Vec3(0, 0, scene.place().tableHeight().metres() + half);
    reach = surface.reach();
  }

  /** What a viewpoint sees of the whole surface. */
  public View look(Viewpoint viewpoint) {
    return new Glance(this, viewpoint).view();
  }

  /** What is seen from where a view was taken, focused elsewhere; much quicker than a new look. */
  public View focused(View from, Length focus) {
    Setup old = from.viewpoint().setup();
    Setup setup = new Setup(old.pose(), old.hold(), focus, old.repeats());
    return new Glance(this, new Viewpoint(from.viewpoint().station(), setup)).view(from.inSight());
  }

  /**
   * What a view by the same eyes before the whole object shows of these patches; much quicker than
   * a new look.
   *
   * @param patches that {@link #only} was asked for
   */
  public View part(View whole, int[] patches) {
    boolean[] inSight = new boolean[patches.length];
    for (int i = 0; i < patches.length; i++) {
      inSight[i] = whole.inSight()[patches[i]];
    }
    return new Glance(this, whole.viewpoint()).view(inSight);
  }

  /** The same eyes before some of the patches only; quicker by as much as they are fewer. */
  public Seeing only(int[] patches) {
    return new Seeing(scene, surface.only(patches), fNumber);
  }

  /** The same with another f-number set. */
  public Seeing with(FNumber other) {
    return new Seeing(scene, surface, other);
  }

  /** The scene. */
  public Scene scene() {
    return scene;
  }

  /** The surface that is looked at. */
  public Surface surface() {
    return surface;
  }

  /** What counts as well. */
  public Limits limits() {
    return limits;
  }

  /** The f-number set on the lens. */
  public FNumber fNumber() {
    return fNumber;
  }

  /** The middle of the object, in metres; it stays where it is in every pose. */
  public Vec3 middle() {
    return middle;
  }

  /** What stands about. */
  public Room room() {
    return room;
  }

  double reach() {
    return reach;
  }
}
