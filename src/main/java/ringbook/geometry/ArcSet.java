package ringbook.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ringbook.units.Angle;
import ringbook.units.Num;

/** Parts of a full turn, such as the directions in which something stands in the way. */
public final class ArcSet {

  private static final double FULL = 2 * Math.PI;

  /** Radians by which two arcs that meet on paper may miss each other in binary. */
  private static final double HAIR = 1e-12;

  /** An arc that neither wraps nor overlaps: 0 ≤ from ≤ to ≤ 2π. */
  private record Arc(double from, double to) {}

  private final List<Arc> arcs;

  private ArcSet(List<Arc> arcs) {
    this.arcs = List.copyOf(arcs);
  }

  /** Nothing. */
  public static final ArcSet NONE = new ArcSet(List.of());

  /** The whole turn. */
  public static final ArcSet ALL = new ArcSet(List.of(new Arc(0, FULL)));

  /** This and the arc of {@code width} that starts at {@code from} and runs from +x towards +y. */
  public ArcSet with(Angle from, Angle width) {
    if (width.radians() >= FULL) {
      return ALL;
    }
    double start = folded(from.radians());
    double end = start + width.radians();
    List<Arc> all = new ArrayList<>(arcs);
    all.add(new Arc(start, Math.min(end, FULL)));
    if (end > FULL) {
      all.add(new Arc(0, end - FULL));
    }
    return new ArcSet(merged(all));
  }

  /** How much of the turn it takes up. */
  public Angle total() {
    double sum = 0;
    for (Arc arc : arcs) {
      sum += arc.to() - arc.from();
    }
    return new Angle(sum);
  }

  /**
   * An arc.
   *
   * @param from where it begins
   * @param width how far it runs from there, from +x towards +y
   */
  public record Span(Angle from, Angle width) {}

  /**
   * What it leaves of the turn, each part in one piece; where that is all, from the door side
   * (−90°) round.
   */
  public List<Span> rest() {
    List<Span> rest = new ArrayList<>();
    if (arcs.isEmpty()) {
      return List.of(new Span(Angle.ofDegrees(-90), Angle.FULL_TURN));
    }
    for (int i = 0; i < arcs.size(); i++) {
      boolean last = i + 1 == arcs.size();
      double next = last ? arcs.get(0).from() + FULL : arcs.get(i + 1).from();
      double width = next - arcs.get(i).to();
      if (width > HAIR) {
        rest.add(new Span(new Angle(arcs.get(i).to()), new Angle(width)));
      }
    }
    return List.copyOf(rest);
  }

  /** Its widest part in one piece. */
  public Angle widest() {
    double widest = 0;
    for (Arc arc : arcs) {
      widest = Math.max(widest, arc.to() - arc.from());
    }
    if (arcs.size() > 1 && arcs.get(0).from() == 0 && arcs.get(arcs.size() - 1).to() == FULL) {
      Arc last = arcs.get(arcs.size() - 1);
      widest = Math.max(widest, arcs.get(0).to() + last.to() - last.from());
    }
    return new Angle(widest);
  }

  /** Whether the direction lies in it; its ends do. */
  public boolean holds(Angle direction) {
    double at = folded(direction.radians());
    return arcs.stream().anyMatch(arc -> arc.from() <= at && at <= arc.to());
  }

  private static double folded(double radians) {
    double folded = radians - FULL * Math.floor(radians / FULL);
    return folded >= FULL ? 0 : folded;
  }

  private static List<Arc> merged(List<Arc> arcs) {
    List<Arc> sorted = new ArrayList<>(arcs);
    sorted.sort(Comparator.comparingDouble(Arc::from));
    List<Arc> merged = new ArrayList<>();
    for (Arc arc : sorted) {
      Arc last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && arc.from() <= last.to() + HAIR) {
        merged.set(merged.size() - 1, new Arc(last.from(), Math.max(last.to(), arc.to())));
      } else {
        merged.add(arc);
      }
    }
    return merged;
  }

  /** Direction of a plan point as seen from the origin. */
  static Angle towards(double x, double y) {
    return new Angle(Num.atan2(y, x));
  }
}
