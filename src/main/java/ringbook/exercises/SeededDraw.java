package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;

/**
 * Numbers drawn from a text: the same text gives the same numbers on every platform and in every
 * version.
 *
 * <p>The text becomes a number by FNV-1a with 64 bits over its UTF-8 bytes (Fowler, Noll, Vo,
 * Eastlake, "The FNV Non-Cryptographic Hash Algorithm", IETF draft-eastlake-fnv). From there on it
 * is SplitMix64 (Steele, Lea, Flood, "Fast Splittable Pseudorandom Number Generators", OOPSLA
 * 2014). Whole numbers below a bound are cut from the top bits, and drawn again where they are not
 * below it, so that all come equally often; nothing is divided. Not for secrets.
 */
public final class SeededDraw {

  private static final long FNV_OFFSET = 0xcbf29ce484222325L;
  private static final long FNV_PRIME = 0x100000001b3L;
  private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;

  private long state;

  /** The draw that begins with the state {@code seed}. */
  SeededDraw(long seed) {
    this.state = seed;
  }

  /** The draw that belongs to {@code text}. */
  public static SeededDraw of(String text) {
    return new SeededDraw(hash(text));
  }

  /** FNV-1a, 64 bits, over the UTF-8 bytes of {@code text}. */
  static long hash(String text) {
    long hash = FNV_OFFSET;
    for (int i = 0; i < text.length(); ) {
      int point = text.codePointAt(i);
      i += point > 0xffff ? 2 : 1;
      hash = hashed(hash, point);
    }
    return hash;
  }

  private static long hashed(long hash, int point) {
    if (point < 0x80) {
      return withByte(hash, point);
    }
    if (point < 0x800) {
      return follow(withByte(hash, 0xc0 | (point >> 6)), point, 0);
    }
    return point < 0x10000
        ? follow(withByte(hash, 0xe0 | (point >> 12)), point, 6)
        : follow(withByte(hash, 0xf0 | (point >> 18)), point, 12);
  }

  /** The bytes that follow the first one, from the six bits at {@code shift} down. */
  private static long follow(long hash, int point, int shift) {
    long result = hash;
    for (int at = shift; at >= 0; at -= 6) {
      result = withByte(result, 0x80 | ((point >> at) & 0x3f));
    }
    return result;
  }

  private static long withByte(long hash, int octet) {
    return (hash ^ octet) * FNV_PRIME;
  }

  /** The next 64 bits. */
  long next() {
    state += GOLDEN_GAMMA;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  /**
   * A whole number from 0 to {@code bound} - 1, each equally often.
   *
   * @throws IllegalArgumentException if {@code bound} is below 1
   */
  public int below(int bound) {
    if (bound < 1) {
      throw new IllegalArgumentException("nothing lies below " + bound);
    }
    if (bound == 1) {
      return 0;
    }
    int bits = 32 - Integer.numberOfLeadingZeros(bound - 1);
    int drawn = bound;
    while (drawn >= bound) {
      drawn = (int) (next() >>> (64 - bits));
    }
    return drawn;
  }

  /** The same things in an order drawn. */
  <T> List<T> shuffled(List<T> things) {
    List<T> shuffled = new ArrayList<>();
    for (int index : order(things.size())) {
      shuffled.add(things.get(index));
    }
    return shuffled;
  }

  /** An order of at least two that is not the one from 0 up. */
  List<Integer> disorder(int count) {
    List<Integer> order = order(count);
    while (isUpwards(order)) {
      order = order(count);
    }
    return order;
  }

  private static boolean isUpwards(List<Integer> order) {
    for (int i = 0; i < order.size(); i++) {
      if (order.get(i) != i) {
        return false;
      }
    }
    return true;
  }

  /**
   * The numbers 0 to {@code count} - 1 in an order drawn so that all orders come equally often
   * (Fisher and Yates; R. Durstenfeld, Algorithm 235, Communications of the ACM 7, 1964).
   */
  public List<Integer> order(int count) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      order.add(i);
    }
    for (int last = count - 1; last > 0; last--) {
      int other = below(last + 1);
      int moved = order.get(other);
      order.set(other, order.get(last));
      order.set(last, moved);
    }
    return order;
  }
}
