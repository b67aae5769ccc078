package ringbook.plans;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.assess.coverage.Seeing;
import ringbook.plans.Bunch.Form;
import ringbook.units.Angle;

/**
 * Gathers photographs into what a trainer can say in a few words: rings and arcs, strips up one
 * side, rows from above, close-ups of one part. What is left over joins what is nearest.
 */
final class Gathering {

  /** Stations this steep look onto the top. */
  static final double STEEP = Angle.ofDegrees(50).radians();

  /** A run of at least so many stations at one height stays together. */
  private static final int RUN = 8;

  /** Fewer make no strip or row of their own while others are near. */
  private static final int FEW = 3;

  /** Stations of a strip upwards lie within so much of a turn. */
  private static final double UPWARDS_WIDTH = Angle.ofDegrees(24).radians();

  /** Stations of a row lie within so much of height, and those above a vessel within so much. */
  private static final double LEVEL_HEIGHT = Angle.ofDegrees(8).radians();

  private static final double ABOVE_HEIGHT = Angle.ofDegrees(14).radians();

  /** Left-over stations join others no farther away. */
  private static final double NEAR = Angle.ofDegrees(20).radians();

  private final Seeing seeing;
  private final List<Bunch> bunches = new ArrayList<>();

  private Gathering(Seeing seeing) {
    this.seeing = seeing;
  }

  /** Whole rings of those that were chosen as such; what is no ring is left out. */
  static List<Bunch> rings(List<Candidate> chosen) {
    List<Bunch> rings = new ArrayList<>();
    for (List<Candidate> members : byRing(chosen)) {
      if (members.size() >= FEW) {
        rings.add(new Bunch(isSteep(members.get(0)) ? Form.ABOVE : Form.RING, "", members));
      }
    }
    return rings;
  }

  /** Photographs that belong to no ring, each in one bunch of its pose. */
  static List<Bunch> of(Seeing seeing, List<Candidate> all) {
    Gathering gathering = new Gathering(seeing);
    Map<Object, List<Candidate>> poses = new LinkedHashMap<>();
    for (Candidate one : all) {
      poses.computeIfAbsent(one.viewpoint().setup().pose(), key -> new ArrayList<>()).add(one);
    }
    poses.values().forEach(gathering::gather);
    return gathering.bunches;
  }

  private void gather(List<Candidate> all) {
    List<Candidate> loose = new ArrayList<>();
    Map<String, List<Candidate>> close = new LinkedHashMap<>();
    List<Bunch> own = new ArrayList<>();
    for (List<Candidate> members : byRing(all)) {
      Candidate first = members.get(0);
      if (!first.viewpoint().station().target().equals(seeing.middle())) {
        members.forEach(
            one ->
                close
                    .computeIfAbsent(main(seeing, one.view().wells()), key -> new ArrayList<>())
                    .add(one));
      } else if (members.size() >= RUN) {
        own.add(new Bunch(isSteep(first) ? Form.ABOVE : Form.LEVEL, "", members));
      } else {
        loose.addAll(members);
      }
    }
    List<Candidate> above = new ArrayList<>(loose);
    above.removeIf(one -> !isSteep(one));
    loose.removeAll(above);
    bands(above, own);
    lines(loose, own);
    close.forEach((part, members) -> own.add(new Bunch(Form.CLOSE, part, members)));
    bunches.addAll(own);
  }

  private static Iterable<List<Candidate>> byRing(List<Candidate> all) {
    Map<List<Object>, List<Candidate>> byRing = new LinkedHashMap<>();
    for (Candidate one : all) {
      byRing
          .computeIfAbsent(
              List.of(one.ring(), one.viewpoint().station().target()), key -> new ArrayList<>())
          .add(one);
    }
    return byRing.values();
  }

  private static boolean isSteep(Candidate one) {
    return Bunch.elevation(one) >= STEEP;
  }

  /** The part that most of what a photograph sees well belongs to. */
  static String main(Seeing seeing, int[] patches) {
    List<String> names = seeing.surface().patches().parts();
    double[] areas = new double[names.size()];
    int best = 0;
    for (int patch : patches) {
      int part = seeing.surface().patches().part(patch);
      areas[part] += seeing.surface().patches().area(patch);
      best = areas[part] > areas[best] ? part : best;
    }
    return names.get(best);
  }

  /** What looks down from above, by heights; the few join the nearest height. */
  private static void bands(List<Candidate> above, List<Bunch> own) {
    List<Candidate> rest = new ArrayList<>(above);
    List<Candidate> most = window(rest, ABOVE_HEIGHT);
    while (most.size() >= FEW) {
      own.add(new Bunch(Form.ABOVE, "", most));
      rest.removeAll(most);
      most = window(rest, ABOVE_HEIGHT);
    }
    leave(rest, own, Form.ABOVE, ABOVE_HEIGHT);
  }

  /** Strips upwards and rows, always the one with most stations; the few join what is nearest. */
  private static void lines(List<Candidate> loose, List<Bunch> own) {
    List<Candidate> rest = new ArrayList<>(loose);
    while (true) {
      List<Candidate> row = window(rest, LEVEL_HEIGHT);
      List<Candidate> strip = upwards(rest);
      boolean up = strip.size() >= row.size();
      List<Candidate> most = up ? strip : row;
      if (most.size() < FEW) {
        break;
      }
      own.add(new Bunch(up ? Form.UPWARDS : Form.LEVEL, "", most));
      rest.removeAll(most);
    }
    leave(rest, own, Form.LEVEL, LEVEL_HEIGHT);
  }

  /** Lets each join the nearest bunch, or else makes rows of what is left. */
  private static void leave(List<Candidate> few, List<Bunch> own, Form form, double height) {
    List<Candidate> rest = new ArrayList<>();
    for (Candidate one : few) {
      Bunch nearest = null;
      double least = NEAR;
      for (Bunch bunch : own) {
        double away = away(one, bunch);
        if (away < least) {
          least = away;
          nearest = bunch;
        }
      }
      if (nearest == null) {
        rest.add(one);
      } else {
        nearest.members().add(one);
      }
    }
    while (!rest.isEmpty()) {
      List<Candidate> most = window(rest, height);
      own.add(new Bunch(form, "", most));
      rest.removeAll(most);
    }
  }

  /** How far from the words for a bunch a station is, as an angle; endless if it cannot join. */
  private static double away(Candidate one, Bunch bunch) {
    double rise = Math.abs(Bunch.elevation(one) - bunch.elevation().radians());
    double turn = Double.POSITIVE_INFINITY;
    for (Candidate other : bunch.members()) {
      turn = Math.min(turn, Math.abs(Bunch.turn(Bunch.azimuth(other), Bunch.azimuth(one))));
    }
    return switch (bunch.form()) {
      case RING -> rise <= LEVEL_HEIGHT / 4 ? rise : Double.POSITIVE_INFINITY;
      case UPWARDS -> turn;
      case ABOVE -> isSteep(one) ? rise : Double.POSITIVE_INFINITY;
      case LEVEL -> isSteep(one) ? Double.POSITIVE_INFINITY : rise + turn / 10;
      case CLOSE -> Double.POSITIVE_INFINITY;
    };
  }

  /** As many as lie within so much of height. */
  private static List<Candidate> window(List<Candidate> all, double height) {
    List<Candidate> best = List.of();
    for (Candidate low : all) {
      List<Candidate> in = new ArrayList<>(all);
      in.removeIf(
          one -> {
            double rise = Bunch.elevation(one) - Bunch.elevation(low);
            return rise < 0 || rise > height;
          });
      best = in.size() > best.size() ? in : best;
    }
    return best;
  }

  /** As many as stand one above the other, none level with another. */
  private static List<Candidate> upwards(List<Candidate> all) {
    List<Candidate> best = List.of();
    for (Candidate start : all) {
      List<Candidate> in = new ArrayList<>(all);
      in.removeIf(
          one -> {
            double turn = Bunch.turn(Bunch.azimuth(start), Bunch.azimuth(one));
            return turn < 0 || turn > UPWARDS_WIDTH;
          });
      in.sort(Comparator.comparingDouble(Bunch::elevation));
      double rise = Bunch.elevation(in.get(in.size() - 1)) - Bunch.elevation(in.get(0));
      boolean stands = rise > UPWARDS_WIDTH / 2;
      best = stands && in.size() > best.size() ? in : best;
    }
    return best;
  }
}
