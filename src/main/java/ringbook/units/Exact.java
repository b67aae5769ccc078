package ringbook.units;

/** Bit moves and error-free steps that the elementary functions are built from. */
final class Exact {

  private static final long LOW_WORD = 0xFFFFFFFFL;
  private static final long LOW_HALF = 0x7FFFFFFL;

  private Exact() {}

  /** The upper 32 bits: sign, exponent and the first 20 bits after the point. */
  static int high(double x) {
    return (int) (Double.doubleToRawLongBits(x) >>> 32);
  }

  /** The upper 32 bits without the sign. */
  static int size(double x) {
    return high(x) & 0x7fffffff;
  }

  /** The double with these upper 32 bits and nothing below them. */
  static double ofHigh(int high) {
    return Double.longBitsToDouble((long) high << 32);
  }

  /** {@code x} with its upper 32 bits replaced. */
  static double withHigh(int high, double x) {
    return Double.longBitsToDouble(
        ((long) high << 32) | (Double.doubleToRawLongBits(x) & LOW_WORD));
  }

  /** {@code x} with its lower 32 bits cleared. */
  static double head(double x) {
    return Double.longBitsToDouble(Double.doubleToRawLongBits(x) & ~LOW_WORD);
  }

  /** Two to a whole power from -1022 to 1023. */
  static double powerOfTwo(int exponent) {
    return Double.longBitsToDouble((exponent + 1023L) << 52);
  }

  /** {@code x} times two to a whole power from -2000 to 2000, rounded once at most. */
  static double scaled(double x, int exponent) {
    int half = exponent / 2;
    return x * powerOfTwo(half) * powerOfTwo(exponent - half);
  }

  /** How much {@code product}, the rounded {@code a * b}, is above the exact one. */
  static double excess(double a, double b, double product) {
    double aHead = half(a);
    double bHead = half(b);
    double aTail = a - aHead;
    double bTail = b - bHead;
    double rest = product - aHead * bHead;
    rest = rest - aTail * bHead;
    rest = rest - aHead * bTail;
    return rest - aTail * bTail;
  }

  private static double half(double x) {
    return Double.longBitsToDouble(Double.doubleToRawLongBits(x) & ~LOW_HALF);
  }
}
