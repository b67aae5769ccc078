package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.Look;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.units.Length;

/**
 * At which focus distance photographs show most of the object sharp. Those who plan and those who
 * judge plans ask here, so that they agree.
 */
public final class BestFocus {

  /** Blurred part of what is otherwise seen well from which on other distances are tried. */
  private static final double MUCH = 0.25;

  /** How much more must be sharp for the focus to count as wrong. */
  private static final double BETTER = 1.5;

  /** So many of the best distances are held against the whole set. */
  private static final int HELD = 5;

  private static final int SAMPLE = 150;
  private static final int TRIES = 16;

  private final Seeing seeing;
  private final Seeing small;

  /** Before this object, of which a part of the patches is looked at. */
  public BestFocus(Seeing seeing) {
    this.seeing = seeing;
    small = seeing.only(Trial.sample(Trial.all(seeing), SAMPLE));
  }

  /**
   * The distance for photographs of one leg, if the one they have is wrong: much of what they see
   * is blurred, another shows far more, and with it the set hangs together and sees as well as it
   * does now.
   *
   * @param all the photographs of the set
   * @param views those of the leg, not empty
   */
  public Optional<Length> instead(List<View> all, List<View> views) {
    List<Length> better = sharper(views);
    for (Length focus : better.subList(0, Math.min(HELD, better.size()))) {
      if (keeps(all, views, focus)) {
        return Optional.of(focus);
      }
    }
    return Optional.empty();
  }

  /**
   * The distances for photographs of one leg at which they show far more, the best first, whatever
   * becomes of the set; none if little of what they see is blurred.
   *
   * @param views those of the leg, not empty
   */
  public List<Length> sharper(List<View> views) {
    Viewpoint some = views.get(views.size() / 2).viewpoint();
    return blurred(views) <= MUCH ? List.of() : better(List.of(some), BETTER);
  }

  /**
   * The distance at which these show most; the one they have unless it is worse by a factor.
   *
   * @param viewpoints of one setup, not empty
   * @param factor how much more another must show, above 1
   */
  public Length most(List<Viewpoint> viewpoints, double factor) {
    List<Length> better = better(viewpoints, factor);
    return better.isEmpty() ? viewpoints.get(0).setup().focus() : better.get(0);
  }

  private record Shown(Length focus, double area) {}

  /** Distances at which these show more by a factor, the best first. */
  private List<Length> better(List<Viewpoint> viewpoints, double factor) {
    Viewpoint first = viewpoints.get(0);
    List<View> looks = new ArrayList<>();
    viewpoints.forEach(viewpoint -> looks.add(small.look(viewpoint)));
    double least = shown(looks, first.setup().focus()) * factor;
    double away = first.station().position().minus(seeing.middle()).norm();
    List<Shown> all = new ArrayList<>();
    for (int i = 0; i <= TRIES; i++) {
      Length focus = new Length(away * (0.4 + 0.8 * i / TRIES));
      if (focus.metres() > seeing.scene().kit().lens().closestFocus().metres()) {
        double area = shown(looks, focus);
        if (area > least) {
          all.add(new Shown(focus, area));
        }
      }
    }
    all.sort((a, b) -> Double.compare(b.area(), a.area()));
    return all.stream().map(Shown::focus).toList();
  }

  private double shown(List<View> looks, Length focus) {
    double area = 0;
    for (View look : looks) {
      area += small.focused(look, focus).area();
    }
    return area;
  }

  /** What part is blurred of that which the photographs would else see well, 0 to 1. */
  double blurred(List<View> views) {
    return blurred(seeing, views);
  }

  /** Sharp part, 0 to 1, if these were focused there. */
  double sharp(List<View> views, Length focus) {
    List<View> again = new ArrayList<>();
    for (View view : views) {
      again.add(small.focused(small.look(view.viewpoint()), focus));
    }
    return 1 - blurred(small, again);
  }

  private static double blurred(Seeing seeing, List<View> views) {
    double sharp = 0;
    double soft = 0;
    for (View view : views) {
      sharp += view.area();
      for (int i = 0; i < seeing.surface().count(); i++) {
        soft += view.look(i) == Look.SOFT ? seeing.surface().patches().area(i) : 0;
      }
    }
    return soft == 0 ? 0 : soft / (soft + sharp);
  }

  /** Whether the set falls into no more pieces, and no less of the object is seen well. */
  private boolean keeps(List<View> all, List<View> views, Length focus) {
    List<View> changed = new ArrayList<>();
    for (View view : all) {
      changed.add(views.contains(view) ? seeing.focused(view, focus) : view);
    }
    // A sample would take ties for whole that on all patches fall short by a hair.
    Coverage before = Coverage.of(seeing, all);
    Coverage after = Coverage.of(seeing, changed);
    double well = before.share(PatchClass.Group.WELL);
    return after.graph().pieces().size() <= before.graph().pieces().size()
        && after.share(PatchClass.Group.WELL) >= well - 1e-9;
  }
}
