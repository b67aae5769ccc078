package ringbook.figures;

import ringbook.figures.Label.Anchor;
import ringbook.units.Lengths;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** A bar of a round length that shows the scale of a drawing. */
final class ScaleBar {

  private static final double LONGEST = 110;
  private static final double SMALLEST_METRES = 1e-4;

  private static final double[] INCHES = {1, 2, 3, 6, 12, 24, 60, 120, 240, 600, 1200};

  private ScaleBar() {}

  /** Draws the bar with its left end at {@code at}. */
  static void draw(
      SvgWriter svg, Lengths lengths, LabelPlacer placer, Point at, double unitsPerMetre) {
    double most = LONGEST / unitsPerMetre;
    double inches = lengths == Lengths.IMPERIAL ? inches(Unit.INCH.fromSi(most)) : 0;
    double metres = inches > 0 ? Unit.INCH.toSi(inches) : length(most);
    Point end = at.plus(metres * unitsPerMetre, 0);
    svg.line(at, end, Stroke.solid(Ink.INK, 2.5));
    svg.line(at.plus(0, -4), at.plus(0, 4), Stroke.THIN);
    svg.line(end.plus(0, -4), end.plus(0, 4), Stroke.THIN);
    placer.keepOff(at, end);
    svg.text(
        placer.fixed(
            Label.small(inches > 0 ? feet(inches) : text(metres), at.plus(0, -8), Anchor.START)));
  }

  /** The largest of 1, 2, 5, 10, ... in metres that is not above {@code most}. */
  static double length(double most) {
    double power = SMALLEST_METRES;
    while (power * 10 <= most) {
      power *= 10;
    }
    return power * (most >= 5 * power ? 5 : most >= 2 * power ? 2 : 1);
  }

  /** The longest bar that is usual in inches and feet; 0 where all are above {@code most}. */
  private static double inches(double most) {
    double longest = 0;
    for (double one : INCHES) {
      longest = one <= most ? one : longest;
    }
    return longest;
  }

  private static String feet(double inches) {
    return inches < 12
        ? Numbers.fixed(inches, 0) + "\u00a0" + Unit.INCH.symbol()
        : Numbers.fixed(inches / 12, 0) + "\u00a0" + Unit.FOOT.symbol();
  }

  private static String text(double metres) {
    Unit unit = metres >= 1 ? Unit.METRE : metres >= 0.0099 ? Unit.CENTIMETRE : Unit.MILLIMETRE;
    return Numbers.significant(unit.fromSi(metres), 2) + "\u00a0" + unit.symbol();
  }
}
