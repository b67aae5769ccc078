package ringbook.plans;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.Scenes;
import ringbook.geometry.Vec3;
import ringbook.ledger.Reckoning;
import ringbook.shots.Leg;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Lengths;

/** From the least to the most: the unit once, but never half of a measure. */
final class LegWordsTest {

  @ParameterizedTest
  @CsvSource({
    "METRIC, 0.9, 0.9, 90 cm",
    "METRIC, 0.9, 1.2, 90 to 120 cm",
    "IMPERIAL, 0.4191, 0.508, 16 1/2 to 20 in",
    "IMPERIAL, 0.889, 0.9144, 35 in to 3 ft",
    "IMPERIAL, 0.9144, 1.27, 3 ft to 4 ft 2 in",
    "IMPERIAL, 0.9652, 1.27, 3 ft 2 in to 4 ft 2 in",
  })
  void heights(Lengths lengths, double low, double high, String expected) {
    Leg first = StandardPlan.of(Reckoning.of(Scenes.pot())).orElseThrow().legs().get(0);
    Station station = first.stations().get(0);
    Leg leg =
        new Leg(
            first.name(),
            first.kind(),
            first.setup(),
            List.of(at(station, 1, low), at(station, 2, high)),
            first.why());
    assertThat(new LegWords(new ShotPlan(List.of(leg)), lengths).height(leg)).isEqualTo(expected);
  }

  private static Station at(Station like, int number, double height) {
    Vec3 position = new Vec3(like.position().x(), like.position().y(), height);
    return Station.at(number, position, like.target());
  }
}
