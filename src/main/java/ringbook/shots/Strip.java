package ringbook.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringbook.geometry.Vec3;
import ringbook.optics.Framing;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Require;
import ringbook.units.Whole;

/**
 * A straight row of photographs side by side, all looking square at a flat face.
 *
 * @param footprint what one photograph covers of the face along the row, above 0
 * @param overlap share of it that the next one covers too, at least 0 and below 1
 * @param length of the face along the row, above 0
 */
public record Strip(Length footprint, double overlap, Length length) {

  /** Half a footprint, less what binary fractions take away. */
  private static final double HALF = 0.5 - 1e-9;

  public Strip {
    Require.positive("footprint", "m", footprint.metres());
    Require.positive("length of the strip", "m", length.metres());
    if (!(overlap >= 0 && overlap < 1)) {
      throw new IllegalArgumentException(
          "overlap must be at least 0 and below 1, got " + Numbers.shortest(overlap));
    }
  }

  /** Share that two photographs have in common, {@code 1 − B/W}; 0 if nothing. */
  public static double overlapOf(Length base, Length footprint) {
    return Math.max(0, 1 - base.over(footprint));
  }

  /**
   * Frames if the first and the last have an end of the face in their middle: {@code ⌈L/B⌉ + 1}.
   */
  public static double centred(Length length, Length base) {
    return Whole.up(length.over(base)) + 1;
  }

  /** Angle between the lines of sight to a point midway: {@code 2 atan(B / 2Z)}. */
  public static Angle rayAngle(double baseRatio) {
    return new Angle(2 * Num.atan(baseRatio / 2));
  }

  /** Way from photograph to photograph: {@code (1 − q) W}. */
  public Length base() {
    return footprint.times(1 - overlap);
  }

  /** Fewest frames that cover the face from end to end: {@code ⌈(L − W)/B⌉ + 1}. */
  public double fewest() {
    return Framing.frames(length, footprint, overlap);
  }

  /**
   * Frames so that every spot is in at least two, which takes one base more at either end: {@code
   * ⌈(L + 2B − W)/B⌉ + 1}. Empty if the overlap is less than half: then no number of frames does
   * it.
   */
  public OptionalDouble twice() {
    if (overlap < HALF) {
      return OptionalDouble.empty();
    }
    double steps = length.plus(base().times(2)).minus(footprint).over(base());
    return OptionalDouble.of(Math.max(2, Whole.up(steps) + 1));
  }

  /**
   * Where a row runs.
   *
   * @param middle of the face, in metres, in the frame of the room
   * @param along the row, of length 1
   * @param outwards from the face to the lens, of length 1, square to the row
   * @param standoff from the face to the lens, above 0
   * @param frames how many, at least 1
   */
  public record Row(Vec3 middle, Vec3 along, Vec3 outwards, Length standoff, int frames) {
    public Row {
      Require.positive("standoff", "m", standoff.metres());
      Require.atLeast("frames in a row", 1, frames);
    }
  }

  /** The stations of a row, a base apart, as many on one side of the middle as on the other. */
  public List<Station> stations(Row row) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < row.frames(); i++) {
      double shift = (i - (row.frames() - 1) / 2.0) * base().metres();
      Vec3 target = row.middle().plus(row.along().times(shift));
      Vec3 position = target.plus(row.outwards().times(row.standoff().metres()));
      stations.add(Station.at(i + 1, position, target));
    }
    return List.copyOf(stations);
  }

  /** Frames that hold any one spot inside the strip, at least: {@code ⌊1 / (1 − q)⌋}. */
  public double imagesPerPoint() {
    return Whole.down(1 / (1 - overlap));
  }
}
