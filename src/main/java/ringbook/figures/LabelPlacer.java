package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import ringbook.figures.Label.Anchor;

/**
 * Finds places where labels do not lie on each other or on what they label. Ask in order of
 * importance: who comes first has the choice.
 */
public final class LabelPlacer {

  private static final double STEP = 6;

  /** A circle counts as so many straight lines. */
  private static final int CHORDS = 36;

  private final Box paper;
  private final List<Box> taken = new ArrayList<>();

  /** A placer for labels that must stay on {@code paper}. */
  public LabelPlacer(Box paper) {
    this.paper = paper;
  }

  /** Keeps labels off a rectangle. */
  public void keepOff(Box box) {
    taken.add(box);
  }

  /** Keeps labels off a straight line. */
  public void keepOff(Point from, Point to) {
    int pieces = (int) Math.min(400, Math.ceil(from.distanceTo(to) / STEP)) + 1;
    for (int i = 0; i <= pieces; i++) {
      Point on = from.between(to, (double) i / pieces);
      taken.add(new Box(on.x(), on.y(), on.x(), on.y()).grown(STEP / 2));
    }
  }

  /** Keeps labels off the line of a circle. */
  public void keepOff(Point middle, double radius) {
    Point before = middle.towards(0, radius);
    for (int i = 1; i <= CHORDS; i++) {
      Point next = middle.towards(2 * Math.PI * i / CHORDS, radius);
      keepOff(before, next);
      before = next;
    }
  }

  /** The label where it is, taken note of. */
  public Label fixed(Label label) {
    taken.add(label.box());
    return label;
  }

  /**
   * The label at the first of some places where it is free; where none is, at the one least
   * covered.
   */
  public Label place(Label label, List<Label> places) {
    Label best = label;
    double least = Double.MAX_VALUE;
    for (Label candidate : places) {
      double cost = cost(candidate.box());
      if (cost < least) {
        least = cost;
        best = candidate;
      }
      if (cost == 0) {
        break;
      }
    }
    return fixed(best);
  }

  /** The label beside a point: right, left, above or below it, then further away. */
  public Label beside(Label label, double gap) {
    return place(label, around(label, gap));
  }

  static List<Label> around(Label label, double gap) {
    List<Label> places = new ArrayList<>();
    double up = 0.35 * label.size();
    for (double away = gap; away <= gap + 4 * STEP; away += STEP) {
      Point p = label.at();
      places.add(label.movedTo(p.plus(away, up), Anchor.START));
      places.add(label.movedTo(p.plus(-away, up), Anchor.END));
      places.add(label.movedTo(p.plus(0, -away), Anchor.MIDDLE));
      places.add(label.movedTo(p.plus(0, away + 2 * up), Anchor.MIDDLE));
      places.add(label.movedTo(p.plus(0.7 * away, -0.7 * away), Anchor.START));
      places.add(label.movedTo(p.plus(-0.7 * away, -0.7 * away), Anchor.END));
      places.add(label.movedTo(p.plus(0.7 * away, 0.7 * away + 2 * up), Anchor.START));
      places.add(label.movedTo(p.plus(-0.7 * away, 0.7 * away + 2 * up), Anchor.END));
    }
    return places;
  }

  private double cost(Box box) {
    double cost = box.width() * box.height() - box.overlap(paper);
    double off = cost < 1e-6 ? 0 : 10 * cost;
    for (Box other : taken) {
      off += box.overlap(other);
    }
    return off;
  }
}
