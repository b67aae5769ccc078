package ringbook.geometry;

import ringbook.units.Length;
import ringbook.units.Num;

/**
 * A ring of round section that lies flat.
 *
 * @param ring diameter of the circle the middle of the section runs along
 * @param section diameter of the section, smaller than {@code ring}
 */
public record Torus(Length ring, Length section) implements Solid {

  public Torus {
    Sizes.positive("section of a torus", section);
    Sizes.smaller("the section of a torus", section, "its ring", ring);
  }

  private double large() {
    return ring.metres() / 2;
  }

  private double small() {
    return section.metres() / 2;
  }

  @Override
  public double area() {
    return 4 * Math.PI * Math.PI * large() * small();
  }

  @Override
  public double volume() {
    return 2 * Math.PI * Math.PI * large() * small() * small();
  }

  @Override
  public boolean contains(Vec3 p) {
    return Num.hypot(Num.hypot(p.x(), p.y()) - large(), p.z() - small()) < small();
  }

  @Override
  public Bounds bounds() {
    return Sizes.round(large() + small(), 2 * small());
  }

  /** Parts: "outside" looks away from the axis, "hole" towards it. */
  @Override
  public Mesh mesh(Length edge) {
    Turning turning = new Turning(edge, large(), 0);
    int quarter = Math.max(4, turning.steps(Math.PI * small() / 2));
    for (int i = 1; i < 4 * quarter; i++) {
      double angle = Math.PI * (i - quarter) / (2 * quarter);
      turning.to(
          large() + small() * Num.cos(angle),
          small() + small() * Num.sin(angle),
          i <= 2 * quarter ? "outside" : "hole");
    }
    return turning.to(large(), 0, "hole").mesh();
  }
}
