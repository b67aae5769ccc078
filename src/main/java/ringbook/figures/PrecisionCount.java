package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Coverage;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.geometry.Spread;
import ringbook.ledger.Reckoning;
import ringbook.ledger.RefusedException;
import ringbook.units.Numbers;

/** How precisely a ring fixes a spot on the object's side, over the number of photographs. */
final class PrecisionCount {

  private static final int[] COUNTS = {6, 8, 10, 12, 15, 18, 20, 24, 30, 36, 48, 60};

  /** How many photographs, how many of them see the spot, and its precision in millimetres. */
  private record Row(int photos, int views, double sigma) {}

  private PrecisionCount() {}

  static ChartModel of(Reckoning reckoning) {
    SeenScene seen = new SeenScene(reckoning, 400);
    List<Row> rows = new ArrayList<>();
    double most = 0;
    for (int photos : COUNTS) {
      Coverage coverage = seen.coverage(seen.ring(photos));
      int spot = seen.facing(seen.ring(photos).stations().get(0));
      Optional<Spread> spread = coverage.precision(spot);
      if (spread.isPresent()) {
        double sigma = sigma(spread.get());
        rows.add(new Row(photos, coverage.patch(spot).views().size(), sigma));
        most = Math.max(most, sigma);
      }
    }
    if (rows.isEmpty()) {
      throw new RefusedException(
          "no ring of up to 60 photographs sees a spot of the side twice",
          "change the elevation of the ring or the f-number");
    }
    return model(rows, most);
  }

  /** Root mean square of the three standard deviations, in millimetres. */
  private static double sigma(Spread spread) {
    return 1000 * Math.sqrt(spread.trace() / 3);
  }

  private static ChartModel model(List<Row> rows, double most) {
    Axis across = Ticks.between("photographs in the ring", 0, 65, 10);
    Axis up = Ticks.fromZero("precision of a spot, mm", most * 1.15);
    ChartDraft chart = new ChartDraft(across, up);
    for (int k = 0; k < rows.size(); k++) {
      Row row = rows.get(k);
      String text = k % 3 == 0 || k == rows.size() - 1 ? millimetres(row.sigma()) : "";
      chart.mark(row.photos(), row.sigma(), text, Shape.DOT, Ink.ACCENT);
      chart.row(
          String.valueOf(row.photos()), String.valueOf(row.views()), millimetres(row.sigma()));
    }
    Row first = rows.get(0);
    Row last = rows.get(rows.size() - 1);
    return chart.model(
        "Precision over the number of photographs",
        "Marks fall, quickly at first and then slowly: "
            + millimetres(first.sigma())
            + " with "
            + first.photos()
            + " photographs, of which "
            + first.views()
            + " see the spot; "
            + millimetres(last.sigma())
            + " with "
            + last.photos()
            + ", of which "
            + last.views()
            + " see it. Precision only, one standard deviation.",
        List.of("Photographs in the ring", "See the spot well", "Precision"));
  }

  private static String millimetres(double value) {
    return Numbers.significant(value, 2) + "\u00a0mm";
  }
}
