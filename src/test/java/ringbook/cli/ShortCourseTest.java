package ringbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A course that picks its lessons from another folder, made as the README says. */
final class ShortCourseTest {

  @TempDir Path root;

  private Path course;

  @BeforeEach
  void copies_the_short_course() throws IOException {
    DemoCopy.in(root);
    course = root.resolve("lessons/my-course/course.yaml");
    Files.createDirectories(course.getParent());
    Files.copy(root.resolve("lessons/short-course/course.yaml"), course);
  }

  private void change(String old, String fresh) throws IOException {
    String text = Files.readString(course);
    assertThat(text).contains(old);
    Files.writeString(course, text.replace(old, fresh));
  }

  private Shell make() {
    return Shell.run("make", course.toString(), "--to", root.resolve("made").toString());
  }

  private String page(String name) throws IOException {
    return Files.readString(root.resolve("made/site/" + name));
  }

  @Test
  void three_lessons_for_another_object_and_another_camera() throws IOException {
    Shell shell = make();
    assertThat(shell.code()).as(shell.err()).isZero();
    assertThat(shell.err()).isEmpty();
    assertThat(page("index.html"))
        .contains("One hour round a boot", "one-ring.html", "right-distance.html")
        .doesNotContain("the-room.html");
    assertThat(page("one-ring.html")).contains("hiking boot").doesNotContain("strawberry pot");
    assertThat(root.resolve("made/site/the-room.html")).doesNotExist();
    assertThat(root.resolve("made/book.pdf")).isNotEmptyFile();
  }

  @Test
  void a_lesson_of_ones_own_may_stand_among_them() throws IOException {
    Files.writeString(
        course.resolveSibling("our-room.md"),
        """
        ---
        id: our-room
        title: Our room
        aim: You know where the switch is.
        ---

        The ${subject.name} stands in room 2; [the room](lesson:the-room#yours) is free, and
        [one ring](lesson:one-ring) takes ${ring.photos} photographs.
        """);
    change("  - right-distance\n", "  - our-room\n");
    Shell shell = make();
    assertThat(shell.code()).as(shell.err()).isZero();
    assertThat(page("our-room.html"))
        .contains("; the room is free", "<a href=\"one-ring.html\">one ring</a>");
  }

  @Test
  void a_folder_that_is_not_there_is_told() throws IOException {
    change("lessons from: .. ", "lessons from: ../nowhere ");
    Shell shell = make();
    assertThat(shell.code()).isEqualTo(1);
    assertThat(shell.err())
        .contains(
            course
                + ":8:15: error: there is no folder '../nowhere' beside the course file\n"
                + "  mend: write the way from this course file to the folder of the lessons, such"
                + " as '..'\n");
  }

  @Test
  void more_than_one_folder_is_refused() throws IOException {
    change("lessons from: .. ", "lessons from: [.., other] ");
    assertThat(make().err())
        .contains(
            ":8:1: error: 'lessons from' must name one folder\n"
                + "  mend: write the way to it from this course file, such as 'lessons from:"
                + " ..'\n");
  }

  @Test
  void where_no_station_sees_enough_there_is_no_plan_but_a_reason() {
    Shell shell =
        Shell.run(
            "plan",
            course.toString(),
            "--with",
            "aim.hold = level",
            "--with",
            "aim.detail = 0.5 mm");
    assertThat(shell.code()).isEqualTo(1);
    assertThat(shell.err())
        .contains("there is no plan: no station round the object is free, within reach, and sees");
  }
}
