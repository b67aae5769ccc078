package ringbook.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.course.ComposedCourse;
import ringbook.problems.Problem;

final class PublisherTest {

  private static final ComposedCourse COURSE = MadeUpCourse.small();

  @TempDir Path dir;

  @Test
  void puts_all_outputs_in_place_and_leaves_nothing_beside_them() throws IOException {
    Path folder = dir.resolve("deep/course");
    assertThat(publish(folder, writes("a.txt", "1"), writes("sub/b.txt", "2"))).isEmpty();
    assertThat(folder.resolve("a.txt")).hasContent("1");
    assertThat(folder.resolve("sub/b.txt")).hasContent("2");
    assertThat(names(folder.getParent())).containsExactly("course");
  }

  @Test
  void replaces_an_earlier_course_as_a_whole() throws IOException {
    Path folder = dir.resolve("course");
    publish(folder, writes("old.txt", "1"));
    assertThat(publish(folder, writes("new.txt", "2"))).isEmpty();
    assertThat(names(folder)).containsExactly("new.txt", "ringbook.txt");
    assertThat(names(dir)).containsExactly("course");
  }

  @Test
  void keeps_the_earlier_course_if_an_output_throws() throws IOException {
    Path folder = dir.resolve("course");
    publish(folder, writes("old.txt", "1"));
    for (Exception fault : List.of(new IOException("disk full"), new IllegalStateException("x"))) {
      assertThatThrownBy(() -> publish(folder, writes("old.txt", "2"), fails(fault)))
          .isSameAs(fault);
      assertThat(folder.resolve("old.txt")).hasContent("1");
      assertThat(names(dir)).containsExactly("course");
    }
  }

  @Test
  void makes_no_folder_if_the_first_course_fails() {
    assertThatThrownBy(() -> publish(dir.resolve("course"), fails(new IOException("disk full"))));
    assertThat(dir).isEmptyDirectory();
  }

  @Test
  void refuses_a_folder_that_is_not_a_course() throws IOException {
    Path photos = Files.createDirectory(dir.resolve("photos"));
    Files.writeString(photos.resolve("pot-01.jpg"), "dear");
    List<Problem> problems = publish(photos, writes("a.txt", "1"));
    assertThat(problems)
        .hasToString(
            "["
                + photos
                + ": error: this folder holds other files and was not made by Ringbook; it stays as"
                + " it is\n  mend: choose a new or an empty folder for the course]");
    assertThat(names(photos)).containsExactly("pot-01.jpg");
  }

  @Test
  void refuses_a_file_and_the_top_of_the_disk() throws IOException {
    Path file = Files.writeString(dir.resolve("course"), "dear");
    assertThat(publish(file, writes("a.txt", "1")).get(0).message()).contains("needs a folder");
    assertThat(file).hasContent("dear");
    assertThat(publish(dir.getRoot(), writes("a.txt", "1")).get(0).message()).contains("top of");
  }

  @Test
  void will_not_lose_a_file_somebody_put_into_the_course() throws IOException {
    Path folder = dir.resolve("course");
    publish(folder, writes("a.txt", "1"));
    Files.writeString(folder.resolve("my notes.txt"), "dear");
    Files.writeString(folder.resolve("Thumbs.db"), "litter");
    List<Problem> problems = publish(folder, writes("a.txt", "2"));
    assertThat(problems)
        .extracting(Problem::message)
        .containsExactly("'my notes.txt' was not written by Ringbook and would be lost");
    assertThat(folder.resolve("a.txt")).hasContent("1");
  }

  @Test
  void takes_an_empty_folder() throws IOException {
    Path folder = Files.createDirectory(dir.resolve("course"));
    assertThat(publish(folder, writes("a.txt", "1"))).isEmpty();
    assertThat(folder.resolve("a.txt")).exists();
  }

  @Test
  void brings_the_old_course_back_after_a_crash_between_the_two_moves() throws IOException {
    Path folder = dir.resolve("course");
    publish(folder, writes("old.txt", "1"));
    Files.move(folder, dir.resolve(".course.old"));
    assertThatThrownBy(() -> publish(folder, fails(new IOException("again"))));
    assertThat(folder.resolve("old.txt")).hasContent("1");
    assertThat(names(dir)).containsExactly("course");
  }

  @Test
  void clears_up_what_a_crash_left() throws IOException {
    Path folder = dir.resolve("course");
    publish(folder, writes("old.txt", "1"));
    CourseFolder.begin(dir.resolve(".course.making"));
    Files.writeString(dir.resolve(".course.making/half.txt"), "h");
    publish(dir.resolve(".course.old"), writes("older.txt", "0"));
    assertThat(publish(folder, writes("new.txt", "2"))).isEmpty();
    assertThat(names(dir)).containsExactly("course");
    assertThat(names(folder)).containsExactly("new.txt", "ringbook.txt");
  }

  @Test
  void leaves_a_strange_folder_with_the_name_of_a_leftover_alone() throws IOException {
    Path strange = Files.createDirectory(dir.resolve(".course.old"));
    Files.writeString(strange.resolve("letter.txt"), "dear");
    assertThat(publish(dir.resolve("course"), writes("a.txt", "1"))).hasSize(1);
    assertThat(strange.resolve("letter.txt")).exists();
    assertThat(names(dir)).containsExactly(".course.old");
  }

  @Test
  void follows_a_link_to_the_folder() throws IOException {
    publish(dir.resolve("real"), writes("a.txt", "1"));
    Path link = Files.createSymbolicLink(dir.resolve("link"), dir.resolve("real"));
    assertThat(publish(link, writes("a.txt", "2"))).isEmpty();
    assertThat(dir.resolve("real/a.txt")).hasContent("2");
    assertThat(link).isSymbolicLink();
  }

  private static List<Problem> publish(Path folder, Output... outputs) throws IOException {
    return new Publisher(List.of(outputs)).publish(COURSE, folder);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  private static Output writes(String file, String text) {
    return new Made(
        folder -> {
          Files.createDirectories(folder.resolve(file).getParent());
          Files.writeString(folder.resolve(file), text);
        });
  }

  private static Output fails(Exception fault) {
    return new Made(
        folder -> {
          if (fault instanceof IOException io) {
            throw io;
          }
          throw (RuntimeException) fault;
        });
  }

  private interface Writing {
    void write(Path folder) throws IOException;
  }

  private record Made(Writing writing) implements Output {
    @Override
    public String name() {
      return "made-up";
    }

    @Override
    public void write(ComposedCourse course, Path folder) throws IOException {
      writing.write(folder);
    }
  }
}
