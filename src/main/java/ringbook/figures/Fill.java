package ringbook.figures;

import java.util.List;

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
  PAPER("fig-fill-paper", "#ffffff"),
  /** First of five tones, evenly apart in lightness (CIE L* 95 to 61), on which text is read. */
  TONE_1("fig-fill-tone-1", "#fceee5"),
  /** Second tone. */
  TONE_2("fig-fill-tone-2", "#e9d5c7"),
  /** Third tone. */
  TONE_3("fig-fill-tone-3", "#d7bca9"),
  /** Fourth tone. */
  TONE_4("fig-fill-tone-4", "#c4a48c"),
  /** Fifth and strongest tone. */
  TONE_5("fig-fill-tone-5", "#b18c70");

  /** The five tones, the faintest first. */
  static final List<Fill> TONES = List.of(TONE_1, TONE_2, TONE_3, TONE_4, TONE_5);

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
