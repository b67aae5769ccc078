package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.shots.Leg.Kind;
import ringbook.shots.Pose;
import ringbook.units.Angle;

/** Photographs that become one leg. */
final class Bunch {

  /** What its photographs have in common; in the order of shooting. */
  enum Form {
    /** All round, or as far as the room lets, evenly. */
    RING(Kind.RING),
    /** At about one height, an arc or with wide steps. */
    LEVEL(Kind.DETAIL),
    /** One above the other on one side, from low to high. */
    UPWARDS(Kind.STRIP),
    /** From high above, at about one height. */
    ABOVE(Kind.TOP),
    /** Close-ups of one part. */
    CLOSE(Kind.DETAIL);

    private final Kind kind;

    Form(Kind kind) {
      this.kind = kind;
    }

    Kind kind() {
      return kind;
    }
  }

  /** Differences of height or step that nobody notices, in radians. */
  private static final double LEVEL = Angle.ofDegrees(1).radians();

  /** So far apart two side by side stand at most. */
  private static final double ABREAST = Angle.ofDegrees(13).radians();

  private final Form form;
  private final String part;
  private List<Candidate> members;

  /**
   * Photographs of one pose.
   *
   * @param part what close-ups look at; otherwise empty
   * @param members at least one
   */
  Bunch(Form form, String part, List<Candidate> members) {
    this.form = form;
    this.part = part;
    this.members = new ArrayList<>(members);
  }

  Form form() {
    return form;
  }

  String part() {
    return part;
  }

  Pose pose() {
    return first().viewpoint().setup().pose();
  }

  List<Candidate> members() {
    return members;
  }

  void set(List<Candidate> others) {
    members = new ArrayList<>(others);
  }

  Candidate first() {
    return members.get(0);
  }

  int size() {
    return members.size();
  }

  /** Whether it is a whole ring. */
  boolean isRing() {
    return form == Form.RING;
  }

  /**
   * Whether it can be said with one step: at one height with the same turn from each to the next,
   * or one above the other in even steps; close-ups and single ones need no step, rings are even as
   * they are made.
   */
  boolean isEven() {
    if (form == Form.RING || form == Form.CLOSE || size() == 1) {
      return true;
    }
    if (form == Form.UPWARDS) {
      return isStrip();
    }
    double[] heights = heights(members);
    return heights[1] - heights[0] < LEVEL && Steps.of(members).areEven();
  }

  /** How many photographs a strip has at each height: 1, or 2 side by side; 0 if it differs. */
  int abreast() {
    int first = 0;
    int levels = 0;
    List<Double> rising = rising();
    for (int i = 0; i < rising.size(); i++) {
      levels += i == 0 || rising.get(i) - rising.get(i - 1) > LEVEL ? 1 : 0;
      first += rising.get(i) - rising.get(0) < LEVEL ? 1 : 0;
    }
    return levels * first == size() && first < 3 ? first : 0;
  }

  private boolean isStrip() {
    int abreast = abreast();
    if (abreast == 0 || Arc.of(members).width() > (abreast == 1 ? LEVEL : ABREAST)) {
      return false;
    }
    List<Double> rising = rising();
    double mean = (rising.get(size() - 1) - rising.get(0)) / Math.max(1, size() / abreast - 1);
    for (int i = abreast; i < rising.size(); i++) {
      if (Math.abs(rising.get(i) - rising.get(i - abreast) - mean) > LEVEL) {
        return false;
      }
    }
    return true;
  }

  private List<Double> rising() {
    List<Double> rising = new ArrayList<>();
    members.forEach(one -> rising.add(elevation(one)));
    rising.sort(null);
    return rising;
  }

  /** The lowest and the highest elevation, in radians. */
  static double[] heights(List<Candidate> members) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Candidate one : members) {
      low = Math.min(low, elevation(one));
      high = Math.max(high, elevation(one));
    }
    return new double[] {low, high};
  }

  /** The mean of its elevations. */
  Angle elevation() {
    double sum = 0;
    for (Candidate one : members) {
      sum += elevation(one);
    }
    return new Angle(sum / members.size());
  }

  static double elevation(Candidate one) {
    return one.ring().elevation().radians();
  }

  static double azimuth(Candidate one) {
    return one.viewpoint().station().azimuth().radians();
  }

  /** From one direction to another the short way, from −π up to π. */
  static double turn(double from, double to) {
    double turns = (to - from) / (2 * Math.PI);
    return 2 * Math.PI * (turns - Math.floor(turns + 0.5));
  }
}
