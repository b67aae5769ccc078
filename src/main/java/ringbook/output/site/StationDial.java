package ringbook.output.site;

import java.util.ArrayList;
import java.util.List;
import ringbook.units.Angle;
import ringbook.units.Num;
import ringbook.units.Numbers;

/**
 * The round navigation: the stations as numbered ticks on a ring that point at its middle, the way
 * camera stations stand round an object. Units are those of the drawing, the middle is (0, 0), the
 * first station stands at the top and the reader walks clockwise.
 *
 * @param ticks the stations in order
 * @param walked path data of the arc from the first station to the current one; empty at the first
 * @param here the current tick; null on the first page of the site
 */
public record StationDial(List<Tick> ticks, String walked, Tick here) {

  /** Radius of the ring. */
  static final double RING = 100;

  /** Radius on which the marks stand. */
  static final double MARKS = 129;

  /** Letters that fit side by side in the middle. */
  private static final int LINE = 13;

  /** Keeps the ticks. */
  public StationDial {
    ticks = List.copyOf(ticks);
  }

  /**
   * One station on the ring.
   *
   * @param station the station
   * @param turn degrees clockwise from the top
   * @param x of the middle of its mark
   * @param y of the middle of its mark
   * @param lines its title, broken for the middle of the dial
   * @param top y of the first line
   * @param current whether the reader is here
   */
  public record Tick(
      Station station,
      String turn,
      String x,
      String y,
      List<String> lines,
      String top,
      boolean current) {}

  /** The dial of these stations; {@code here} is the index of the current one, or -1. */
  static StationDial of(List<Station> stations, int here) {
    List<Tick> ticks = new ArrayList<>();
    for (int i = 0; i < stations.size(); i++) {
      ticks.add(tick(stations.get(i), 360.0 * i / stations.size(), i == here));
    }
    String walked = here > 0 ? arc(360.0 * here / stations.size()) : "";
    return new StationDial(ticks, walked, here < 0 ? null : ticks.get(here));
  }

  private static Tick tick(Station station, double turn, boolean current) {
    List<String> lines = broken(station.title());
    return new Tick(
        station,
        Numbers.fixed(turn, 2),
        x(turn, MARKS),
        y(turn, MARKS),
        lines,
        Numbers.fixed(6 - 9.0 * (lines.size() - 1), 1),
        current);
  }

  private static String arc(double turn) {
    String large = turn > 180 ? "1" : "0";
    String end = x(turn, RING) + " " + y(turn, RING);
    return "M0 -100A100 100 0 " + large + " 1 " + end;
  }

  private static String x(double turn, double radius) {
    return Numbers.fixed(radius * Num.sin(Angle.ofDegrees(turn).radians()), 2);
  }

  private static String y(double turn, double radius) {
    return Numbers.fixed(-radius * Num.cos(Angle.ofDegrees(turn).radians()), 2);
  }

  /** Breaks a title at its spaces; a fourth line and what follows give way to an ellipsis. */
  private static List<String> broken(String title) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : title.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > LINE) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines.size() <= 4 ? lines : List.of(lines.get(0), lines.get(1), lines.get(2), "…");
  }
}
