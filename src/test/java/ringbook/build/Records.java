package ringbook.build;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.teavm.jso.JSExport;

/** Records with parts of all kinds, and how they compare. */
public final class Records {

  private Records() {}

  /**
   * Which of them equal which, row by row.
   *
   * @param a some number
   * @param zero the number 0, of which the compiler must not know
   */
  @JSExport
  public static boolean[] equal(double a, double zero) {
    List<Object> all = all(a, zero);
    boolean[] equal = new boolean[all.size() * all.size()];
    for (int i = 0; i < equal.length; i++) {
      Object one = all.get(i / all.size());
      Object other = all.get(i % all.size());
      equal[i] = one.equals(other) && one.hashCode() == other.hashCode();
    }
    return equal;
  }

  /** How many there are that differ, by a set of them. */
  @JSExport
  public static int different(double a, double zero) {
    Set<Object> set = new LinkedHashSet<>(all(a, zero));
    set.addAll(all(a, zero));
    return set.size();
  }

  private static List<Object> all(double a, double zero) {
    int[] shared = {1};
    int none = (int) zero;
    return Arrays.asList(
        new Two(a, zero),
        new Two(a, 0),
        new Two(a, -zero),
        new Two(Math.sqrt(zero - 1), a),
        new Two(Double.NaN, a),
        new Alike(a, zero),
        new Mixed(none, 1L << 40, 'x', true, "a" + none, null, List.of(1, 2), shared),
        new Mixed(-none, 1L << 40, 'x', true, "a0", null, List.of(1, 2), shared),
        new Mixed(-(int) (zero + 0.25), 1L << 40, 'x', true, "a0", null, List.of(1, 2), shared),
        new Mixed((int) (zero - 0.25), 1L << 40, 'x', true, "a0", null, List.of(1, 2), shared),
        new Mixed(none, 1L << 41, 'x', true, "a0", null, List.of(1, 2), shared),
        new Mixed(none, 1L << 40, 'y', true, "a0", null, List.of(1, 2), shared),
        new Mixed(none, 1L << 40, 'x', zero > 1, "a0", null, List.of(1, 2), shared),
        new Mixed(none, 1L << 40, 'x', true, "b", null, List.of(1, 2), shared),
        new Mixed(none, 1L << 40, 'x', true, "a0", new None(), List.of(1, 2), shared),
        new Mixed(none, 1L << 40, 'x', true, "a0", null, List.of(2, 1), shared),
        new Mixed(none, 1L << 40, 'x', true, "a0", null, List.of(1, 2), new int[] {1}),
        new Nested(Optional.of(new Two(a, 1)), Side.LEFT),
        new Nested(Optional.of(new Two(a, zero + 1)), Side.LEFT),
        new Nested(Optional.of(new Two(a, 2)), Side.LEFT),
        new Nested(Optional.of(new Two(a, 1)), Side.RIGHT),
        new Nested(Optional.empty(), Side.RIGHT),
        new Own("a", 1),
        new Own("a", 2),
        new Own("b", 2),
        new None(),
        new None());
  }

  private enum Side {
    LEFT,
    RIGHT
  }

  private record Two(double first, double second) {}

  private record Alike(double first, double second) {}

  @SuppressWarnings("ArrayRecordComponent") // that it counts as the array it is, is what is tried
  private record Mixed(
      int whole,
      long large,
      char letter,
      boolean yes,
      String text,
      None other,
      List<Integer> list,
      int[] numbers) {}

  private record Nested(Optional<Two> two, Side side) {}

  private record None() {}

  /** Only its name counts. */
  private record Own(String name, int other) {
    @Override
    public boolean equals(Object that) {
      return that instanceof Own own && own.name.equals(name);
    }

    @Override
    public int hashCode() {
      return name.hashCode();
    }
  }
}
