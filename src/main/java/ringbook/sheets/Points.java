package ringbook.sheets;

import java.util.Arrays;
import java.util.List;

/**
 * How the points of a class are spread.
 *
 * <p>Mean and standard deviation by their definitions, the latter of a sample (divided by n − 1).
 * Quantiles: the value at place p (n + 1) of the sorted points, in between by proportion, no
 * further than the ends; textbooks call it the Weibull position (type 6 of Hyndman and Fan, "Sample
 * Quantiles in Statistical Packages", The American Statistician 50, 1996; from memory).
 */
public final class Points {

  private final long[] learnersByQuarters;
  private final int most;
  private final long learners;

  Points(long[] learnersByQuarters, int most) {
    this.learnersByQuarters = learnersByQuarters.clone();
    this.most = most;
    long all = 0;
    for (long count : learnersByQuarters) {
      all += count;
    }
    this.learners = all;
  }

  /** The most points that can be reached. */
  public int most() {
    return most;
  }

  /** How many learners. */
  public long learners() {
    return learners;
  }

  /** The mean; 0 without learners. */
  public double mean() {
    double sum = 0;
    for (int q = 0; q < learnersByQuarters.length; q++) {
      sum += q / 4.0 * learnersByQuarters[q];
    }
    return learners == 0 ? 0 : sum / learners;
  }

  /** The standard deviation; 0 for fewer than two learners. */
  public double deviation() {
    double mean = mean();
    double sum = 0;
    for (int q = 0; q < learnersByQuarters.length; q++) {
      sum += (q / 4.0 - mean) * (q / 4.0 - mean) * learnersByQuarters[q];
    }
    return learners < 2 ? 0 : Math.sqrt(sum / (learners - 1));
  }

  /**
   * The points that a share of the learners does not exceed.
   *
   * @param share 0 to 1; 0.5 for the median
   */
  public double quantile(double share) {
    if (learners == 0) {
      return 0;
    }
    double place = Math.max(1.0, Math.min((double) learners, share * (learners + 1.0)));
    long below = (long) Math.floor(place);
    double low = sorted(below);
    return low + (place - below) * (sorted(Math.min(learners, below + 1)) - low);
  }

  /** The points at a place of the sorted list, from 1. */
  private double sorted(long place) {
    long seen = 0;
    for (int q = 0; q < learnersByQuarters.length; q++) {
      seen += learnersByQuarters[q];
      if (seen >= place) {
        return q / 4.0;
      }
    }
    throw new IllegalArgumentException("no such place: " + place);
  }

  /**
   * How many learners fall into each of some classes of equal width, from no points to all. A class
   * holds its lower end, the last one also its upper end.
   */
  public List<Long> classes(int count) {
    long[] found = new long[count];
    for (int q = 0; q < learnersByQuarters.length; q++) {
      long place = most == 0 ? 0 : (long) q * count / (4L * most);
      found[(int) Math.min(count - 1, place)] += learnersByQuarters[q];
    }
    return Arrays.stream(found).boxed().toList();
  }
}
