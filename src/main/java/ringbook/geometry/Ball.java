package ringbook.geometry;

import ringbook.units.Length;
import ringbook.units.Num;

/**
 * A sphere that touches z = 0.
 *
 * @param diameter across
 */
public record Ball(Length diameter) implements Solid {

  public Ball {
    Sizes.positive("diameter of a ball", diameter);
  }

  private double radius() {
    return diameter.metres() / 2;
  }

  @Override
  public double area() {
    return 4 * Math.PI * radius() * radius();
  }

  @Override
  public double volume() {
    return 4 * Math.PI * radius() * radius() * radius() / 3;
  }

  @Override
  public boolean contains(Vec3 p) {
    return p.minus(new Vec3(0, 0, radius())).norm() < radius();
  }

  @Override
  public Bounds bounds() {
    return Sizes.round(radius(), 2 * radius());
  }

  @Override
  public Mesh mesh(Length edge) {
    Turning turning = new Turning(edge, 0, 0);
    int quarter = Math.max(4, turning.steps(Math.PI * radius() / 2));
    for (int i = 1; i < 2 * quarter; i++) {
      double angle = Math.PI * (i - quarter) / (2 * quarter);
      turning.to(
          radius() * Num.cos(angle),
          radius() + radius() * Num.sin(angle),
          i <= quarter ? "lower half" : "upper half");
    }
    return turning.to(0, 2 * radius(), "upper half").mesh();
  }
}
