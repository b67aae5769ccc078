package ringbook.figures;

/** What a line is for; its class and its colour on light paper. */
public enum Ink {
  /** Outlines and dimension lines. */
  INK("fig-ink", "#2b2622"),
  /** Guides, walls, grid. */
  FAINT("fig-faint", "#968a7b"),
  /** What the figure is about: terracotta. */
  ACCENT("fig-accent", "#b4532a"),
  /** A second series: dark slate. */
  SECOND("fig-second", "#43525c"),
  /** A third series: ochre. */
  THIRD("fig-third", "#a5894f"),
  /** Halos. */
  PAPER("fig-paper", "#ffffff");

  private final String styleClass;
  private final String colour;

  Ink(String styleClass, String colour) {
    this.styleClass = styleClass;
    this.colour = colour;
  }

  /** The class that sets the stroke. */
  public String styleClass() {
    return styleClass;
  }

  /** The colour on light paper, as {@code #rrggbb}. */
  public String colour() {
    return colour;
  }
}
