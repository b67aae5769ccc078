package ringbook.assess.findings;

import java.util.List;
import ringbook.units.Length;

/** What is wrong with the photographs of a plan as a set. */
public sealed interface SetFinding extends Finding {

  /**
   * Two parts of the set share too little to be matched, though each hangs together.
   *
   * @param one a leg at the widest break
   * @param other the leg on the other side
   * @param matchable the most that two photographs across the break have in common
   * @param needed how much it takes
   * @param poses whether the break is between two poses of the object
   */
  record NotTied(
      String one, String other, double matchable, double needed, boolean poses, List<Mend> mends)
      implements SetFinding {
    public NotTied {
      mends = List.copyOf(mends);
    }

    @Override
    public Gravity gravity() {
      return Gravity.BREAKS;
    }

    @Override
    public String what() {
      return (poses ? "the second pose is not tied to the first" : "the two are not tied together")
          + ": at best "
          + Say.percent(matchable)
          + " of a photograph can be matched across, "
          + more();
    }

    private String more() {
      String percent = Say.percent(needed);
      return matchable < needed && percent.equals(Say.percent(matchable))
          ? "a little more is needed"
          : percent + " are needed";
    }

    @Override
    public String where() {
      return one + " and " + other;
    }
  }

  /**
   * All hangs together, but on so few photographs that losing them splits it.
   *
   * @param photographs any one of which does, by leg and number
   */
  record HangsOn(List<String> photographs, List<Mend> mends) implements SetFinding {

    /** More than this many are not named one by one. */
    private static final int NAMED = 4;

    public HangsOn {
      photographs = List.copyOf(photographs);
      mends = List.copyOf(mends);
    }

    @Override
    public String what() {
      return photographs.size() == 1
          ? "this photograph alone holds the set together; if it is spoilt, the set splits"
          : "any one of these " + photographs.size() + " photographs spoilt splits the set";
    }

    @Override
    public String where() {
      int size = photographs.size();
      return size <= NAMED
          ? String.join(", ", photographs)
          : photographs.get(0) + " to " + photographs.get(size - 1);
    }
  }

  /**
   * Most of the object is shown too coarsely.
   *
   * @param shown smallest detail that half of the surface shows
   * @param wanted smallest detail wanted
   */
  record TooCoarse(Length shown, Length wanted, double share, List<Mend> mends)
      implements SetFinding {
    public TooCoarse {
      mends = List.copyOf(mends);
    }

    @Override
    public String what() {
      return Say.percent(share)
          + " of the surface is shown too coarsely: details of "
          + Say.fine(shown)
          + ", where "
          + Say.fine(wanted)
          + " is wanted";
    }

    @Override
    public String where() {
      return "the whole plan";
    }
  }
}
