package ringbook.meshes;

/**
 * How large a mesh file may be: enough for a fine model of an object, little enough for any
 * computer.
 */
public final class MeshLimits {

  /** Bytes of the file. */
  public static final long MOST_BYTES = 400_000_000;

  /** Triangles, after polygons have been cut up. */
  public static final int MOST_TRIANGLES = 1_000_000;

  /** Points as they stand in the file. */
  public static final int MOST_POINTS = 3 * MOST_TRIANGLES;

  static final String MOST_TRIANGLES_TOLD = MOST_TRIANGLES / 1_000_000 + " million triangles";

  static final String MOST_POINTS_TOLD = MOST_POINTS / 1_000_000 + " million points";

  /** Characters of one line of a text file. */
  static final int MOST_IN_LINE = 10_000;

  private MeshLimits() {}
}
