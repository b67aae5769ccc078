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
