package ringbook.sheets;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.ShotPlan;

/**
 * Reads a shot table that a person made or changed.
 *
 * <p><b>As a table</b> (CSV): the first line names the columns as {@link
 * ringbook.plans.ShotColumn#head} writes them, in any order. Needed are {@code leg}, {@code
 * lens_height_cm}, {@code azimuth_deg} or {@code clock}, and {@code floor_distance_cm} or {@code
 * distance_cm}; a person may add {@code kind} (ring, strip, top, detail). What is left out is as
 * {@link ShotDefaults} say; further columns are passed over. A column may name another unit ({@code
 * lens_height_m}), and so may a cell ({@code 1.2 m}). Columns are parted by commas, semicolons or
 * tabs; decimals by point or comma.
 *
 * <p><b>As JSON</b>: what {@link ShotJson} writes, or an array of objects with the same names.
 */
public final class ShotTables {

  private static final int LOOK_AHEAD = 1 << 14;

  private ShotTables() {}

  /** The plan in a file; empty if there are faults, which are all told. */
  public static Optional<ShotPlan> read(Path file, ShotDefaults defaults, Problems problems)
      throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return read(file.toString(), in, defaults, problems);
    }
  }

  /**
   * The plan in the bytes of a file; empty if there are faults, which are all told.
   *
   * @param file the name for messages
   */
  public static Optional<ShotPlan> read(
      String file, InputStream raw, ShotDefaults defaults, Problems problems) throws IOException {
    int before = problems.size();
    ShotIntake intake = new ShotIntake(defaults, problems);
    Faults faults = new Faults(problems);
    Optional<InputStream> bytes = SheetBytes.open(file, raw, faults);
    if (bytes.isPresent()) {
      read(file, new BufferedInputStream(bytes.get()), intake, problems);
    }
    if (problems.size() == before && intake.isEmpty()) {
      problems.add(
          Position.ofFile(file),
          "the table has no stations",
          "write one line a station under the line that names the columns");
    }
    Optional<ShotPlan> plan = intake.plan();
    return problems.size() == before ? plan : Optional.empty();
  }

  private static void read(
      String file, BufferedInputStream in, ShotIntake intake, Problems problems)
      throws IOException {
    in.mark(LOOK_AHEAD);
    int first = in.read();
    while (first >= 0 && Character.isWhitespace(first)) {
      first = in.read();
    }
    in.reset();
    if (first == '[' || first == '{') {
      new ShotJsonReader(file, intake, problems).read(in);
    } else {
      new ShotCsvReader(file, intake, problems).read(new SheetLines(in));
    }
  }
}
