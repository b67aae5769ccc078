package ringbook.output.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The numbers of book.css, read by hand. */
final class BookStyleTest {

  @Test
  void lengths_are_those_of_the_style_sheet() {
    // 297 mm less 30 mm above and below
    assertThat(BookStyle.textHeight()).isCloseTo(237 * 72 / 25.4, within(1e-9));
    assertThat(BookStyle.roomForHeading()).isCloseTo(30 * 72 / 25.4, within(1e-9));
    assertThat(BookStyle.linesTogether()).isEqualTo(2);
    // 11 to 7 between boxes, 8 to 6 and 3 to 1 inside, 4 to 2 below the head
    assertThat(BookStyle.sparedByBox()).isCloseTo(10, within(1e-9));
    assertThat(BookStyle.sparedByItem()).isCloseTo(2, within(1e-9));
    assertThat(BookStyle.sparedByParagraph()).isCloseTo(3, within(1e-9));
  }
}
