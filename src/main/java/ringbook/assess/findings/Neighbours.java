package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringbook.geometry.Patches;

/** Which patches lie side by side: near to each other, and not back to back. */
final class Neighbours {

  /** Distance of two middles over the side of a square patch up to which they are neighbours. */
  private static final double NEAR = 1.7;

  /** Smallest cosine between the normals of neighbours, so that a place ends at an edge. */
  private static final double TURNED = 0.5;

  private final Patches patches;
  private final double reach;
  private final Map<Long, List<Integer>> cells = new TreeMap<>();

  Neighbours(Patches patches) {
    this.patches = patches;
    double[] areas = new double[patches.count()];
    for (int i = 0; i < areas.length; i++) {
      areas[i] = patches.area(i);
    }
    Arrays.sort(areas);
    reach = areas.length == 0 ? 1 : NEAR * Math.sqrt(areas[areas.length / 2]);
    for (int i = 0; i < patches.count(); i++) {
      long cell = cell(step(patches.x(i)), step(patches.y(i)), step(patches.z(i)));
      cells.computeIfAbsent(cell, k -> new ArrayList<>()).add(i);
    }
  }

  private long step(double metres) {
    return (long) Math.floor(metres / reach);
  }

  private static long cell(long x, long y, long z) {
    return ((x + 500_000) * 1_000_000 + y + 500_000) * 1_000_000 + z + 500_000;
  }

  /** The neighbours of a patch, in a fixed order. */
  List<Integer> of(int i) {
    List<Integer> found = new ArrayList<>();
    for (long x = -1; x <= 1; x++) {
      for (long y = -1; y <= 1; y++) {
        for (long z = -1; z <= 1; z++) {
          collect(
              i,
              cell(step(patches.x(i)) + x, step(patches.y(i)) + y, step(patches.z(i)) + z),
              found);
        }
      }
    }
    return found;
  }

  private void collect(int i, long cell, List<Integer> found) {
    for (int j : cells.getOrDefault(cell, List.of())) {
      if (j != i && isNear(i, j)) {
        found.add(j);
      }
    }
  }

  private boolean isNear(int i, int j) {
    double dx = patches.x(i) - patches.x(j);
    double dy = patches.y(i) - patches.y(j);
    double dz = patches.z(i) - patches.z(j);
    double turned =
        patches.normalX(i) * patches.normalX(j)
            + patches.normalY(i) * patches.normalY(j)
            + patches.normalZ(i) * patches.normalZ(j);
    return turned > TURNED && dx * dx + dy * dy + dz * dz <= reach * reach;
  }
}
