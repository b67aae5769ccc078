package ringbook.assess.findings;

import java.util.List;
import ringbook.units.Words;

/** A place on the object that is not seen, or not well enough. */
public sealed interface PlaceFinding extends Finding {

  /** A place that is named. */
  sealed interface OfRegion extends PlaceFinding {

    /** The place. */
    Region region();

    @Override
    default double share() {
      return region().share();
    }

    @Override
    default String where() {
      return region().where();
    }
  }

  /** A place that no photograph sees. */
  record Unseen(Region region, List<Mend> mends) implements OfRegion {
    public Unseen {
      mends = List.copyOf(mends);
    }

    @Override
    public Gravity gravity() {
      return Gravity.HOLE;
    }

    @Override
    public String what() {
      return Say.percent(share()) + " of the surface is not seen: " + region.main().words();
    }
  }

  /** A place that is seen, but not well enough. */
  record Thin(Region region, List<Mend> mends) implements OfRegion {
    public Thin {
      mends = List.copyOf(mends);
    }

    @Override
    public String what() {
      return Say.percent(share()) + " of the surface is thinly seen: " + region.main().words();
    }
  }

  /**
   * A place that cannot be seen as the object stands, such as the underside.
   *
   * @param wanted whether the aim asks for a second pose
   */
  record NeedsPose(Region region, boolean wanted, List<Mend> mends) implements OfRegion {
    public NeedsPose {
      mends = List.copyOf(mends);
    }

    @Override
    public Gravity gravity() {
      return wanted ? Gravity.HOLE : Gravity.NOTE;
    }

    @Override
    public String what() {
      return Say.percent(share())
          + " of the surface cannot be seen in this pose: second pose needed";
    }

    @Override
    public String where() {
      return region.rests() ? "the underside (" + region.where() + ")" : region.where();
    }
  }

  /**
   * Places too small to name one by one.
   *
   * @param places how many
   */
  record SmallPlaces(int places, double share) implements PlaceFinding {

    @Override
    public Gravity gravity() {
      return Gravity.NOTE;
    }

    @Override
    public String what() {
      return Say.percent(share) + " of the surface is not seen well in small spots";
    }

    @Override
    public String where() {
      return Words.count(places, "small place");
    }
  }
}
