package ringbook.figures;

/** What an area is for; its class and its colour on light paper. */
public enum Fill {
  /** Not filled. */
  NONE("", "none"),
  /** Letters and arrow heads. */
  TEXT("fig-text", "#2b2622"),
  /** Marks of what the figure is about. */
  ACCENT("fig-fill-accent", "#b4532a"),
  /** Bodies: the object, furniture, bands. */
  FAINT("fig-fill-faint", "#ece3d4"),
  /** Hollow things. */
  PAPER("fig-fill-paper", "#ffffff");

  private final String styleClass;
  private final String colour;

  Fill(String styleClass, String colour) {
    this.styleClass = styleClass;
    this.colour = colour;
  }

  /** The class that sets the fill; empty for {@link #NONE}. */
  public String styleClass() {
    return styleClass;
  }

  /** The colour on light paper, as {@code #rrggbb} or {@code none}. */
  public String colour() {
    return colour;
  }
}
