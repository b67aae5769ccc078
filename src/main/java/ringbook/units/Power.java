package ringbook.units;

/**
 * Exponential, logarithms and powers.
 *
 * <p>The constants and steps are those of fdlibm 5.3, whose notice reads: "Copyright (C) 1993 by
 * Sun Microsystems, Inc. All rights reserved. Developed at SunSoft, a Sun Microsystems, Inc.
 * business. Permission to use, copy, modify, and distribute this software is freely granted,
 * provided that this notice is preserved." Changed here: written in Java; operands of sums and
 * products put in the order that survives a translation to JavaScript; the shortcuts for arguments
 * next to 1 and for exponents beyond 2^31 left out; the logarithm to base 2 is the first half of
 * the power.
 */
final class Power {

  private static final double LN2_HEAD = 0.6931471803691238;
  private static final double LN2_TAIL = 1.9082149292705877e-10;
  private static final double PER_LN2 = 1.4426950408889634;
  private static final double LARGEST_EXP = 709.782712893384;
  private static final double SMALLEST_EXP = -745.1332191019411;

  private static final double P1 = 0.16666666666666602;
  private static final double P2 = -0.0027777777777015593;
  private static final double P3 = 6.613756321437934e-05;
  private static final double P4 = -1.6533902205465252e-06;
  private static final double P5 = 4.1381367970572385e-08;

  private static final double G1 = 0.6666666666666735;
  private static final double G2 = 0.3999999999940942;
  private static final double G3 = 0.2857142874366239;
  private static final double G4 = 0.22222198432149784;
  private static final double G5 = 0.1818357216161805;
  private static final double G6 = 0.15313837699209373;
  private static final double G7 = 0.14798198605116586;

  private static final double L1 = 0.5999999999999946;
  private static final double L2 = 0.4285714285785502;
  private static final double L3 = 0.33333332981837743;
  private static final double L4 = 0.272728123808534;
  private static final double L5 = 0.23066074577556175;
  private static final double L6 = 0.20697501780033842;

  private static final double LG_1_5_HEAD = 0.5849624872207642;
  private static final double LG_1_5_TAIL = 1.350039202129749e-08;
  private static final double LN2 = 0.6931471805599453;
  private static final double LN2_SHORT = 0.6931471824645996;
  private static final double LN2_SHORT_REST = -1.904654299957768e-09;
  private static final double CP = 0.9617966939259756; // 2 / (3 ln 2)
  private static final double CP_HEAD = 0.9617967009544373;
  private static final double CP_TAIL = -7.028461650952758e-09;

  private Power() {}

  /** A sum whose head has its lower 32 bits clear. */
  private record Pair(double head, double tail) {}

  static double exp(double x) {
    if (Double.isNaN(x) || x > LARGEST_EXP) {
      return x > 0 ? Double.POSITIVE_INFINITY : x;
    }
    if (x < SMALLEST_EXP) {
      return 0;
    }
    int size = Exact.size(x);
    if (size < 0x3e300000) {
      return x + 1;
    }
    if (size <= 0x3fd62e42) {
      double c = x - exponentialSeries(x * x);
      return 1 - ((x * c) / (c - 2) - x);
    }
    int k = size < 0x3FF0A2B2 ? (x < 0 ? -1 : 1) : (int) (x * PER_LN2 + (x < 0 ? -0.5 : 0.5));
    double head = x - k * LN2_HEAD;
    double tail = k * LN2_TAIL;
    double r = head - tail;
    double c = r - exponentialSeries(r * r);
    return Exact.scaled(1 - ((tail - (r * c) / (2 - c)) - head), k);
  }

  private static double exponentialSeries(double t) {
    return ((((P5 * t + P4) * t + P3) * t + P2) * t + P1) * t;
  }

  static double log(double x) {
    if (!(x > 0) || x == Double.POSITIVE_INFINITY) {
      return ofNoPositive(x);
    }
    double normal = x < Double.MIN_NORMAL ? x * 0x1p54 : x;
    int size = Exact.size(normal);
    int fraction = size & 0xfffff;
    int up = (fraction + 0x95f64) & 0x100000;
    int k = (size >> 20) - 1023 + (up >> 20) - (x < Double.MIN_NORMAL ? 54 : 0);
    double f = Exact.withHigh(fraction | (up ^ 0x3ff00000), normal) - 1;
    double s = f / (f + 2);
    double z = s * s;
    double w = z * z;
    double even = ((G6 * w + G4) * w + G2) * w;
    double odd = (((G7 * w + G5) * w + G3) * w + G1) * z;
    double r = odd + even;
    double rest = k * LN2_TAIL;
    if (((fraction - 0x6147a) | (0x6b851 - fraction)) > 0) {
      double half = f * 0.5 * f;
      return k * LN2_HEAD - ((half - ((r + half) * s + rest)) - f);
    }
    return k * LN2_HEAD - (((f - r) * s - rest) - f);
  }

  private static double ofNoPositive(double x) {
    if (x == 0) {
      return Double.NEGATIVE_INFINITY;
    }
    return x > 0 ? x : Double.NaN;
  }

  static double log2(double x) {
    if (!(x > 0) || x == Double.POSITIVE_INFINITY) {
      return ofNoPositive(x);
    }
    Pair log = log2Pair(x);
    return log.tail + log.head;
  }

  private static Pair log2Pair(double x) {
    double normal = x < Double.MIN_NORMAL ? x * 0x1p54 : x;
    int size = Exact.size(normal);
    int fraction = size & 0xfffff;
    int n = (size >> 20) - 1023 - (x < Double.MIN_NORMAL ? 54 : 0);
    int high = fraction | 0x3ff00000;
    boolean middle = fraction > 0x3988E && fraction < 0xBB67A;
    if (fraction >= 0xBB67A) {
      n++;
      high -= 0x00100000;
    }
    double m = Exact.withHigh(high, normal);
    double base = middle ? 1.5 : 1;
    double sumHead = Exact.ofHigh(((high >> 1) | 0x20000000) + 0x00080000 + (middle ? 1 << 18 : 0));
    double u = m - base;
    double v = 1 / (m + base);
    double s = u * v;
    double head = Exact.head(s);
    double tail = ((u - head * sumHead) - (m - (sumHead - base)) * head) * v;
    Pair p = logarithmSeries(s, head, tail);
    double zHead = CP_HEAD * p.head;
    double zTail = CP_TAIL * p.head + p.tail * CP + (middle ? LG_1_5_TAIL : 0);
    double lgBase = middle ? LG_1_5_HEAD : 0;
    double lgHead = Exact.head(zHead + zTail + lgBase + n);
    return new Pair(lgHead, zTail - (((lgHead - n) - lgBase) - zHead));
  }

  private static Pair logarithmSeries(double s, double head, double tail) {
    double z = s * s;
    double w = z * z;
    double r = (((((L6 * z + L5) * z + L4) * z + L3) * z + L2) * z + L1) * w;
    r = r + (head + s) * tail;
    double square = head * head;
    double tHead = Exact.head(3 + square + r);
    double tTail = r - ((tHead - 3) - square);
    double u = head * tHead;
    double v = tail * tHead + tTail * s;
    double pHead = Exact.head(u + v);
    return new Pair(pHead, v - (pHead - u));
  }

  static double pow(double x, double y) {
    if (y == 0) {
      return 1;
    }
    if (Double.isNaN(x) || Double.isNaN(y)) {
      return Double.NaN;
    }
    double size = Math.abs(x);
    if (Math.abs(y) == Double.POSITIVE_INFINITY) {
      if (size == 1) {
        return Double.NaN;
      }
      return (size > 1) == (y > 0) ? Double.POSITIVE_INFINITY : 0;
    }
    boolean whole = Math.floor(y) == y;
    boolean odd = whole && Math.floor(y / 2) != y / 2;
    boolean negative = Exact.high(x) < 0;
    if (x < 0 && size < Double.POSITIVE_INFINITY && !whole) {
      return Double.NaN;
    }
    double result = ofSize(size, y);
    return negative && odd ? -result : result;
  }

  private static double ofSize(double x, double y) {
    if (x == 0 || x == Double.POSITIVE_INFINITY) {
      return (x == 0) == (y < 0) ? Double.POSITIVE_INFINITY : 0;
    }
    if (x == 1 || y == 1) {
      return x;
    }
    if (y == 2) {
      return x * x;
    }
    if (y == 0.5) {
      return Math.sqrt(x);
    }
    Pair log = log2Pair(x);
    if (!(Math.abs((log.tail + log.head) * y) < 1100)) {
      return (x > 1) == (y > 0) ? Double.POSITIVE_INFINITY : 0;
    }
    double yHead = Exact.head(y);
    double tail = (y - yHead) * log.head + log.tail * y;
    return exp2(yHead * log.head, tail);
  }

  /** Two to the power {@code head + tail}, at most 1100 in size. */
  private static double exp2(double head, double tail) {
    double z = tail + head;
    int n = Math.abs(z) > 0.5 ? (int) (z + (z < 0 ? -0.5 : 0.5)) : 0;
    double left = head - n;
    double t = Exact.head(tail + left);
    double u = t * LN2_SHORT;
    double v = (tail - (t - left)) * LN2 + t * LN2_SHORT_REST;
    z = v + u;
    double w = v - (z - u);
    double c = z - exponentialSeries(z * z);
    double r = (z * c) / (c - 2) - (z * w + w);
    return Exact.scaled(1 - (r - z), n);
  }
}
