package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import ringbook.units.Angle;

/** What is wrong with one leg of a plan. */
public sealed interface LegFinding extends Finding {

  /**
   * The photographs of a leg are too far apart to be matched.
   *
   * @param leg its name
   * @param photographs how many it has
   * @param step turn from one to the next
   * @param pieces how many sets it falls into that do not hang together
   */
  record FallsApart(String leg, int photographs, Angle step, int pieces, List<Mend> mends)
      implements LegFinding {
    public FallsApart {
      mends = List.copyOf(mends);
    }

    @Override
    public Gravity gravity() {
      return Gravity.BREAKS;
    }

    @Override
    public String what() {
      return Say.photographs(photographs)
          + ", "
          + Say.degrees(step)
          + " apart, are too few to be matched: they fall into "
          + pieces
          + " pieces";
    }

    @Override
    public String where() {
      return leg;
    }
  }

  /**
   * A ring does not go all round.
   *
   * @param leg its name
   * @param from azimuth of the last photograph before the gap
   * @param width turn from there to the next photograph
   * @param blocked numbers of stations in the gap from which something hides the object
   * @param by what hides it, or keeps a person from standing there; empty if nothing does
   * @param share of the surface that is seen well if the gap is closed, and not now
   */
  record Gap(
      String leg,
      Angle from,
      Angle width,
      List<Integer> blocked,
      List<String> by,
      double share,
      List<Mend> mends)
      implements LegFinding {
    public Gap {
      blocked = List.copyOf(blocked);
      by = List.copyOf(by);
      mends = List.copyOf(mends);
    }

    @Override
    public Gravity gravity() {
      return share > 0.01 ? Gravity.HOLE : Gravity.WEAK;
    }

    @Override
    public String what() {
      String why = by.isEmpty() ? "" : ", behind " + String.join(" and ", by);
      return "no photograph over "
          + Say.degrees(width)
          + why
          + (share > 0 ? "; " + Say.percent(share) + " of the surface suffers" : "");
    }

    @Override
    public String where() {
      return leg + " " + new Around(from, width).words();
    }
  }

  /**
   * A leg is focused at the wrong distance.
   *
   * @param leg its name
   * @param focus how far away it is focused, in words
   * @param soft share of what its photographs see that is blurred
   */
  record OutOfFocus(String leg, String focus, double soft, double share, List<Mend> mends)
      implements LegFinding {
    public OutOfFocus {
      mends = List.copyOf(mends);
    }

    @Override
    public Gravity gravity() {
      return soft > 0.9 ? Gravity.HOLE : Gravity.WEAK;
    }

    @Override
    public String what() {
      return "focused at "
          + focus
          + ", "
          + Say.percent(soft)
          + " of what its photographs see is blurred";
    }

    @Override
    public String where() {
      return leg;
    }
  }

  /**
   * Photographs that see nothing well.
   *
   * @param leg their leg
   * @param stations their numbers
   * @param by what is in the way; empty if they are blurred, too slanted or look past it
   */
  record Blind(String leg, List<Integer> stations, List<String> by, double share)
      implements LegFinding {
    public Blind {
      stations = List.copyOf(stations);
      by = List.copyOf(by);
    }

    @Override
    public String what() {
      return by.isEmpty()
          ? "shows nothing of the object sharp and squarely enough"
          : "the object is hidden by " + String.join(" and ", by);
    }

    @Override
    public String where() {
      List<String> numbers = new ArrayList<>();
      for (int station : stations) {
        numbers.add(String.valueOf(station));
      }
      return leg + (numbers.size() == 1 ? " station " : " stations ") + String.join(", ", numbers);
    }
  }
}
