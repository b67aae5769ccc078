package ringbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.photos.ExifBytes;

final class QuantitiesPhotoTest {

  @TempDir private Path folder;

  private Shell run(byte[] photo, String... more) throws IOException {
    Path file = Files.write(folder.resolve("photo.jpg"), photo);
    String[] all = new String[more.length + 5];
    all[0] = "quantities";
    all[1] = "--photo";
    all[2] = file.toString();
    all[3] = "--only";
    all[4] = "kit.";
    System.arraycopy(more, 0, all, 5, more.length);
    return Shell.run(all);
  }

  @Test
  void the_quantities_are_those_of_the_camera_that_took_the_photograph() throws IOException {
    Shell shell = run(ExifBytes.phone().size(4000, 3000).jpeg());
    assertThat(shell.code()).isZero();
    // By hand: 26 / 4.25 = 6.12.
    assertThat(shell.out()).contains("6.12").doesNotContain("phone main camera");
    assertThat(shell.err())
        .contains(
            "photo.jpg: JPEG, 4000 × 3000 px, 4.25 mm, 26 mm equivalent, f/1.8, 1/60 s, ISO 200\n",
            "doubt: The picture has 400 by 300 pixels",
            "surface: plain, it seems: ",
            "\nkit:\n  name: ",
            "  pixels across: 4000 px\n");
  }

  @Test
  void a_change_comes_after_the_photograph() throws IOException {
    Shell shell = run(ExifBytes.phone().jpeg(), "--with", "kit.focalLength = 8.5 mm");
    assertThat(shell.code()).isZero();
    assertThat(shell.out()).contains("8.5");
  }

  @Test
  void a_fault_is_one_clear_sentence_and_exit_code_1() throws IOException {
    Shell shell = run("nothing of a picture".getBytes(StandardCharsets.UTF_8));
    assertThat(shell.code()).isEqualTo(1);
    assertThat(shell.out()).isEmpty();
    assertThat(shell.err())
        .isEqualTo(
            folder.resolve("photo.jpg")
                + ": error: the file is no photograph that can be read\n"
                + "  mend: take it as JPEG, or export it as JPEG at full size with its settings kept\n"
                + "1 problem.\n");
    assertThat(Shell.run("quantities", "--photo", folder.resolve("none.jpg").toString()).code())
        .isEqualTo(1);
  }

  @Test
  void a_photograph_without_settings_says_what_is_missing_and_why() throws IOException {
    Shell shell = run(ExifBytes.phone().without(0xA405).jpeg());
    assertThat(shell.code()).isEqualTo(1);
    assertThat(shell.err())
        .contains("does not state the 35 mm equivalent", "how wide the camera sees", "1 problem.");
  }
}
