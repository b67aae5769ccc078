package ringbook.units;

/**
 * Sine, cosine and tangent.
 *
 * <p>The constants and steps are those of fdlibm 5.3, whose notice reads: "Copyright (C) 1993 by
 * Sun Microsystems, Inc. All rights reserved. Developed at SunSoft, a Sun Microsystems, Inc.
 * business. Permission to use, copy, modify, and distribute this software is freely granted,
 * provided that this notice is preserved." Changed here: written in Java; operands of sums and
 * products put in the order that survives a translation to JavaScript; the reduction always checks
 * how much was cancelled and stops at 10^6 radians.
 */
final class Circular {

  private static final double LARGEST = 1e6;
  private static final double QUARTER_TURN = 0.7853981633974483;
  private static final double QUARTER_TURN_REST = 3.061616997868383e-17;

  // A right angle in pieces of 33 bits, each with what follows it.
  private static final double PER_RIGHT_ANGLE = 0.6366197723675814;
  private static final double RIGHT_1 = 1.5707963267341256;
  private static final double RIGHT_1_REST = 6.077100506506192e-11;
  private static final double RIGHT_2 = 6.077100506303966e-11;
  private static final double RIGHT_2_REST = 2.0222662487959506e-21;
  private static final double RIGHT_3 = 2.0222662487111665e-21;
  private static final double RIGHT_3_REST = 8.4784276603689e-32;

  private static final double S1 = -0.16666666666666632;
  private static final double S2 = 0.00833333333332249;
  private static final double S3 = -0.0001984126982985795;
  private static final double S4 = 2.7557313707070068e-06;
  private static final double S5 = -2.5050760253406863e-08;
  private static final double S6 = 1.58969099521155e-10;

  private static final double C1 = 0.0416666666666666;
  private static final double C2 = -0.001388888888887411;
  private static final double C3 = 2.480158728947673e-05;
  private static final double C4 = -2.7557314351390663e-07;
  private static final double C5 = 2.087572321298175e-09;
  private static final double C6 = -1.1359647557788195e-11;

  private static final double[] T = {
    0.3333333333333341,
    0.13333333333320124,
    0.05396825397622605,
    0.021869488294859542,
    0.0088632398235993,
    0.0035920791075913124,
    0.0014562094543252903,
    0.0005880412408202641,
    0.0002464631348184699,
    7.817944429395571e-05,
    7.140724913826082e-05,
    -1.8558637485527546e-05,
    2.590730518636337e-05,
  };

  private Circular() {}

  /** An angle less a whole number of right angles: {@code head + rest}, within an eighth turn. */
  private record Reduced(int rightAngles, double head, double rest) {}

  static double sin(double x) {
    Reduced r = reduced(x);
    return switch (r.rightAngles & 3) {
      case 0 -> kernelSin(r.head, r.rest);
      case 1 -> kernelCos(r.head, r.rest);
      case 2 -> -kernelSin(r.head, r.rest);
      default -> -kernelCos(r.head, r.rest);
    };
  }

  static double cos(double x) {
    Reduced r = reduced(x);
    return switch (r.rightAngles & 3) {
      case 0 -> kernelCos(r.head, r.rest);
      case 1 -> -kernelSin(r.head, r.rest);
      case 2 -> -kernelCos(r.head, r.rest);
      default -> kernelSin(r.head, r.rest);
    };
  }

  static double tan(double x) {
    Reduced r = reduced(x);
    return kernelTan(r.head, r.rest, (r.rightAngles & 1) == 0);
  }

  private static Reduced reduced(double x) {
    double size = Math.abs(x);
    if (size <= QUARTER_TURN || Double.isNaN(x)) {
      return new Reduced(0, x, 0);
    }
    if (size > LARGEST) {
      throw new IllegalArgumentException(
          "an angle must lie within 1000000 rad of zero, got " + Numbers.significant(x, 6));
    }
    double count = Math.floor(size * PER_RIGHT_ANGLE + 0.5);
    double left = size - count * RIGHT_1;
    double tail = count * RIGHT_1_REST;
    double head = left - tail;
    int exponent = Exact.size(size) >> 20;
    if (exponent - (Exact.size(head) >> 20) > 16) {
      double before = left;
      left = before - count * RIGHT_2;
      tail = count * RIGHT_2_REST - ((before - left) - count * RIGHT_2);
      head = left - tail;
      if (exponent - (Exact.size(head) >> 20) > 49) {
        before = left;
        left = before - count * RIGHT_3;
        tail = count * RIGHT_3_REST - ((before - left) - count * RIGHT_3);
        head = left - tail;
      }
    }
    double rest = (left - head) - tail;
    int n = (int) count;
    return x < 0 ? new Reduced(-n, -head, -rest) : new Reduced(n, head, rest);
  }

  private static double kernelSin(double x, double rest) {
    if (Exact.size(x) < 0x3e400000) {
      return x;
    }
    double z = x * x;
    double v = z * x;
    double r = (((S6 * z + S5) * z + S4) * z + S3) * z + S2;
    return x - (((rest * 0.5 - r * v) * z - rest) - v * S1);
  }

  private static double kernelCos(double x, double rest) {
    int size = Exact.size(x);
    double z = x * x;
    double r = (((((C6 * z + C5) * z + C4) * z + C3) * z + C2) * z + C1) * z;
    if (size < 0x3FD33333) {
      return 1 - (z * 0.5 - (r * z - x * rest));
    }
    double quarter = size > 0x3fe90000 ? 0.28125 : Exact.ofHigh(size - 0x00200000);
    double hz = z * 0.5 - quarter;
    double a = 1 - quarter;
    return a - (hz - (r * z - x * rest));
  }

  /** The tangent of {@code x + rest}, or minus one over it. */
  private static double kernelTan(double angle, double angleRest, boolean straight) {
    boolean large = Exact.size(angle) >= 0x3FE59428;
    double x = angle;
    double rest = angleRest;
    if (large) {
      double sign = angle < 0 ? -1 : 1;
      x = (QUARTER_TURN - x * sign) - (rest * sign - QUARTER_TURN_REST);
      rest = 0;
    } else if (straight && Exact.size(x) < 0x3e300000) {
      return x;
    }
    double z = x * x;
    double w = z * z;
    double odd = ((((T[11] * w + T[9]) * w + T[7]) * w + T[5]) * w + T[3]) * w + T[1];
    double even = (((((T[12] * w + T[10]) * w + T[8]) * w + T[6]) * w + T[4]) * w + T[2]) * z;
    double s = z * x;
    double r = ((odd + even) * s + rest) * z + rest;
    r = r + s * T[0];
    double tangent = r + x;
    if (large) {
      double v = straight ? 1 : -1;
      double size = v - (x - (tangent * tangent / (tangent + v) - r)) * 2;
      return angle < 0 ? -size : size;
    }
    return straight ? tangent : minusOneOver(tangent, x, r);
  }

  /** Minus one over {@code x + r}, whose rounded sum is {@code w}. */
  private static double minusOneOver(double w, double x, double r) {
    double z = Exact.head(w);
    double v = r - (z - x);
    double a = -1 / w;
    double t = Exact.head(a);
    double s = t * z + 1;
    return (s + v * t) * a + t;
  }
}
