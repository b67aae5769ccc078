package ringbook.figures;

/** Which of many numbers to print. */
final class Thinning {

  private static final int[] STRIDES = {1, 2, 5, 10, 15, 20, 30, 45, 60, 90};

  private Thinning() {}

  /** The smallest handy stride with which {@code count} numbers fit where {@code room} would. */
  static int every(int count, double room) {
    for (int stride : STRIDES) {
      if (count <= room * stride) {
        return stride;
      }
    }
    return STRIDES[STRIDES.length - 1];
  }
}
