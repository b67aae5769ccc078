package ringbook.assess.coverage;

import java.util.List;
import ringbook.geometry.Patches;
import ringbook.geometry.Vec3;
import ringbook.optics.Kit;
import ringbook.optics.Sampling;
import ringbook.shots.Pose;
import ringbook.units.Length;
import ringbook.units.Num;

/** One look from one viewpoint. The order of its questions is that of {@link Look}. */
final class Glance {

  private final Seeing seeing;
  private final Viewpoint viewpoint;
  private final Camera camera;
  private final Patches patches;
  private final Vec3 lens;
  private final Vec3 lensInRoom;
  private final Pose pose;
  private final boolean underTable;
  private final List<Prism> near;
  private final double cosine;
  private final Kit kit;
  private final Wells wells;

  /** The way from the patch to the lens. */
  private double x;

  private double y;
  private double z;

  Glance(Seeing seeing, Viewpoint viewpoint) {
    this.seeing = seeing;
    this.viewpoint = viewpoint;
    kit = seeing.scene().kit();
    camera = Camera.of(viewpoint, seeing.middle(), kit, seeing.fNumber(), seeing.scene().aim());
    patches = seeing.surface().patches();
    lens = camera.position();
    lensInRoom = viewpoint.station().position();
    pose = viewpoint.setup().pose();
    underTable = seeing.room().isUnderTable(lensInRoom);
    near = seeing.room().near(lensInRoom, seeing.reach());
    cosine = Num.cos(seeing.limits().incidence().radians());
    wells = new Wells(patches.count() / 4 + 8);
  }

  View view() {
    boolean[] seen = new boolean[patches.count()];
    seeing.surface().sight().visible(lens, seen);
    return view(seen);
  }

  /**
   * The same where it is known already what of the object nothing of it hides.
   *
   * @param seen one a patch that faces the lens
   */
  View view(boolean[] seen) {
    Look[] looks = new Look[patches.count()];
    for (int i = 0; i < looks.length; i++) {
      looks[i] = look(i, seen[i]);
    }
    return new View(viewpoint, lens, looks, seen, wells);
  }

  private Look look(int i, boolean seen) {
    x = lens.x() - patches.x(i);
    y = lens.y() - patches.y(i);
    z = lens.z() - patches.z(i);
    double distance = Math.sqrt(x * x + y * y + z * z);
    double facing =
        (x * patches.normalX(i) + y * patches.normalY(i) + z * patches.normalZ(i)) / distance;
    if (!(facing > 0)) {
      return Look.AWAY;
    }
    double depth = -along(camera.view());
    if (!inFrame(depth)) {
      return Look.OUT_OF_FRAME;
    }
    if (!seen) {
      return Look.HIDDEN;
    }
    if (blocked(i)) {
      return Look.BLOCKED;
    }
    if (facing < cosine) {
      return Look.SLANTED;
    }
    if (!camera.isSharp(depth)) {
      return Look.SOFT;
    }
    wells.add(i, x / distance, y / distance, z / distance);
    size(i, depth, facing);
    return Look.WELL;
  }

  private void size(int i, double depth, double facing) {
    Length square =
        Sampling.onObject(kit.sensor().pixelPitch(), kit.lens().focalLength(), new Length(depth));
    wells.size(
        patches.area(i),
        Sampling.onSlope(square, facing).metres(),
        square.metres() * seeing.limits().pointing());
  }

  private double along(Vec3 direction) {
    return x * direction.x() + y * direction.y() + z * direction.z();
  }

  private boolean inFrame(double depth) {
    return depth > kit.lens().focalLength().metres()
        && Math.abs(along(camera.right())) <= camera.halfAcross() * depth
        && Math.abs(along(camera.up())) <= camera.halfUp() * depth;
  }

  private boolean blocked(int i) {
    if (underTable) {
      return true;
    }
    for (Prism prism : near) {
      if (prism.blocks(lensInRoom, pose.place(patches.point(i), seeing.middle()))) {
        return true;
      }
    }
    return false;
  }
}
