package ringbook.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.problems.Problem;
import ringbook.problems.Problems;

/** Files that are no photographs, or no longer. */
final class BrokenPhotosTest {

  @TempDir private Path folder;
  private PhotoFolder photos;

  @BeforeEach
  void open() {
    photos = new PhotoFolder(folder);
  }

  @Test
  void an_empty_file_is_told() {
    assertThat(photos.read("a.jpg", new byte[0]).problem()).isEqualTo("the file is empty");
  }

  @Test
  void a_text_with_the_name_of_a_picture_is_told() {
    byte[] text = "not a picture at all, only a line of text".getBytes(StandardCharsets.UTF_8);
    assertThat(photos.read("a.jpg", text).problem())
        .isEqualTo("the file is no photograph that can be read");
    assertThat(photos.read("a.jpg", new byte[] {1}).problem())
        .isEqualTo("the file is no photograph that can be read");
  }

  @Test
  void a_missing_file_and_a_folder_are_told() {
    for (Path path : new Path[] {folder, folder.resolve("none.jpg")}) {
      Problems problems = new Problems();
      assertThat(PhotoReader.read(path, problems)).isEmpty();
      assertThat(problems.sorted())
          .extracting(Problem::message)
          .containsExactly("there is no such photograph");
    }
  }

  @Test
  void a_file_beyond_200_MB_is_not_opened() throws IOException {
    Path huge = photos.write("huge.jpg", ExifBytes.phone().jpeg());
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(PhotoReader.MOST_BYTES + 1); // a hole: takes no room on the disk
    }
    Problems problems = new Problems();
    assertThat(PhotoReader.read(huge, problems)).isEmpty();
    assertThat(problems.sorted())
        .extracting(Problem::message)
        .containsExactly("the file is larger than 200 MB");
  }

  @Test
  void more_than_200_million_pixels_are_refused_by_file_and_by_settings() {
    byte[] bytes = ExifBytes.phone().jpeg();
    int frame = startOfFrame(bytes);
    bytes[frame + 5] = 0x75; // 29,952 rows and columns
    bytes[frame + 7] = 0x75;
    assertThat(photos.read("a.jpg", bytes).problem())
        .isEqualTo("the picture has more than 200 million pixels");
    assertThat(photos.read("b.jpg", ExifBytes.phone().size(30_000, 20_000).jpeg()).problem())
        .isEqualTo("the picture has more than 200 million pixels");
  }

  @Test
  void a_png_that_claims_a_part_of_2_GB_does_not_exhaust_the_memory() {
    byte[] bytes = ExifBytes.encoded(ExifBytes.grey(40, 30), "png");
    int second = 8 + 25;
    bytes[second] = 0x7F;
    Arrays.fill(bytes, second + 1, second + 4, (byte) 0xFF);
    assertThat(photos.read("a.png", bytes).problem()).isEqualTo("the file is broken");
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void whatever_is_cut_off_or_overwritten_gives_facts_or_one_problem(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    byte[] bytes =
        random.nextBoolean() ? ExifBytes.phone().jpeg() : HeicBytes.of(ExifBytes.phone());
    for (int i = random.nextInt(8); i > 0; i--) {
      bytes[random.nextInt(Math.min(400, bytes.length))] = (byte) random.nextInt(256);
    }
    if (random.nextBoolean()) {
      bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length));
    }
    PhotoFolder.Outcome outcome = photos.read("a.jpg", bytes);
    assertThat(outcome.problems().size()).isEqualTo(outcome.facts().isPresent() ? 0 : 1);
    SurfaceFacts.of(folder.resolve("a.jpg")); // does not throw
  }

  private static int startOfFrame(byte[] bytes) {
    for (int i = 2; i < bytes.length; i++) {
      if (bytes[i] == (byte) 0xFF && bytes[i + 1] == (byte) 0xC0) {
        return i;
      }
    }
    throw new AssertionError("no start of frame");
  }
}
