package ringbook.figures;

import ringbook.figures.Label.Anchor;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** A bar of a round length that shows the scale of a drawing. */
final class ScaleBar {

  private static final double LONGEST = 110;
  private static final double SMALLEST_METRES = 1e-4;

  private ScaleBar() {}

  /** Draws the bar with its left end at {@code at}. */
  static void draw(SvgWriter svg, LabelPlacer placer, Point at, double unitsPerMetre) {
    double metres = length(LONGEST / unitsPerMetre);
    Point end = at.plus(metres * unitsPerMetre, 0);
    svg.line(at, end, Stroke.solid(Ink.INK, 2.5));
    svg.line(at.plus(0, -4), at.plus(0, 4), Stroke.THIN);
    svg.line(end.plus(0, -4), end.plus(0, 4), Stroke.THIN);
    placer.keepOff(at, end);
    svg.text(placer.fixed(Label.small(text(metres), at.plus(0, -8), Anchor.START)));
  }

  /** The largest of 1, 2, 5, 10, ... in metres that is not above {@code most}. */
  static double length(double most) {
    double power = SMALLEST_METRES;
    while (power * 10 <= most) {
      power *= 10;
    }
    return power * (most >= 5 * power ? 5 : most >= 2 * power ? 2 : 1);
  }

  private static String text(double metres) {
    Unit unit = metres >= 1 ? Unit.METRE : metres >= 0.0099 ? Unit.CENTIMETRE : Unit.MILLIMETRE;
    return Numbers.significant(unit.fromSi(metres), 2) + "\u00a0" + unit.symbol();
  }
}
