package ringbook.geometry;

import ringbook.units.Length;
import ringbook.units.Num;

/**
 * An upright cylinder.
 *
 * @param diameter across
 * @param height from foot to top
 */
public record Cylinder(Length diameter, Length height) implements Solid {

  public Cylinder {
    Sizes.positive("diameter of a cylinder", diameter);
    Sizes.positive("height of a cylinder", height);
  }

  private double radius() {
    return diameter.metres() / 2;
  }

  @Override
  public double area() {
    return 2 * Math.PI * radius() * (radius() + height.metres());
  }

  @Override
  public double volume() {
    return Math.PI * radius() * radius() * height.metres();
  }

  @Override
  public boolean contains(Vec3 p) {
    return p.z() > 0 && p.z() < height.metres() && Num.hypot(p.x(), p.y()) < radius();
  }

  @Override
  public Bounds bounds() {
    return Sizes.round(radius(), height.metres());
  }

  @Override
  public Mesh mesh(Length edge) {
    return new Turning(edge, 0, 0)
        .line(radius(), 0, "base")
        .line(radius(), height.metres(), "side")
        .line(0, height.metres(), "top")
        .mesh();
  }
}
