package ringbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names that some systems keep: common practice, from memory. */
final class FileNamesTest {

  @ParameterizedTest
  @CsvSource({
    "Ida,Ida",
    "Zoë Müller,Zoë-Müller",
    "../../etc/passwd,etc-passwd",
    "'C:\\x',C-x",
    "山田 花子,山田-花子",
    "'...',learner",
    "'=1+1',1-1",
    "CON,learner-CON",
    "nul.txt,nul-txt",
    "COM1,learner-COM1",
    "lpt9,learner-lpt9",
    "Connie,Connie",
    "'a\u202eb\u0000c',a-b-c",
  })
  void makes_a_safe_name(String person, String name) {
    assertThat(new FileNames().of(person)).isEqualTo(name);
  }

  @Test
  void no_two_are_the_same_on_any_disk() {
    FileNames names = new FileNames();
    assertThat(names.of("Ida B")).isEqualTo("Ida-B");
    assertThat(names.of("ida/b")).isEqualTo("ida-b-2");
    assertThat(names.of("Ìda B")).isEqualTo("Ìda-B-3");
    assertThat(names.of("ida b 2")).isEqualTo("ida-b-2-2");
  }

  @Test
  void no_name_is_longer_than_a_disk_allows() {
    assertThat(new FileNames().of("山".repeat(90)).getBytes(java.nio.charset.StandardCharsets.UTF_8))
        .hasSizeLessThan(250);
  }
}
