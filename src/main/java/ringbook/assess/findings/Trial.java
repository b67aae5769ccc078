package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Limits;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Tally;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;

/** Tries out on some patches what more photographs would do. */
final class Trial {

  private final Seeing seeing;
  private final Tally base;

  /**
   * On a sample of patches, with what is there already.
   *
   * @param most how many patches are looked at, at most
   */
  Trial(Seeing whole, int[] patches, int most, List<Viewpoint> there) {
    seeing = whole.only(sample(patches, most));
    base = new Tally(seeing.limits(), seeing.surface().count());
    for (Viewpoint viewpoint : there) {
      base.add(seeing.look(viewpoint));
    }
  }

  /**
   * On a sample of patches, with views of all of them that are there already.
   *
   * @param most how many patches are looked at, at most
   */
  static Trial with(List<View> there, Seeing whole, int[] patches, int most) {
    Trial trial = new Trial(whole, patches, most, List.of());
    int[] some = sample(patches, most);
    there.forEach(view -> trial.base.add(trial.seeing.part(view, some)));
    return trial;
  }

  /** The numbers of all patches. */
  static int[] all(Seeing seeing) {
    int[] all = new int[seeing.surface().count()];
    for (int i = 0; i < all.length; i++) {
      all[i] = i;
    }
    return all;
  }

  /** At most so many of these, evenly. */
  static int[] sample(int[] patches, int most) {
    int count = Math.min(most, patches.length);
    int[] some = new int[count];
    for (int k = 0; k < count; k++) {
      some[k] = patches[(int) ((k + 0.5) * patches.length / count)];
    }
    return some;
  }

  Seeing seeing() {
    return seeing;
  }

  /** What part of the sample that is not seen well yet these mend, 0 to 1. */
  double mended(List<Viewpoint> more) {
    double before = well(base);
    return (well(more) - before) / Math.max(1e-9, 1 - before);
  }

  /** Share of the sample that is seen well with these as well. */
  double well(List<Viewpoint> more) {
    Tally tally = base.copy();
    for (Viewpoint viewpoint : more) {
      tally.add(seeing.look(viewpoint));
    }
    return well(tally);
  }

  private double well(Tally tally) {
    double in = 0;
    for (int i = 0; i < tally.patches(); i++) {
      in += tally.classOf(i) == PatchClass.WELL ? seeing.surface().patches().area(i) : 0;
    }
    return in / seeing.surface().patches().area();
  }

  /** How far on the way to being seen well the sample is: 1 if all of it is. */
  private double progress(Tally tally) {
    double sum = 0;
    for (int i = 0; i < tally.patches(); i++) {
      double way = Math.min(tally.count(i), Limits.VIEWS) / (Limits.VIEWS + 1.0);
      way = tally.classOf(i) == PatchClass.WELL ? 1 : way;
      sum += way * seeing.surface().patches().area(i);
    }
    return sum / seeing.surface().patches().area();
  }

  /**
   * Few of the pool that together see the sample well: always the one that helps most next, until
   * nothing helps.
   */
  List<Viewpoint> greedy(List<Viewpoint> pool, int most) {
    List<View> views = new ArrayList<>();
    for (Viewpoint viewpoint : pool) {
      View view = seeing.look(viewpoint);
      if (view.count() > 0) {
        views.add(view);
      }
    }
    List<Viewpoint> chosen = new ArrayList<>();
    Tally tally = base.copy();
    double now = progress(tally);
    while (chosen.size() < most && now < 0.999) {
      View best = null;
      double top = now + 0.01;
      for (View view : views) {
        Tally next = tally.copy();
        next.add(view);
        double then = progress(next);
        if (then > top) {
          top = then;
          best = view;
        }
      }
      if (best == null) {
        return chosen;
      }
      tally.add(best);
      now = top;
      chosen.add(best.viewpoint());
    }
    return chosen;
  }
}
