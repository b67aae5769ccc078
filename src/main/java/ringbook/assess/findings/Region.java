package ringbook.assess.findings;

import java.util.List;
import ringbook.assess.coverage.PatchClass;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Lengths;

/**
 * Patches side by side that share a trouble: one place on the object.
 *
 * @param patches their numbers, rising
 * @param main the class that most of its area has
 * @param share of the whole surface, 0 to 1
 * @param part name of the part it lies on; empty where the object has no parts by name
 * @param from azimuth where it begins, from +x towards +y as in the ring plan
 * @param width how far it runs round; a full turn for all round
 * @param low lowest spot above the table
 * @param high highest spot above the table
 * @param middle of its patches, in metres, standing in the room
 * @param lengths in which measures lengths are told
 * @param facing mean of its normals; shorter than 1 where it bends
 */
public record Region(
    List<Integer> patches,
    PatchClass main,
    double share,
    String part,
    Angle from,
    Angle width,
    Length low,
    Length high,
    Vec3 middle,
    Lengths lengths,
    Vec3 facing) {

  /** Upward component of a normal below which it points at the table. */
  static final double DOWN = -0.8;

  /** Metres above the table below which a face that points at it rests on it. */
  static final double ON_TABLE = 0.005;

  public Region {
    patches = List.copyOf(patches);
  }

  Around around() {
    return new Around(from, width);
  }

  int[] numbers() {
    return patches.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Whether it lies on the table. */
  public boolean rests() {
    return facing.z() < DOWN && high.metres() < ON_TABLE;
  }

  /** Where it is, in words. */
  public String where() {
    String height =
        high.minus(low).metres() < 0.005
            ? lengths.roughly(low.metres()) + " above the table"
            : lengths.roughly(low.metres())
                + " to "
                + lengths.roughly(high.metres())
                + " above the table";
    String name = part.isEmpty() ? "the surface" : part;
    return name + ", " + around().words() + ", " + height;
  }
}
