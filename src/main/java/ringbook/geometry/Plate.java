package ringbook.geometry;

import java.util.ArrayList;
import java.util.List;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * A flat slab that lies on z = 0, with holes all the way through and blind pockets from above.
 * Holes and pockets must not meet each other or the edge.
 *
 * @param width along x
 * @param depth along y
 * @param thickness along z
 * @param holes through the slab
 * @param pockets blind holes, with a flat bottom across their axis
 */
public record Plate(
    Length width, Length depth, Length thickness, List<Hole> holes, List<Pocket> pockets)
    implements Solid {

  /**
   * A round hole all the way through.
   *
   * @param x of its axis
   * @param y of its axis
   * @param diameter across
   */
  public record Hole(Length x, Length y, Length diameter) {
    public Hole {
      Sizes.positive("diameter of a hole", diameter);
    }
  }

  /**
   * A round blind hole.
   *
   * @param x where its axis meets the upper face
   * @param y where its axis meets the upper face
   * @param diameter across its axis
   * @param depth along its axis
   * @param tilt how far its axis leans away from the vertical, below 80°
   * @param azimuth the direction the axis leans to on its way out, from +x towards +y
   */
  public record Pocket(
      Length x, Length y, Length diameter, Length depth, Angle tilt, Angle azimuth) {
    public Pocket {
      Sizes.positive("diameter of a pocket", diameter);
      Sizes.positive("depth of a pocket", depth);
      if (!(tilt.degrees() >= 0 && tilt.degrees() < 80)) {
        throw new IllegalArgumentException("the tilt of a pocket must lie from 0° to below 80°");
      }
      if (!(depth.metres() > diameter.metres() / 2 * tan(tilt))) {
        throw new IllegalArgumentException(
            "the pocket leans so far that its bottom would cut the upper face");
      }
    }
  }

  public Plate {
    holes = List.copyOf(holes);
    pockets = List.copyOf(pockets);
    Sizes.positive("width of a plate", width);
    Sizes.positive("depth of a plate", depth);
    Sizes.positive("thickness of a plate", thickness);
  }

  private static double tan(Angle angle) {
    return Num.sin(angle.radians()) / Num.cos(angle.radians());
  }

  private Box slab() {
    return new Box(width, depth, thickness);
  }

  /** The slab less openings, plus walls and bottoms. */
  @Override
  public double area() {
    double area = slab().area();
    for (Hole hole : holes) {
      double r = hole.diameter().metres() / 2;
      area += 2 * Math.PI * r * (thickness.metres() - r);
    }
    for (Pocket pocket : pockets) {
      double r = pocket.diameter().metres() / 2;
      double opening = Math.PI * r * r / Num.cos(pocket.tilt().radians());
      area += 2 * Math.PI * r * pocket.depth().metres() + Math.PI * r * r - opening;
    }
    return area;
  }

  @Override
  public double volume() {
    double volume = slab().volume();
    for (Hole hole : holes) {
      double r = hole.diameter().metres() / 2;
      volume -= Math.PI * r * r * thickness.metres();
    }
    for (Pocket pocket : pockets) {
      double r = pocket.diameter().metres() / 2;
      volume -= Math.PI * r * r * pocket.depth().metres();
    }
    return volume;
  }

  @Override
  public boolean contains(Vec3 p) {
    return shape().contains(p);
  }

  @Override
  public Bounds bounds() {
    return slab().bounds();
  }

  @Override
  public Mesh mesh(Length edge) {
    return shape().mesh(edge);
  }

  /** The slab with cylinders cut out of it. */
  private Shape shape() {
    List<Placed> all = new ArrayList<>();
    all.add(Placed.of("", slab(), Placement.NONE));
    double top = thickness.metres();
    int number = 0;
    for (Hole hole : holes) {
      number++;
      Vec3 foot = new Vec3(hole.x().metres(), hole.y().metres(), -top / 2);
      Cylinder drill = new Cylinder(hole.diameter(), thickness.times(2));
      all.add(Placed.cut("hole " + number, drill, Placement.upright(foot)));
    }
    number = 0;
    for (Pocket pocket : pockets) {
      number++;
      Placement lean = new Placement(Vec3.ZERO, pocket.tilt(), pocket.azimuth());
      Vec3 mouth = new Vec3(pocket.x().metres(), pocket.y().metres(), top);
      Vec3 foot = mouth.minus(lean.turned(Vec3.UP).times(pocket.depth().metres()));
      Length beyond = pocket.diameter().times(1 + tan(pocket.tilt()));
      Cylinder drill = new Cylinder(pocket.diameter(), pocket.depth().plus(beyond));
      all.add(
          Placed.cut(
              "pocket " + number, drill, new Placement(foot, pocket.tilt(), pocket.azimuth())));
    }
    return new Shape(all);
  }
}
