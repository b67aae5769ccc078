package ringbook.assess.coverage;

/** How well a set of photographs sees a patch, and if not well, why. */
public enum PatchClass {
  /** At least {@link Limits#VIEWS} tied views, with rays far enough apart, finely enough. */
  WELL(Group.WELL, "seen well"),
  /** One photograph sees it. */
  ONE_VIEW(Group.THIN, "seen by one photograph only"),
  /** Two or more see it, but no two from so near to each other that they can be matched. */
  TOO_FAR(Group.THIN, "seen from directions too far apart to match"),
  /** Only two that can be matched see it: nothing checks the point they give. */
  TWO_VIEWS(Group.THIN, "matched between two photographs only"),
  /** All matched views come from nearly one direction: its depth is weak. */
  TOO_CLOSE(Group.THIN, "seen from nearly one direction only"),
  /** Even the best photograph shows it too coarsely for the detail wanted. */
  COARSE(Group.THIN, "shown too coarsely for the detail wanted"),
  /** Too few sharp views, and enough with the blurred ones. */
  SOFT(Group.THIN, "sharp in too few photographs"),
  /** Only blurred views. */
  UNSEEN_SOFT(Group.UNSEEN, "never in focus"),
  /** In the picture, but always more slanted than the limit. */
  UNSEEN_SLANTED(Group.UNSEEN, "only seen too slanted"),
  /** Table, wall or furniture is always in the way. */
  UNSEEN_BLOCKED(Group.UNSEEN, "behind the table or things in the room"),
  /** Another part of the object is always in the way. */
  UNSEEN_HIDDEN(Group.UNSEEN, "behind other parts of the object"),
  /** Never within the picture. */
  UNSEEN_OUT_OF_FRAME(Group.UNSEEN, "never inside the picture"),
  /** No station on that side. */
  UNSEEN_AWAY(Group.UNSEEN, "no station on that side");

  /** How well at all. */
  public enum Group {
    /** Well. */
    WELL,
    /** Somehow. */
    THIN,
    /** Not at all. */
    UNSEEN
  }

  private final Group group;
  private final String words;

  PatchClass(Group group, String words) {
    this.group = group;
    this.words = words;
  }

  /** How well at all. */
  public Group group() {
    return group;
  }

  /** What it means, in a few plain words. */
  public String words() {
    return words;
  }

  /** The nearest miss among the looks in a mask, for a patch that no station sees well. */
  static PatchClass unseen(int mask) {
    if ((mask & Look.SOFT.bit()) != 0) {
      return UNSEEN_SOFT;
    }
    if ((mask & Look.SLANTED.bit()) != 0) {
      return UNSEEN_SLANTED;
    }
    if ((mask & Look.BLOCKED.bit()) != 0) {
      return UNSEEN_BLOCKED;
    }
    if ((mask & Look.HIDDEN.bit()) != 0) {
      return UNSEEN_HIDDEN;
    }
    return (mask & Look.OUT_OF_FRAME.bit()) != 0 ? UNSEEN_OUT_OF_FRAME : UNSEEN_AWAY;
  }
}
