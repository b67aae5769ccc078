package ringbook.geometry;

import ringbook.units.Length;
import ringbook.units.Num;

/**
 * An upright cylinder with a hole all the way through along its axis.
 *
 * @param outer diameter outside
 * @param inner diameter of the hole
 * @param height from foot to top
 */
public record Tube(Length outer, Length inner, Length height) implements Solid {

  public Tube {
    Sizes.positive("hole of a tube", inner);
    Sizes.positive("height of a tube", height);
    Sizes.smaller("the hole of a tube", inner, "the tube", outer);
  }

  private double large() {
    return outer.metres() / 2;
  }

  private double small() {
    return inner.metres() / 2;
  }

  @Override
  public double area() {
    return 2 * Math.PI * (large() + small()) * (height.metres() + large() - small());
  }

  @Override
  public double volume() {
    return Math.PI * (large() - small()) * (large() + small()) * height.metres();
  }

  @Override
  public boolean contains(Vec3 p) {
    double radius = Num.hypot(p.x(), p.y());
    return p.z() > 0 && p.z() < height.metres() && radius > small() && radius < large();
  }

  @Override
  public Bounds bounds() {
    return Sizes.round(large(), height.metres());
  }

  @Override
  public Mesh mesh(Length edge) {
    return new Turning(edge, small(), 0)
        .line(large(), 0, "base")
        .line(large(), height.metres(), "side")
        .line(small(), height.metres(), "top")
        .line(small(), 0, "hole")
        .mesh();
  }
}
