package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class LearnerNameTest {

  @ParameterizedTest
  @CsvSource({
    "zoe muller,'  Zoë   MÜLLER '",
    "zoe muller,Zoe\u0308 Mu\u0308ller",
    "oystein ołów,ØYSTEIN OŁÓW",
    "o'brien,O’Brien",
    "anne-marie,Anne–Marie",
    "17,17"
  })
  void one_name_in_several_spellings(String plain, String written) {
    assertThat(LearnerName.normalised(written)).isEqualTo(LearnerName.normalised(plain));
  }

  /** The Unicode decomposition of the JDK is the reference: letter by letter to U+017F. */
  @Test
  void accents_fall_away_as_unicode_takes_them_apart() {
    for (char c = '\u00c0'; c <= '\u017f'; c++) {
      String apart = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFD);
      if (apart.length() > 1) {
        String base = apart.substring(0, 1).toLowerCase(Locale.ROOT);
        String expected = base.charAt(0) < 128 ? base : LearnerName.normalised(base);
        assertThat(LearnerName.normalised(String.valueOf(c))).isEqualTo(expected);
      }
      char small = Character.toLowerCase(c);
      if (small != c && small != 'i') {
        assertThat(LearnerName.normalised(String.valueOf(c)))
            .isEqualTo(LearnerName.normalised(String.valueOf(small)));
      }
    }
  }
}
