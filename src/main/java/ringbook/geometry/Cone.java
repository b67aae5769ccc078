package ringbook.geometry;

import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Require;

/**
 * An upright cone, or the part of one below a level cut.
 *
 * @param base diameter at the foot, may be 0 for a cone on its tip
 * @param top diameter at the top, 0 for a cone with a tip
 * @param height from foot to top
 */
public record Cone(Length base, Length top, Length height) implements Solid {

  public Cone {
    Require.notNegative("lower diameter of a cone", "m", base.metres());
    Require.notNegative("upper diameter of a cone", "m", top.metres());
    Sizes.positive("height of a cone", height);
    Sizes.positive("larger diameter of a cone", base.compareTo(top) > 0 ? base : top);
  }

  private double low() {
    return base.metres() / 2;
  }

  private double high() {
    return top.metres() / 2;
  }

  @Override
  public double area() {
    double slope = Num.hypot(low() - high(), height.metres());
    return Math.PI * (low() + high()) * slope + Math.PI * low() * low() + Math.PI * high() * high();
  }

  @Override
  public double volume() {
    return Math.PI * height.metres() * (low() * low() + low() * high() + high() * high()) / 3;
  }

  @Override
  public boolean contains(Vec3 p) {
    double t = p.z() / height.metres();
    return t > 0 && t < 1 && Num.hypot(p.x(), p.y()) < low() + t * (high() - low());
  }

  @Override
  public Bounds bounds() {
    return Sizes.round(Math.max(low(), high()), height.metres());
  }

  @Override
  public Mesh mesh(Length edge) {
    Turning turning = new Turning(edge, 0, 0);
    if (low() > 0) {
      turning.line(low(), 0, "base");
    }
    turning.line(high(), height.metres(), "side");
    if (high() > 0) {
      turning.line(0, height.metres(), "top");
    }
    return turning.mesh();
  }
}
