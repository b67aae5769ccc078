package ringbook.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A script is made anew exactly where a class has changed that it was made from. */
final class MadeFromTest {

  @TempDir Path folder;
  private Path classes;
  private MadeFrom from;

  @BeforeEach
  void build() throws IOException {
    classes = folder.resolve("classes");
    write("ringbook/build/Pass.class", "pass");
    write("ringbook/units/Read.class", "read");
    write("ringbook/units/Left.class", "left");
    write("other/Foreign.class", "foreign");
    from = new MadeFrom(classes, folder.resolve("scripts/one.classes"));
  }

  private void write(String name, String content) throws IOException {
    Path file = classes.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, content);
  }

  /** Hands out two classes in each of the ways a compiler asks for them, and notes it. */
  private String made() throws IOException {
    try (URLClassLoader all = new URLClassLoader(new URL[] {classes.toUri().toURL()}, null)) {
      MadeFrom.Noting noting = new MadeFrom.Noting(all);
      assertThat(noting.getResource("ringbook/units/Read.class")).isNotNull();
      assertThat(noting.getResource("ringbook/units/Missing.class")).isNull();
      noting.getResourceAsStream("other/Foreign.class").close();
      return from.note(noting);
    }
  }

  @Test
  void before_anything_is_made_there_is_no_mark() throws IOException {
    assertThat(from.mark()).isEmpty();
  }

  @Test
  void what_was_read_and_the_build_itself_are_noted_and_nothing_else() throws IOException {
    made();
    assertThat(folder.resolve("scripts/one.classes"))
        .content()
        .isEqualToIgnoringNewLines("ringbook/build/Pass.classringbook/units/Read.class");
  }

  @Test
  void the_mark_stays_while_what_was_read_stays() throws IOException {
    String mark = made();
    assertThat(mark).hasSize(16);
    assertThat(from.mark()).isEqualTo(mark);
    write("ringbook/units/Left.class", "changed");
    write("ringbook/units/New.class", "new");
    assertThat(from.mark()).isEqualTo(mark);
    write("ringbook/units/Read.class", "changed");
    assertThat(from.mark()).isNotEqualTo(mark);
    write("ringbook/units/Read.class", "read");
    assertThat(from.mark()).isEqualTo(mark);
    write("ringbook/build/Pass.class", "changed");
    assertThat(from.mark()).isNotEqualTo(mark);
  }

  @Test
  void a_class_that_is_gone_is_a_change() throws IOException {
    String mark = made();
    Files.delete(classes.resolve("ringbook/units/Read.class"));
    assertThat(from.mark()).isNotEqualTo(mark);
  }

  @Test
  void every_way_of_asking_is_noted() throws IOException {
    try (URLClassLoader all = new URLClassLoader(new URL[] {classes.toUri().toURL()}, null)) {
      MadeFrom.Noting noting = new MadeFrom.Noting(all);
      noting.getResourceAsStream("ringbook/units/Left.class").close();
      assertThat(noting.getResources("ringbook/units/Read.class").hasMoreElements()).isTrue();
      from.note(noting);
    }
    assertThat(folder.resolve("scripts/one.classes"))
        .content()
        .contains("ringbook/units/Left.class", "ringbook/units/Read.class");
  }
}
