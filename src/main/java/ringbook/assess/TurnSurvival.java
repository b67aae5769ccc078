package ringbook.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringbook.units.Angle;
import ringbook.units.Num;

/**
 * How many matches survived a turn on real photographs: the outside check of {@link MatchSurvival}.
 *
 * <p>Measured once for this course on published picture sets (SIFT features, ratio test at 0.8,
 * best in both directions, fundamental matrix by random sampling at 1.5 pixels; 2 pixels on the
 * smallest pictures). Nothing between the measured turns is filled in. Pairs of different objects
 * gave up to 9 tied features by chance, so counts below {@link #CHANCE} mean nothing.
 *
 * @param name what was photographed
 * @param rows from the smallest turn up
 */
public record TurnSurvival(String name, List<Row> rows) {

  /** Counts below this can come about by chance. */
  public static final int CHANCE = 12;

  /**
   * A plain plaster animal. Ring of 47 views, 640 by 480 pixels, from the multi-view stereo set of
   * S. Seitz and others (2006), "dino"; neighbours 7.66° apart, known poses.
   */
  public static final TurnSurvival PLAIN_FIGURE =
      new TurnSurvival(
          "plain figure on a turntable",
          List.of(
              row(7.7, 79, 78),
              row(15.3, 48, 46),
              row(23.0, 29, 26),
              row(30.6, 17, 13),
              row(38.3, 12, 6),
              row(46.0, 9, 4),
              row(53.6, 9, 3),
              row(61.3, 7, 1),
              row(68.9, 7, 0),
              row(76.6, 7, 0),
              row(84.3, 7, 0),
              row(91.9, 7, 0)));

  /**
   * A textured plaster model of a building. 18 views of the same set, "templeRing"; known poses.
   */
  public static final TurnSurvival CARVED_MODEL =
      new TurnSurvival(
          "carved plaster model on a turntable",
          List.of(
              row(7.7, 435, 434),
              row(15.3, 276, 276),
              row(23.0, 157, 157),
              row(30.6, 78.5, 78),
              row(38.3, 35, 35),
              row(46.0, 22, 19),
              row(53.6, 13, 9),
              row(61.3, 12, 5),
              row(68.9, 10, 3),
              row(76.6, 10, 0.5),
              row(84.3, 10, 0),
              row(91.9, 11, 0)));

  /**
   * A richly carved wall. 11 views, reduced to 900 by 600 pixels, from C. Strecha and others
   * (2008), "fountain-P11"; computed poses, pairs gathered by turn.
   */
  public static final TurnSurvival RELIEF_WALL =
      new TurnSurvival(
          "carved wall walked past with the camera in hand",
          List.of(
              row(11.9, 772, 772),
              row(20.9, 365, 363.5),
              row(25.3, 437.5, 434),
              row(38.1, 187, 184),
              row(50.0, 94, 74),
              row(62.3, 61, 52),
              row(75.4, 26, 16.5),
              row(87.0, 16, 5)));

  /**
   * A hundred household objects. 128 by 128 pixels every 5°, from S. Nene, S. Nayar and H. Murase
   * (1996), "COIL-100".
   */
  public static final TurnSurvival HUNDRED_THINGS =
      new TurnSurvival(
          "a hundred household things on a turntable",
          List.of(
              row(5.0, 32),
              row(10.0, 23),
              row(15.0, 18),
              row(20.0, 13),
              row(25.0, 9),
              row(30.0, 8),
              row(40.0, 7),
              row(50.0, 0),
              row(60.0, 0),
              row(70.0, 0),
              row(75.0, 0),
              row(90.0, 0),
              row(120.0, 0),
              row(180.0, 7)));

  /** The 25 of the {@link #HUNDRED_THINGS} with the most features. */
  public static final TurnSurvival TEXTURED_THINGS =
      new TurnSurvival(
          "the 25 most textured of the household things",
          List.of(
              row(5.0, 83),
              row(10.0, 66),
              row(15.0, 46),
              row(20.0, 35),
              row(25.0, 26),
              row(30.0, 21),
              row(40.0, 14),
              row(50.0, 11),
              row(60.0, 8),
              row(70.0, 7),
              row(75.0, 7),
              row(90.0, 7)));

  /** All measured sets. */
  public static final List<TurnSurvival> ALL =
      List.of(PLAIN_FIGURE, CARVED_MODEL, RELIEF_WALL, HUNDRED_THINGS, TEXTURED_THINGS);

  public TurnSurvival {
    rows = List.copyOf(rows);
  }

  /**
   * One turn.
   *
   * @param turn between the two photographs
   * @param tied median count of features tied between two such photographs
   * @param confirmed median count of those that the known poses of the cameras bear out; empty
   *     where the poses are not known
   */
  public record Row(Angle turn, double tied, OptionalDouble confirmed) {

    /** The most trustworthy count. */
    double count() {
      return confirmed.orElse(tied);
    }
  }

  /** The count at each turn over the count at the first; {@code tied} counts. */
  public List<Double> shares() {
    List<Double> shares = new ArrayList<>();
    for (Row row : rows) {
      shares.add(row.tied() / rows.get(0).tied());
    }
    return shares;
  }

  /**
   * The turn after which half of the ties are gone: a straight line is laid through the logarithms
   * of the counts by least squares. Counts are the confirmed ones where there are any; those below
   * {@link #CHANCE} are left out.
   */
  public Angle halving() {
    List<Row> used = new ArrayList<>(rows);
    used.removeIf(row -> row.count() < CHANCE);
    double turns = 0;
    double logs = 0;
    for (Row row : used) {
      turns += row.turn().radians() / used.size();
      logs += Num.log(row.count()) / used.size();
    }
    double together = 0;
    double spread = 0;
    for (Row row : used) {
      double off = row.turn().radians() - turns;
      together += off * (Num.log(row.count()) - logs);
      spread += off * off;
    }
    return new Angle(-Num.log(2) * spread / together);
  }

  private static Row row(double turnDegrees, double tied, double confirmed) {
    return new Row(Angle.ofDegrees(turnDegrees), tied, OptionalDouble.of(confirmed));
  }

  private static Row row(double turnDegrees, double tied) {
    return new Row(Angle.ofDegrees(turnDegrees), tied, OptionalDouble.empty());
  }
}
