package ringbook.units;

/**
 * The inverse circular functions.
 *
 * <p>The constants and steps are those of fdlibm 5.3, whose notice reads: "Copyright (C) 1993 by
 * Sun Microsystems, Inc. All rights reserved. Developed at SunSoft, a Sun Microsystems, Inc.
 * business. Permission to use, copy, modify, and distribute this software is freely granted,
 * provided that this notice is preserved." Changed here: written in Java; operands of sums and
 * products put in the order that survives a translation to JavaScript.
 */
final class Arc {

  private static final double PI_REST = 1.2246467991473532e-16;
  private static final double RIGHT = 1.5707963267948966;
  private static final double RIGHT_REST = 6.123233995736766e-17;
  private static final double EIGHTH = 0.7853981633974483;

  // Arc tangents of 0.5, 1, 1.5 and infinity, each with what follows the last bit.
  private static final double[] ATAN = {
    0.4636476090008061, EIGHTH, 0.982793723247329, RIGHT,
  };
  private static final double[] ATAN_REST = {
    2.2698777452961687e-17, 3.061616997868383e-17, 1.3903311031230998e-17, RIGHT_REST,
  };
  private static final double[] A = {
    0.3333333333333293,
    -0.19999999999876483,
    0.14285714272503466,
    -0.11111110405462356,
    0.09090887133436507,
    -0.0769187620504483,
    0.06661073137387531,
    -0.058335701337905735,
    0.049768779946159324,
    -0.036531572744216916,
    0.016285820115365782,
  };

  private static final double P0 = 0.16666666666666666;
  private static final double P1 = -0.3255658186224009;
  private static final double P2 = 0.20121253213486293;
  private static final double P3 = -0.04005553450067941;
  private static final double P4 = 0.0007915349942898145;
  private static final double P5 = 3.479331075960212e-05;
  private static final double Q1 = -2.403394911734414;
  private static final double Q2 = 2.0209457602335057;
  private static final double Q3 = -0.6882839716054533;
  private static final double Q4 = 0.07703815055590194;

  private Arc() {}

  static double atan(double x) {
    int size = Exact.size(x);
    if (Double.isNaN(x) || size < 0x3e200000) {
      return x;
    }
    double a = Math.abs(x);
    double angle;
    if (size >= 0x44100000) {
      angle = RIGHT + RIGHT_REST;
    } else if (size < 0x3fdc0000) {
      return x - series(x) * x;
    } else if (size < 0x3fe60000) {
      angle = near(0, (a * 2 - 1) / (a + 2));
    } else if (size < 0x3ff30000) {
      angle = near(1, (a - 1) / (a + 1));
    } else if (size < 0x40038000) {
      angle = near(2, (a - 1.5) / (a * 1.5 + 1));
    } else {
      angle = near(3, -1 / a);
    }
    return x < 0 ? -angle : angle;
  }

  private static double near(int place, double x) {
    return ATAN[place] - ((series(x) * x - ATAN_REST[place]) - x);
  }

  private static double series(double x) {
    double z = x * x;
    double w = z * z;
    double odd = (((((A[10] * w + A[8]) * w + A[6]) * w + A[4]) * w + A[2]) * w + A[0]) * z;
    double even = ((((A[9] * w + A[7]) * w + A[5]) * w + A[3]) * w + A[1]) * w;
    return odd + even;
  }

  static double atan2(double y, double x) {
    if (Double.isNaN(x) || Double.isNaN(y)) {
      return Double.NaN;
    }
    boolean below = Exact.high(y) < 0;
    double size = Exact.high(x) < 0 ? behind(Math.abs(y), -x) : ahead(Math.abs(y), x);
    return below ? -size : size;
  }

  private static double ahead(double y, double x) {
    if (y == 0) {
      return 0;
    }
    if (y == Double.POSITIVE_INFINITY && x == Double.POSITIVE_INFINITY) {
      return EIGHTH;
    }
    return steep(y, x) ? RIGHT : atan(y / x);
  }

  private static double behind(double y, double x) {
    if (y == 0) {
      return Math.PI;
    }
    if (y == Double.POSITIVE_INFINITY && x == Double.POSITIVE_INFINITY) {
      return 3 * EIGHTH;
    }
    if (steep(y, x)) {
      return RIGHT;
    }
    double slope = (Exact.size(y) >> 20) - (Exact.size(x) >> 20) < -60 ? 0 : atan(y / x);
    return Math.PI - (slope - PI_REST);
  }

  private static boolean steep(double y, double x) {
    return x == 0 || (Exact.size(y) >> 20) - (Exact.size(x) >> 20) > 60;
  }

  static double asin(double x) {
    double a = Math.abs(x);
    if (!(a <= 1)) {
      return Double.NaN;
    }
    if (a < 0.5) {
      return Exact.size(x) < 0x3e400000 ? x : quotient(x * x) * x + x;
    }
    double t = (1 - a) * 0.5;
    double w = quotient(t);
    double s = Math.sqrt(t);
    double angle;
    if (Exact.size(x) >= 0x3FEF3333) {
      angle = RIGHT - ((w * s + s) * 2 - RIGHT_REST);
    } else {
      double head = Exact.head(s);
      double c = (t - head * head) / (s + head);
      double p = w * s * 2 - (RIGHT_REST - c * 2);
      double q = EIGHTH - head * 2;
      angle = EIGHTH - (p - q);
    }
    return x < 0 ? -angle : angle;
  }

  static double acos(double x) {
    double a = Math.abs(x);
    if (!(a <= 1)) {
      return Double.NaN;
    }
    if (a < 0.5) {
      return RIGHT - (x - (RIGHT_REST - quotient(x * x) * x));
    }
    double z = (1 - a) * 0.5;
    double s = Math.sqrt(z);
    double r = quotient(z);
    if (x < 0) {
      double w = r * s - RIGHT_REST;
      return Math.PI - (w + s) * 2;
    }
    if (z == 0) {
      return 0;
    }
    double head = Exact.head(s);
    double c = (z - head * head) / (s + head);
    double w = r * s + c;
    return (w + head) * 2;
  }

  private static double quotient(double z) {
    double p = (((((P5 * z + P4) * z + P3) * z + P2) * z + P1) * z + P0) * z;
    double q = (((Q4 * z + Q3) * z + Q2) * z + Q1) * z + 1;
    return p / q;
  }
}
