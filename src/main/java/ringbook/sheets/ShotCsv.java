package ringbook.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import ringbook.plans.ShotColumn;
import ringbook.shots.ShotPlan;
import ringbook.shots.ShotPlan.Shot;

/** A plan as comma-separated values, one station a line; see {@link CsvLine}. */
public final class ShotCsv {

  private ShotCsv() {}

  /** The whole text, with the line ends RFC 4180 asks for. */
  public static String of(ShotPlan plan) {
    StringBuilder out = new StringBuilder();
    try {
      CsvLine.COMMAS.write(ShotColumn.heads(), out);
      for (Shot shot : plan.shots()) {
        List<String> cells = new ArrayList<>();
        for (ShotColumn column : ShotColumn.values()) {
          cells.add(column.of(shot));
        }
        CsvLine.COMMAS.write(cells, out);
      }
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return out.toString();
  }
}
