package ringbook.plans;

import java.util.OptionalDouble;
import ringbook.shots.Pose;
import ringbook.units.Require;

/**
 * One run of photographs as a person writes it down: {@code 24 at 15°}.
 *
 * @param kind what sort of run
 * @param photos how many photographs, 1 to {@link #MOST}
 * @param pose how the object lies
 * @param where at which height, how far away, over which directions
 */
public record WrittenRun(Kind kind, int photos, Pose pose, Where where) {

  /** More photographs in one run are a slip of the pen. */
  public static final int MOST = 400;

  /** What sort of run it is. */
  public enum Kind {
    /** Round the object at one elevation. */
    RING("rings"),
    /** Round the object with the lens as low as it can be held. */
    LOW_RING("low ring"),
    /** An arc from one side over the top to the other. */
    TOP("top"),
    /** A row side by side, looking square at one side of the object. */
    STRIP("strip");

    private final String label;

    Kind(String label) {
      this.label = label;
    }

    /** The word that stands before its runs. */
    public String label() {
      return label;
    }
  }

  /** Which directions round the object a run takes. */
  public enum Sort {
    /** All round. */
    ALL(""),
    /** Evenly over an arc, a photograph at either end. */
    OVER("from"),
    /** All round, but those in an arc are left out. */
    WITHOUT("without"),
    /** Of a strip: which way its face looks. */
    FACING("facing");

    private final String word;

    Sort(String word) {
      this.word = word;
    }

    /** The word that stands before its directions; empty for all round. */
    public String word() {
      return word;
    }
  }

  /**
   * Directions in degrees from +x towards +y, as in the ring plan.
   *
   * @param sort what the two are
   * @param from where the arc begins; the direction of {@link Sort#FACING}
   * @param to where it ends, going round from +x towards +y
   */
  public record Directions(Sort sort, double from, double to) {

    /** All round. */
    public static final Directions ALL = new Directions(Sort.ALL, 0, 0);

    /** How far the arc runs, above 0 and up to 360 degrees. */
    double width() {
      double turns = (to - from) / 360;
      double part = turns - Math.floor(turns);
      return part > 0 ? 360 * part : 360;
    }
  }

  /**
   * Where a run stands.
   *
   * @param elevation in degrees above level, −90 to 90; empty for what the kind says by itself
   * @param standoff metres from the lens to the middle of the object; empty for the usual distance
   * @param directions round the object
   */
  public record Where(OptionalDouble elevation, OptionalDouble standoff, Directions directions) {

    /** The usual place of a kind. */
    static final Where USUAL =
        new Where(OptionalDouble.empty(), OptionalDouble.empty(), Directions.ALL);
  }

  public WrittenRun {
    Require.atLeast("photographs of a run", 1, photos);
  }

  WrittenRun with(Where other) {
    return new WrittenRun(kind, photos, pose, other);
  }

  WrittenRun elevated(double degrees) {
    return with(new Where(OptionalDouble.of(degrees), where.standoff(), where.directions()));
  }

  WrittenRun away(double metres) {
    return with(new Where(where.elevation(), OptionalDouble.of(metres), where.directions()));
  }

  WrittenRun towards(Directions directions) {
    return with(new Where(where.elevation(), where.standoff(), directions));
  }
}
