package ringbook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Relative luminance and contrast as defined in the Web Content Accessibility Guidelines 2.2 (W3C,
 * 2023), which ask for 3 : 1 for parts of graphics (1.4.11) and 4.5 : 1 for text (1.4.3).
 */
final class PaletteTest {

  @ParameterizedTest
  @EnumSource(value = Ink.class, names = "PAPER", mode = EnumSource.Mode.EXCLUDE)
  void every_ink_stands_out_from_the_paper(Ink ink) {
    assertThat(contrast(ink.colour(), Fill.PAPER.colour())).isGreaterThan(3);
  }

  @Test
  void text_can_be_read_on_every_area_it_may_lie_on() {
    assertThat(contrast(Fill.TEXT.colour(), Fill.PAPER.colour())).isGreaterThan(4.5);
    assertThat(contrast(Fill.TEXT.colour(), Fill.FAINT.colour())).isGreaterThan(4.5);
  }

  @Test
  void inks_of_series_differ_in_grey() {
    List<Ink> inks = List.of(Ink.INK, Ink.SECOND, Ink.ACCENT, Ink.THIRD);
    List<Double> contrasts = new ArrayList<>();
    for (Ink ink : inks) {
      contrasts.add(contrast(ink.colour(), Fill.PAPER.colour()));
    }
    for (int i = 1; i < inks.size(); i++) {
      assertThat(contrasts.get(i - 1) / contrasts.get(i)).as(inks.get(i).name()).isGreaterThan(1.4);
    }
  }

  /** Lightness L* of CIE 1976: equal steps look equally far apart, in grey too. */
  @Test
  void tones_are_evenly_apart_and_can_be_written_on() {
    double step = (lightness(Fill.TONE_5) - lightness(Fill.TONE_1)) / 4;
    for (int i = 0; i < 5; i++) {
      Fill tone = Fill.TONES.get(i);
      assertThat(lightness(tone)).isCloseTo(lightness(Fill.TONE_1) + step * i, within(1.0));
      assertThat(contrast(Fill.TEXT.colour(), tone.colour())).isGreaterThan(4.5);
    }
  }

  private static double lightness(Fill fill) {
    return 116 * Math.cbrt(luminance(fill.colour())) - 16;
  }

  private static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    return 0.2126 * linear(colour.substring(1, 3))
        + 0.7152 * linear(colour.substring(3, 5))
        + 0.0722 * linear(colour.substring(5, 7));
  }

  private static double linear(String hex) {
    double c = Integer.parseInt(hex, 16) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
