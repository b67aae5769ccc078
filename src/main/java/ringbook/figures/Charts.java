package ringbook.figures;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import ringbook.ledger.Reckoning;

/** The charts by the names that lessons call them by. */
public final class Charts {

  private Charts() {}

  /**
   * All charts, in the order of the course; each throws a {@link ringbook.ledger.RefusedException}
   * if the scene has no number that it needs.
   */
  public static Map<String, Function<Reckoning, ChartModel>> byName() {
    Map<String, Function<Reckoning, ChartModel>> all = new LinkedHashMap<>();
    all.put("sampling", SamplingChart::of);
    all.put("f-number-window", WindowChart::of);
    all.put("lamp-light", LampChart::of);
    all.put("flicker-wave", FlickerChart::of);
    all.put("crossed-filters", PolariserChart::of);
    all.put("overlap-chart", OverlapChart::of);
    all.put("match-survival", SurvivalChart::of);
    all.put("slant", SlantChart::of);
    all.put("ring-overlap", RingOverlap::of);
    all.put("precision-count", PrecisionCount::of);
    all.put("bar-length", BarChart::of);
    all.put("hole-chart", HoleChart::of);
    all.put("sample-chance", SampleChart::of);
    all.put("size-room", SizeRoom::of);
    return all;
  }
}
