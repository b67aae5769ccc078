package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.Standing;
import ringbook.geometry.ArcSet;
import ringbook.ledger.Reckoning;
import ringbook.plans.WrittenPlan;
import ringbook.shots.Ring;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Numbers;

/**
 * The plans that the ledger's numbers give for any object in any room, as a person would write
 * them: its rings, without the arc in which somebody cannot stand; then the same with rings closer
 * to each other and higher. They know nothing of the object's form.
 */
final class LedgerPlans {

  /**
   * How much higher the highest ring of the richer plans is, in degrees; and the highest of all.
   */
  private static final double HIGHER = 12;

  private static final double HIGHEST = 75;

  /** Most degrees from ring to ring in the richer plans. */
  private static final double CLOSER = 11;

  /** Most rings above the first one of a pose: a written plan ends after two dozen runs. */
  private static final int MOST_STEPS = 11;

  private final Reckoning r;

  private LedgerPlans(Reckoning reckoning) {
    r = reckoning;
  }

  /** The plans, the plainest first. The scene must have rings. */
  static List<WrittenPlan> of(Reckoning reckoning) {
    LedgerPlans plans = new LedgerPlans(reckoning);
    double high = reckoning.angle("rings.highest").degrees();
    double step = reckoning.angle("aim.ringSpacing").degrees();
    double higher = Math.max(high, Math.min(HIGHEST, high + HIGHER));
    List<WrittenPlan> written = new ArrayList<>();
    written.add(plans.written(high, step));
    written.add(plans.written(higher, Math.min(step, CLOSER)));
    return written;
  }

  private WrittenPlan written(double high, double step) {
    double low = r.angle("rings.lowest").degrees();
    StringBuilder text = new StringBuilder("low ring: " + run(low).replace("@", ""));
    rings(text, "; rings: ", low, high, step, false);
    if (r.si("aim.poses") > 1) {
      rings(text, "; turned over: ", Math.min(Math.abs(low), high), high, step, true);
    }
    return WrittenPlan.read(text.toString()).plan().orElseThrow();
  }

  /** Rings evenly from one elevation to another; the first one only if it is wanted. */
  private void rings(
      StringBuilder text, String before, double from, double to, double step, boolean first) {
    int needed = (int) Math.max(0, Math.ceil((to - from) / step - 1e-9));
    int steps = Math.min(MOST_STEPS, needed);
    String mark = before;
    for (int i = first ? 0 : 1; i <= steps; i++) {
      double at = steps == 0 ? from : from + (to - from) * i / steps;
      text.append(mark).append(run(at).replace("@", " at " + degrees(rounded(at, from, to))));
      mark = ", ";
    }
  }

  /** To a tenth of a degree, but not beyond the ends: there begins what is out of reach. */
  private static double rounded(double at, double from, double to) {
    double tenths = Num.round(10 * at);
    double in = tenths < 10 * from ? tenths + 1 : tenths > 10 * to ? tenths - 1 : tenths;
    return in < 10 * from || in > 10 * to ? at : in / 10;
  }

  private String run(double elevation) {
    Angle angle = Angle.ofDegrees(elevation);
    double fewest = Ring.photosForRays(r.scene().aim().stepLimit(), angle);
    double photos = Math.max(r.si("ring.photos"), fewest);
    return Numbers.fixed(photos, 0) + "@" + without(angle);
  }

  /** The arc that is left out: all but the widest part in which somebody can stand. */
  private String without(Angle elevation) {
    double out = r.si("ring.radius") * Num.cos(elevation.radians()) + r.si("place.bodyRoom");
    ArcSet blocked = Standing.blocked(r.scene().place(), new Length(out));
    ArcSet.Span widest = null;
    for (ArcSet.Span free : blocked.rest()) {
      if (widest == null || free.width().radians() > widest.width().radians()) {
        widest = free;
      }
    }
    if (widest == null || widest.width().degrees() > 359.9) {
      return "";
    }
    double from = Math.floor(widest.from().degrees() + widest.width().degrees());
    double to = Math.ceil(widest.from().degrees());
    return " without " + degrees(folded(from)) + " to " + degrees(folded(to));
  }

  private static double folded(double degrees) {
    double turns = degrees / 360 + 0.5;
    return 360 * (turns - Math.floor(turns)) - 180;
  }

  private static String degrees(double value) {
    return Numbers.trimmed(Numbers.fixed(value, 4)) + "°";
  }
}
