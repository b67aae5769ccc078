package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Tick;
import ringbook.units.Num;
import ringbook.units.Numbers;

/** Round places on axes. */
final class Ticks {

  private Ticks() {}

  /** An axis from 0 to a little above {@code most}, with some 5 to 8 round marks. */
  static Axis fromZero(String label, double most) {
    double step = step(most / 6);
    double high = step * Math.ceil(most / step - 1e-9);
    return between(label, 0, high, step);
  }

  /** An axis with a mark every {@code step}. */
  static Axis between(String label, double low, double high, double step) {
    List<Tick> ticks = new ArrayList<>();
    for (int i = (int) Math.ceil(low / step - 1e-9); i * step <= high + 1e-9 * step; i++) {
      ticks.add(new Tick(i * step, Numbers.significant(i * step, 4)));
    }
    return new Axis(label, low, high, ticks);
  }

  /** An axis of f-numbers, one mark a stop; values on it are log2 of the f-number. */
  static Axis stops(String label, double from, double to) {
    double low = Math.floor(2 * Num.log2(from) + 1e-9) / 2;
    double high = Math.ceil(2 * Num.log2(to) - 1e-9) / 2;
    List<Tick> ticks = new ArrayList<>();
    int first = (int) Num.round(2 * low);
    int every = 2 * (high - low) > 12 ? 2 : 1;
    for (int half = first + (every == 2 && first % 2 != 0 ? 1 : 0);
        half <= 2 * high;
        half += every) {
      ticks.add(new Tick(half / 2.0, stop(half)));
    }
    return new Axis(label, low, high, ticks);
  }

  /** The engraved name of the f-number that is so many stops from f/1. */
  private static String stop(int stops) {
    double value = Num.pow(2, stops / 2.0);
    return switch (stops) {
      case 5 -> "5.6";
      case 7 -> "11";
      case 9 -> "22";
      case 11 -> "45";
      case 13 -> "90";
      default -> Numbers.significant(value, 2);
    };
  }

  /** The smallest of 1, 2, 5, 10, ... that is not below {@code least}. */
  static double step(double least) {
    double power = Num.pow(10, Math.floor(Num.log(least) / Num.log(10) + 1e-9));
    double share = least / power;
    return power * (share <= 1 + 1e-9 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
  }
}
