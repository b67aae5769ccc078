package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class HeadingTest {

  @Test
  void every_entry_stands_under_a_heading_with_a_title() {
    assertThat(Ledger.standard().keys())
        .allSatisfy(
            key ->
                assertThat(Heading.of(key).title()).as(key).isNotEqualTo(Heading.of(key).word()));
  }
}
