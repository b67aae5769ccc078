package ringbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import ringbook.Scenes;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;

/**
 * Works entries of the ledger out a second time, by another way than their formula: from what the
 * scene states, with the plain functions of {@link Math}, by searching, counting or drawing. Each
 * way is held against the ledger on the two kits of the demo and on random scenes; scenes for which
 * the entry is refused are passed over, but some must be left.
 */
public abstract class RouteTable {

  /** A second way, in SI; yes is 1 and no 0. */
  @FunctionalInterface
  public interface Route {
    double of(Seen seen);
  }

  /** What a second way may look at. */
  public record Seen(Reckoning reckoning) {

    /** A number the scene states. */
    public double given(String key) {
      if (!(reckoning.ledger().get(key).definition() instanceof Quantity.Given)) {
        throw new IllegalArgumentException(key + " is computed");
      }
      return reckoning.si(key);
    }

    /** A computed number that has its own check. */
    public double entry(String key) {
      return reckoning.si(key);
    }

    /** The scene, for its words. */
    public Scene scene() {
      return reckoning.scene();
    }
  }

  private final Map<String, Route> routes = new LinkedHashMap<>();
  private final Map<String, Double> tolerances = new LinkedHashMap<>();

  /** States every way, with {@link #route}. */
  protected abstract void routes();

  /** The scenes to try. */
  protected List<Scene> scenes() {
    List<Scene> scenes = new ArrayList<>(List.of(Scenes.pot(), Scenes.potWithLensCamera()));
    Scenes.seeds().forEach(seed -> scenes.add(Scenes.random(seed)));
    return scenes;
  }

  /** The entry, exact but for rounding in the last digits. */
  protected final void route(String key, Route route) {
    route(key, 1e-9, route);
  }

  /** The entry, to a part of its size. */
  protected final void route(String key, double tolerance, Route route) {
    assertThat(routes.put(key, route)).as("two ways for " + key).isNull();
    tolerances.put(key, tolerance);
  }

  /** A yes or no. */
  protected static double yes(boolean answer) {
    return answer ? 1 : 0;
  }

  @TestFactory
  Stream<DynamicTest> a_second_way_gives_the_same() {
    routes();
    List<Reckoning> all = scenes().stream().map(Reckoning::of).toList();
    return routes.keySet().stream().map(key -> DynamicTest.dynamicTest(key, () -> hold(key, all)));
  }

  private void hold(String key, List<Reckoning> all) {
    int held = 0;
    for (Reckoning reckoning : all) {
      if (reckoning.of(key) instanceof Outcome.Known known) {
        double other = routes.get(key).of(new Seen(reckoning));
        if (other != known.si()) {
          double allowed = tolerances.get(key) * Math.max(Math.abs(known.si()), 1e-9);
          assertThat(known.si()).as(key).isCloseTo(other, within(allowed));
        }
        held++;
      }
    }
    assertThat(held).as("scenes in which " + key + " is known").isPositive();
  }

  /** Where a rising condition turns true, by halving. */
  protected static double firstWhere(
      double low, double high, java.util.function.DoublePredicate met) {
    double from = low;
    double to = high;
    for (int i = 0; i < 200; i++) {
      double middle = from + (to - from) / 2;
      if (met.test(middle)) {
        to = middle;
      } else {
        from = middle;
      }
    }
    return to;
  }

  /** Size of a picture over size of the thing in focus at that distance, {@code v/u}. */
  protected static double picture(Seen s, double distance) {
    return 1 / (1 / s.given("kit.focalLength") - 1 / distance) / distance;
  }

  /** The pixel on the sensor. */
  protected static double pixel(Seen s) {
    return s.given("kit.sensorWidth") / s.given("kit.pixelsAcross");
  }
}
