package ringbook.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts from the surface of one solid of a shape what is not surface of the shape. A point is kept
 * if just behind it there is material and just before it there is none, and no earlier solid has
 * its surface there.
 */
final class Trim {

  /** How far before and behind the surface is asked, as a part of the shape's diagonal. */
  private static final double HAIR = 1e-6;

  /** Triangles near another solid are cut down to this part of its smallest side. */
  private static final double FINE = 0.15;

  private static final int BISECTIONS = 40;

  private final List<Placed> solids;
  private final int own;
  private final double hair;
  private final List<Probe> probes = new ArrayList<>();
  private final List<Double> fine = new ArrayList<>();
  private MeshDraft draft;

  Trim(Shape shape, int own) {
    this.solids = shape.solids();
    this.own = own;
    this.hair = HAIR * shape.bounds().diagonal();
    for (Placed placed : solids) {
      probes.add(new Probe(placed, hair));
      Vec3 size = placed.solid().bounds().size();
      fine.add(FINE * Math.min(size.x(), Math.min(size.y(), size.z())));
    }
  }

  Mesh of(Mesh mesh) {
    draft = new MeshDraft();
    for (int t = 0; t < mesh.triangles(); t++) {
      Vec3 normal = mesh.doubleNormal(t);
      if (normal.norm() > 0) {
        Vec3[] corners = new Vec3[3];
        for (int k = 0; k < 3; k++) {
          corners[k] = mesh.point(mesh.corner(t, k));
        }
        piece(corners, normal.unit().times(hair), draft.part(mesh.parts().get(mesh.part(t))));
      }
    }
    return Welding.welded(draft.mesh());
  }

  private void piece(Vec3[] p, Vec3 step, int part) {
    double limit = limit(p);
    if (limit == Double.POSITIVE_INFINITY) {
      if (keeps(p[0].plus(p[1]).plus(p[2]).times(1.0 / 3), step)) {
        add(p[0], p[1], p[2], part);
      }
      return;
    }
    int longest = longest(p);
    Vec3 a = p[longest];
    Vec3 b = p[(longest + 1) % 3];
    Vec3 c = p[(longest + 2) % 3];
    if (a.minus(b).norm() > limit) {
      Vec3 middle = a.plus(b).times(0.5);
      piece(new Vec3[] {a, middle, c}, step, part);
      piece(new Vec3[] {middle, b, c}, step, part);
    } else {
      clipped(p, step, part);
    }
  }

  /** The longest edge a triangle may have where it lies; endless if nothing else is near. */
  private double limit(Vec3[] p) {
    double limit = Double.POSITIVE_INFINITY;
    Bounds box = box(p);
    for (int i = 0; i < solids.size(); i++) {
      if (i != own && probes.get(i).meets(box)) {
        limit = Math.min(limit, fine.get(i));
      }
    }
    return limit;
  }

  private static Bounds box(Vec3[] p) {
    return new Bounds(p[0], p[0]).with(new Bounds(p[1], p[1])).with(new Bounds(p[2], p[2]));
  }

  private static int longest(Vec3[] p) {
    int longest = 0;
    double most = -1;
    for (int k = 0; k < 3; k++) {
      double length = p[k].minus(p[(k + 1) % 3]).norm();
      if (length > most) {
        most = length;
        longest = k;
      }
    }
    return longest;
  }

  private void clipped(Vec3[] p, Vec3 step, int part) {
    Vec3 middle = p[0].plus(p[1]).plus(p[2]).times(1.0 / 3);
    boolean[] kept = new boolean[3];
    int count = 0;
    for (int k = 0; k < 3; k++) {
      // A hair inwards, so that an edge two faces share is judged on this triangle's own side.
      kept[k] = keeps(p[k].plus(middle.minus(p[k]).times(1e-4)), step);
      count += kept[k] ? 1 : 0;
    }
    if (count == 3) {
      add(p[0], p[1], p[2], part);
    } else if (count == 1) {
      int k = kept[0] ? 0 : kept[1] ? 1 : 2;
      Vec3 a = p[k];
      add(a, border(a, p[(k + 1) % 3], step), border(a, p[(k + 2) % 3], step), part);
    } else if (count == 2) {
      int k = !kept[0] ? 0 : !kept[1] ? 1 : 2;
      Vec3 b = p[(k + 1) % 3];
      Vec3 c = p[(k + 2) % 3];
      Vec3 nearB = border(b, p[k], step);
      add(b, c, nearB, part);
      add(c, border(c, p[k], step), nearB, part);
    }
  }

  private Vec3 border(Vec3 kept, Vec3 lost, Vec3 step) {
    Vec3 in = kept;
    Vec3 out = lost;
    for (int i = 0; i < BISECTIONS; i++) {
      Vec3 middle = in.plus(out).times(0.5);
      if (keeps(middle, step)) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  private void add(Vec3 a, Vec3 b, Vec3 c, int part) {
    if (b.minus(a).cross(c.minus(a)).norm() > 0) {
      draft.triangle(draft.point(a), draft.point(b), draft.point(c), part);
    }
  }

  /** Whether the surface of this solid is surface of the shape at {@code p}. */
  private boolean keeps(Vec3 p, Vec3 step) {
    Vec3 before = p.plus(step);
    Vec3 behind = p.minus(step);
    boolean cut = solids.get(own).isCut();
    boolean material = !cut;
    for (int i = 0; i < solids.size(); i++) {
      if (i == own) {
        continue;
      }
      Probe other = probes.get(i);
      boolean otherCut = solids.get(i).isCut();
      boolean otherBehind = other.contains(behind);
      boolean otherBefore = other.contains(before);
      if (i < own && otherBehind != otherBefore && otherCut == cut) {
        return false; // the earlier solid has its surface here
      }
      if (otherCut ? otherBehind : otherBefore && !cut && !cutAway(before)) {
        return false;
      }
      material |= otherBehind && !otherCut;
    }
    return material;
  }

  private boolean cutAway(Vec3 p) {
    for (int i = 0; i < solids.size(); i++) {
      if (solids.get(i).isCut() && probes.get(i).contains(p)) {
        return true;
      }
    }
    return false;
  }
}
