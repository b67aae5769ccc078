package ringbook.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.plans.WrittenRun.Directions;
import ringbook.plans.WrittenRun.Kind;
import ringbook.plans.WrittenRun.Sort;
import ringbook.plans.WrittenRun.Where;
import ringbook.shots.Pose;
import ringbook.units.Lengths;

/** Plans as people write them on a sheet. */
final class WrittenPlanTest {

  static java.util.stream.LongStream seeds() {
    return Scenes.seeds();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void what_is_printed_is_read_as_the_same_plan(long seed) {
    WrittenPlan plan = random(new SplittableRandom(seed));
    PlanReading reading = WrittenPlan.read(plan.text());
    assertThat(reading.plan()).as(plan.text() + " " + reading.message()).contains(plan);
    String loose = plan.text().replace("; ", "\n").replace(".", ",").replace("°", " deg");
    assertThat(WrittenPlan.read(loose).plan()).as(loose).contains(plan);
  }

  private static <T> T one(List<T> of, SplittableRandom random) {
    return of.get(random.nextInt(of.size()));
  }

  private static WrittenPlan random(SplittableRandom random) {
    List<WrittenRun> runs = new ArrayList<>();
    int count = random.nextInt(1, 9);
    for (int i = 0; i < count; i++) {
      Kind kind = one(List.of(Kind.values()), random);
      boolean ring = kind == Kind.RING || kind == Kind.LOW_RING;
      boolean height = kind == Kind.RING || random.nextBoolean();
      double degrees = random.nextInt(-180, 181) / 2.0;
      double metres = random.nextInt(1, 5000) / 1000.0;
      Sort sort =
          ring
              ? one(List.of(Sort.ALL, Sort.OVER, Sort.WITHOUT), random)
              : kind == Kind.STRIP && random.nextBoolean() ? Sort.FACING : Sort.ALL;
      double from = random.nextInt(-180, 181);
      double to = sort == Sort.FACING ? from : random.nextInt(-180, 181);
      Directions directions = sort == Sort.ALL ? Directions.ALL : new Directions(sort, from, to);
      runs.add(
          new WrittenRun(
              kind,
              random.nextInt(1, WrittenRun.MOST + 1),
              random.nextBoolean() ? Pose.STANDING : Pose.TURNED_OVER,
              new Where(
                  height ? OptionalDouble.of(degrees) : OptionalDouble.empty(),
                  random.nextBoolean() ? OptionalDouble.of(metres) : OptionalDouble.empty(),
                  directions)));
    }
    return new WrittenPlan(runs);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "24 at 15° | rings: 24 at 15°",
        "24 at 15 | rings: 24 at 15°",
        "24@15 | rings: 24 at 15°",
        "Rings: 24 at 12,5°, 20 photos at 40 degrees | rings: 24 at 12.5°, 20 at 40°",
        "rings: 24 at 15°, 30° and 45° | rings: 24 at 15°, 24 at 30°, 24 at 45°",
        "3 rings of 24 at 10°, 25° and 40° | rings: 24 at 10°, 24 at 25°, 24 at 40°",
        "24 x 15°; top 3 | rings: 24 at 15°; top: 3",
        "low ring 24, top 5 | low ring: 24; top: 5",
        "ring of 24 photographs at 10° below | rings: 24 at -10°",
        "ring A: 24 at −10° | rings: 24 at -10°",
        "24 at 15° at 1,1 m | rings: 24 at 15° at 1.1 m",
        "24 at 15° at 80 cm | rings: 24 at 15° at 0.8 m",
        "24 at 15° at 50 in, top: 3 | rings: 24 at 15° at 1.27 m; top: 3",
        "24 at 15° at 25 1/2 in, 20 at 30° | rings: 24 at 15° at 0.6477 m, 20 at 30°",
        "24 at 15° at 5 ft, 20 at 30° | rings: 24 at 15° at 1.524 m, 20 at 30°",
        "24 at 15° at 3 ft 4 in, 20 at 30° | rings: 24 at 15° at 1.016 m, 20 at 30°",
        "24 at 15° at 4' 2\", 20 at 30° | rings: 24 at 15° at 1.27 m, 20 at 30°",
        "24 at 15° at 4′ 2″ | rings: 24 at 15° at 1.27 m",
        "24 at 15° at 4 feet 2 inches | rings: 24 at 15° at 1.27 m",
        "\"24 at 15° at 50 in; top: 3\" | rings: 24 at 15° at 1.27 m; top: 3",
        "\"24 at 15\" | rings: 24 at 15°",
        "24 at 15° except from 30° to 90° | rings: 24 at 15° without 30° to 90°",
        "13 at 0° from -180 to 0 | rings: 13 at 0° from -180° to 0°",
        "strip: 6 at 0° facing left | strip: 6 at 0° facing 180°",
        "24 at 15°. Turned over: 20 at 15° | rings: 24 at 15°; turned over: 20 at 15°",
        "upside down: top: 3 | turned over: top: 3",
      })
  void people_write_in_many_ways(String written, String usual) {
    PlanReading reading = WrittenPlan.read(written);
    assertThat(reading.plan().map(WrittenPlan::text)).as(reading.message()).contains(usual);
  }

  /** The inch of exactly 25.4 mm (NIST Special Publication 811; agreement of 1959). */
  @ParameterizedTest
  @CsvSource({"1.27, 50 in", "1.1, 43.25 in", "0.6477, 25.5 in", "0.254, 10 in"})
  void distances_in_inches_are_printed_to_the_quarter(String metres, String inches) {
    WrittenPlan plan = WrittenPlan.read("24 at 15° at " + metres + " m").plan().orElseThrow();
    String text = plan.text(Lengths.IMPERIAL);
    assertThat(text).isEqualTo("rings: 24 at 15° at " + inches);
    double back =
        WrittenPlan.read(text).plan().orElseThrow().runs().get(0).where().standoff().orElseThrow();
    assertThat(back).isCloseTo(Double.parseDouble(metres), within(0.0254 / 8));
  }

  @Test
  void help_is_in_the_measures_of_the_course() {
    assertThat(WrittenPlan.read("24 at 15° at 500 m", Lengths.IMPERIAL).help()).endsWith(" 43 in");
    assertThat(WrittenPlan.read("24 at 15° at 500 m").help()).endsWith(" 1.1 m");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "no idea | 'no' is no word of a plan",
        "24 | the ring of 24 photographs has no height",
        "15° | before '15°' there is no number of photographs",
        "1.1 m | before '1.1 m' there is no number of photographs",
        "2.5 at 15° | '2.5' cannot be a number of photographs",
        "5000 at 15° | '5000' cannot be a number of photographs",
        "24 at 120° | '120°' cannot be a height",
        "24 at 15° at 500 m | '500 m' cannot be a distance",
        "24 at 15° from 30° | 'from' stands without its directions",
        "24 at 15° without | 'without' stands without its directions",
        "3 rings of 24 at 10° | it says 3 rings, but tells the height of 1",
        "24 at 15° facing left | only a strip faces one side",
        "tpo: 3 | 'tpo' is no word of a plan",
        "24 # 15 | '#' has no meaning in a plan",
        "; | no number of photographs stands in it",
      })
  void a_fault_is_told_in_one_sentence(String written, String message) {
    PlanReading reading = WrittenPlan.read(written);
    assertThat(reading.plan()).isEmpty();
    assertThat(reading.message()).isEqualTo(message);
    assertThat(reading.help()).isNotBlank();
  }
}
