package ringbook.assess.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import ringbook.assess.PointPrecision;
import ringbook.geometry.Spread;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * Views put together one by one: for a planner that tries many sets. Adding a view costs a few
 * steps a patch; a patch is judged when asked for. {@link #copy} keeps a state to come back to. For
 * all patches of a finished set see {@link Coverage}.
 */
public final class Tally {

  private final Limits limits;
  private final List<View> views;
  private final int[][] of;
  private final int[][] slots;
  private final int[] counts;
  private final int[] soft;
  private final int[] masks;
  private final Bundle bundle;

  /** Nothing seen yet of so many patches. */
  public Tally(Limits limits, int patches) {
    this.limits = limits;
    views = new ArrayList<>();
    of = new int[patches][];
    slots = new int[patches][];
    counts = new int[patches];
    soft = new int[patches];
    masks = new int[patches];
    bundle = new Bundle(limits);
  }

  private Tally(Tally from) {
    limits = from.limits;
    views = new ArrayList<>(from.views);
    of = copied(from.of, from.counts);
    slots = copied(from.slots, from.counts);
    counts = from.counts.clone();
    soft = from.soft.clone();
    masks = from.masks.clone();
    bundle = from.bundle; // holds nothing from one call to the next
  }

  private static int[][] copied(int[][] rows, int[] lengths) {
    int[][] copies = new int[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      copies[i] = rows[i] == null ? null : Arrays.copyOf(rows[i], lengths[i]);
    }
    return copies;
  }

  /** The same state, to go on from apart. */
  public Tally copy() {
    return new Tally(this);
  }

  /** Puts one more view in; its number is how many were in before. */
  public void add(View view) {
    int number = views.size();
    views.add(view);
    for (int slot = 0; slot < view.count(); slot++) {
      put(view.patch(slot), number, slot);
    }
    for (int i = 0; i < masks.length; i++) {
      Look look = view.look(i);
      masks[i] |= look.bit();
      soft[i] += look == Look.SOFT ? 1 : 0;
    }
  }

  private void put(int patch, int number, int slot) {
    int count = counts[patch];
    if (of[patch] == null || of[patch].length == count) {
      of[patch] = count == 0 ? new int[8] : Arrays.copyOf(of[patch], 2 * count);
      slots[patch] = count == 0 ? new int[8] : Arrays.copyOf(slots[patch], 2 * count);
    }
    of[patch][count] = number;
    slots[patch][count] = slot;
    counts[patch] = count + 1;
  }

  /** How many patches there are. */
  public int patches() {
    return counts.length;
  }

  /** The views, by number. */
  public List<View> views() {
    return List.copyOf(views);
  }

  /** How many views see patch {@code i} well. */
  public int count(int i) {
    return counts[i];
  }

  /** Whether any view saw the patch so. */
  public boolean anyLook(int i, Look look) {
    return (masks[i] & look.bit()) != 0;
  }

  /** How well patch {@code i} is seen by the views so far. */
  public PatchClass classOf(int i) {
    return state(i).patchClass();
  }

  /**
   * How far a patch is on the way to being seen well.
   *
   * @param count how many views see it well
   * @param tied how many of them hang together
   * @param patchClass what follows
   */
  public record State(int count, int tied, PatchClass patchClass) {}

  /** How patch {@code i} stands. */
  public State state(int i) {
    bundle.load(views, of[i], slots[i], counts[i]);
    bundle.tie();
    return new State(counts[i], bundle.tied, judged(i, counts[i]));
  }

  /**
   * How the patch at place {@code slot} among the {@link View#wells} of one more view would stand
   * with it.
   */
  public State with(View view, int slot) {
    int i = view.patch(slot);
    bundle.load(views, of[i], slots[i], counts[i]);
    bundle.more(view, slot);
    bundle.tie();
    return new State(counts[i] + 1, bundle.tied, judged(i, counts[i] + 1));
  }

  /** How patch {@code i} would stand without one of the views that are in. */
  public State without(int i, int number) {
    int kept = bundle.loadBut(number, views, of[i], slots[i], counts[i]);
    bundle.tie();
    return new State(kept, bundle.tied, judged(i, kept));
  }

  /** Compares one more view, not yet in, with all that see the same patch. */
  void compare(View view, int slot, Bundle.Pairs pairs) {
    int i = view.patch(slot);
    bundle.load(views, of[i], slots[i], counts[i]);
    bundle.more(view, slot);
    bundle.compareLast(of[i], views.size(), pairs);
  }

  /** Compares all rays of a patch, telling {@code pairs}. */
  void compare(int i, Bundle.Pairs pairs) {
    bundle.load(views, of[i], slots[i], counts[i]);
    bundle.compare(of[i], pairs);
  }

  /** What the patch compared last comes to. */
  PatchViews summed(int i) {
    List<Integer> numbers = new ArrayList<>();
    for (int k = 0; k < counts[i]; k++) {
      numbers.add(of[i][k]);
    }
    boolean two = counts[i] > 1;
    return new PatchViews(
        numbers,
        bundle.matchable,
        bundle.tied,
        two ? Alike.turn(bundle.shortest) : Angle.ZERO,
        Alike.turn(bundle.longest),
        Alike.turn(bundle.tiedLongest),
        counts[i] == 0 ? Optional.empty() : Optional.of(new Length(bundle.sampling)),
        judged(i, counts[i]));
  }

  private PatchClass judged(int i, int count) {
    if (count == 0) {
      return PatchClass.unseen(masks[i]);
    }
    if (count < Limits.VIEWS && count + soft[i] >= Limits.VIEWS) {
      return PatchClass.SOFT;
    }
    if (count == 1) {
      return PatchClass.ONE_VIEW;
    }
    if (bundle.tied < Limits.VIEWS) {
      return bundle.tied < 2 ? PatchClass.TOO_FAR : PatchClass.TWO_VIEWS;
    }
    if (bundle.tiedLongest < Alike.chord(Limits.RAYS)) {
      return PatchClass.TOO_CLOSE;
    }
    return bundle.sampling > limits.sampling() * (1 + 1e-9) ? PatchClass.COARSE : PatchClass.WELL;
  }

  /** Covariance of patch {@code i}'s place in square metres; empty if its rays do not fix it. */
  public Optional<Spread> precision(int i) {
    List<PointPrecision.Ray> rays = new ArrayList<>();
    for (int k = 0; k < counts[i]; k++) {
      View view = views.get(of[i][k]);
      int slot = slots[i][k];
      Vec3 away = new Vec3(-view.ray(slot, 0), -view.ray(slot, 1), -view.ray(slot, 2));
      rays.add(new PointPrecision.Ray(away, view.sigma(slot)));
    }
    return PointPrecision.covariance(rays);
  }
}
