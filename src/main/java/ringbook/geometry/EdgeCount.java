package ringbook.geometry;

/** Counts how often triangles run along each edge, in either direction. */
final class EdgeCount {

  private final long[] key;
  private final int[] up;
  private final int[] down;

  EdgeCount(int most) {
    int size = 16;
    while (size < 2 * most) {
      size *= 2;
    }
    key = new long[size];
    up = new int[size];
    down = new int[size];
  }

  void add(int from, int to) {
    long low = Math.min(from, to);
    long high = Math.max(from, to);
    long wanted = (low << 32 | high) + 1;
    int slot = mixed(wanted) & (key.length - 1);
    while (key[slot] != 0 && key[slot] != wanted) {
      slot = (slot + 1) & (key.length - 1);
    }
    key[slot] = wanted;
    if (from < to) {
      up[slot]++;
    } else {
      down[slot]++;
    }
  }

  private static int mixed(long x) {
    long h = x * 0x9E3779B97F4A7C15L;
    return (int) (h >>> 33);
  }

  int open() {
    int count = 0;
    for (int i = 0; i < key.length; i++) {
      count += up[i] + down[i] == 1 ? 1 : 0;
    }
    return count;
  }

  int crowded() {
    int count = 0;
    for (int i = 0; i < key.length; i++) {
      count += up[i] + down[i] > 2 ? 1 : 0;
    }
    return count;
  }

  int flipped() {
    int count = 0;
    for (int i = 0; i < key.length; i++) {
      count += up[i] + down[i] == 2 && up[i] != 1 ? 1 : 0;
    }
    return count;
  }
}
