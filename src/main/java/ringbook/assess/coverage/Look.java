package ringbook.assess.coverage;

/** How one patch of the surface looks from one station: well, or the first reason why not. */
public enum Look {
  /** In the frame, in sight, sharp, and not too slanted. */
  WELL(1),
  /** Like {@link #WELL}, but too blurred. */
  SOFT(2),
  /** In the frame and in sight, but more slanted than the limit. */
  SLANTED(4),
  /** Turned to the camera, but the table or something in the room is in between. */
  BLOCKED(8),
  /** Turned to the camera, but another part of the object is in between. */
  HIDDEN(16),
  /** Turned to the camera, but outside the picture; whether something hides it was not tried. */
  OUT_OF_FRAME(32),
  /** Turned away from the camera. */
  AWAY(64);

  private final int bit;

  Look(int bit) {
    this.bit = bit;
  }

  /** Whether the patch is in the picture, however well. */
  public boolean inPicture() {
    return this == WELL || this == SOFT || this == SLANTED;
  }

  /** A bit of its own in a mask. */
  int bit() {
    return bit;
  }
}
