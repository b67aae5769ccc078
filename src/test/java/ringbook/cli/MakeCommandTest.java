package ringbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class MakeCommandTest {

  @TempDir Path folder;

  @Test
  void makes_site_book_and_ebook_and_says_where_they_are() {
    Path made = folder.resolve("made");
    Shell shell = Shell.run("make", "lessons/course.yaml", "--to", made.toString());
    assertThat(shell.err()).isEmpty();
    assertThat(shell.code()).isZero();
    assertThat(shell.out().lines())
        .hasSize(3)
        .allSatisfy(path -> assertThat(Path.of(path)).exists());
  }

  @Test
  void the_same_course_gives_the_same_bytes() throws IOException {
    Shell.run("make", "lessons/course.yaml", "--to", folder.resolve("a").toString());
    Shell.run("make", "lessons/course.yaml", "--to", folder.resolve("b").toString());
    assertThat(DemoCopy.content(folder.resolve("a")))
        .isEqualTo(DemoCopy.content(folder.resolve("b")));
  }

  @Test
  void five_faults_are_told_at_once_and_the_old_course_stays() throws IOException {
    DemoCopy demo = DemoCopy.in(folder);
    Path made = folder.resolve("made");
    assertThat(Shell.run("make", demo.courseFile().toString(), "--to", made.toString()).code())
        .isZero();
    Map<String, String> before = DemoCopy.content(made);

    String lesson = "lessons/07-one-ring.md";
    demo.replace(lesson, "${ring.photos} photographs**", "${ring.fotos} photographs**");
    demo.replace(lesson, "```figure ring-side", "```figure ring-syde");
    demo.replace(lesson, "```exercise ring-five", "```exercise ring-fife");
    demo.replace(lesson, "```try\n", "```try\n[see](lesson:one-thing)\n\n");
    demo.replace(
        lesson, "## Why it matters {#why}", "## Why it matters {#why}\n\n![a pot](pot.png)\n");
    Shell shell = Shell.run("make", demo.courseFile().toString(), "--to", made.toString());

    assertThat(shell.code()).isEqualTo(Main.PROBLEMS);
    assertThat(shell.out()).isEmpty();
    assertThat(shell.err().lines().filter(line -> line.contains(": error: ")))
        .hasSize(5)
        .allMatch(line -> line.matches(".*07-one-ring\\.md:[0-9]+:[0-9]+: error: .*"));
    assertThat(shell.err())
        .contains("did you mean 'ring.photos'?")
        .contains("did you mean 'ring-side'?")
        .contains("did you mean 'ring-five'?")
        .contains("did you mean 'one-ring'?")
        .contains("pot.png")
        .endsWith("5 problems.\n");
    assertThat(DemoCopy.content(made)).isEqualTo(before);
  }

  @Test
  void an_exercise_with_a_fault_is_told_once() throws IOException {
    DemoCopy demo = DemoCopy.in(folder);
    demo.replace("exercises/07-one-ring.yaml", "quantity: ring.photos", "quantity: ring.phots");
    Shell shell =
        Shell.run("make", demo.courseFile().toString(), "--to", folder.resolve("made").toString());
    assertThat(shell.err())
        .contains("07-one-ring.yaml:9:13: error: no quantity is called 'ring.phots'")
        .endsWith("1 problem.\n");
    assertThat(folder.resolve("made")).doesNotExist();
  }

  @Test
  void refuses_to_replace_a_folder_that_is_not_a_course() throws IOException {
    Path mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(mine.resolve("letter.txt"), "keep me");
    Shell shell = Shell.run("make", "lessons/course.yaml", "--to", mine.toString());
    assertThat(shell.code()).isEqualTo(Main.PROBLEMS);
    assertThat(mine.resolve("letter.txt")).hasContent("keep me");
  }

  @Test
  void tells_a_mistyped_command_from_a_broken_file_and_a_missing_one() {
    assertThat(Shell.run("mke").code()).isEqualTo(Main.USAGE);
    assertThat(Shell.run("make", "--two", "x").code()).isEqualTo(Main.USAGE);
    Shell missing = Shell.run("make", folder.resolve("none.yaml").toString());
    assertThat(missing.code()).isEqualTo(Main.PROBLEMS);
    assertThat(missing.err()).contains("there is no file or folder").doesNotContain("Exception");
  }
}
