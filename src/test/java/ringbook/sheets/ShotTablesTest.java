package ringbook.sheets;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.Scenes;
import ringbook.geometry.Vec3;
import ringbook.ledger.Reckoning;
import ringbook.plans.StandardPlan;
import ringbook.problems.Problem;
import ringbook.problems.Problems;
import ringbook.shots.Aim.Hold;
import ringbook.shots.Leg;
import ringbook.shots.Leg.Kind;
import ringbook.shots.Pose;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Length;
import ringbook.units.Lengths;

/** Shot tables: what is written is read back, what people change is read, faults are told. */
final class ShotTablesTest {

  private static final ShotDefaults DEFAULTS =
      new ShotDefaults(Length.ofCentimetres(92), Hold.UPRIGHT, Length.ofCentimetres(47));
  private static final String[] NAMES = {"ring A", "strip 1", "top", "detail of =pocket, \"2\""};
  private static final Path BAD = Path.of("src/test/resources/ringbook/sheets/bad-shots");

  static LongStream seeds() {
    return Scenes.seeds();
  }

  private static ShotPlan read(String text) throws IOException {
    Problems problems = new Problems();
    Optional<ShotPlan> plan =
        ShotTables.read(
            "table", new ByteArrayInputStream(text.getBytes(UTF_8)), DEFAULTS, problems);
    assertThat(problems.sorted()).isEmpty();
    return plan.orElseThrow();
  }

  /** A plan drawn at random, with lengths from millimetres to metres. */
  private static ShotPlan random(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Leg> legs = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(NAMES.length); i++) {
      Leg.Setup setup =
          new Leg.Setup(
              List.of(Pose.values()).get(random.nextInt(2)),
              List.of(Hold.values()).get(random.nextInt(2)),
              Length.ofMetres(0.01 + random.nextDouble()),
              1 + random.nextInt(3));
      List<Station> stations = new ArrayList<>();
      int number = 0;
      for (int k = 0; k < 1 + random.nextInt(8); k++) {
        number += 1 + random.nextInt(3);
        stations.add(Station.at(number, point(random), point(random)));
      }
      legs.add(
          new Leg(
              NAMES[i], List.of(Kind.values()).get(i), setup, stations, "Because, \"so\" is it."));
    }
    return new ShotPlan(legs);
  }

  private static Vec3 point(SplittableRandom random) {
    return new Vec3(
        4 * random.nextDouble() - 2, 4 * random.nextDouble() - 2, 0.05 + 2 * random.nextDouble());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void reads_back_what_it_wrote(long seed) throws IOException {
    ShotPlan plan = random(seed);
    ShotPlan byCsv = read(ShotCsv.of(plan));
    ShotPlan byJson = read(ShotJson.of(plan));
    assertThat(ShotCsv.of(read(ShotCsv.of(byCsv)))).isEqualTo(ShotCsv.of(byCsv));
    assertThat(ShotJson.of(read(ShotJson.of(byJson)))).isEqualTo(ShotJson.of(byJson));
    assertThat(ShotCsv.of(byJson)).isEqualTo(ShotCsv.of(byCsv));
    assertThat(byJson.legs()).extracting(Leg::why).containsOnly("Because, \"so\" is it.");
    for (int i = 0; i < plan.shots().size(); i++) {
      Station was = plan.shots().get(i).station();
      Station is = byCsv.shots().get(i).station();
      // Half a tenth of a millimetre, and half a hundredth of a degree at up to 3 m.
      assertThat(is.position().minus(was.position()).norm()).isLessThan(4e-4);
      assertThat(is.target().minus(was.target()).norm()).isLessThan(1e-4);
      assertThat(byCsv.shots().get(i).leg().kind()).isEqualTo(plan.shots().get(i).leg().kind());
    }
  }

  /** Columns in another order, semicolons, decimal commas: as another spreadsheet saves it. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void reads_the_table_in_another_order_of_columns_and_with_decimal_commas(long seed)
      throws IOException {
    ShotPlan plan = random(seed);
    List<String> turned = new ArrayList<>();
    for (String line :
        ShotCsv.of(plan).replace("detail of =pocket, \"\"2\"\"", "d").lines().toList()) {
      List<String> cells = new ArrayList<>(List.of(line.replace("\"", "").split(",", -1)));
      java.util.Collections.reverse(cells);
      turned.add(String.join(";", cells).replace('.', ','));
    }
    ShotPlan back = read("sep=;\n" + String.join("\n", turned));
    assertThat(back.photos()).isEqualTo(plan.photos());
    for (int i = 0; i < plan.shots().size(); i++) {
      assertThat(
              back.shots()
                  .get(i)
                  .station()
                  .position()
                  .minus(plan.shots().get(i).station().position())
                  .norm())
          .isLessThan(4e-4);
    }
  }

  @Test
  void a_table_with_only_what_is_needed_will_do() throws IOException {
    ShotPlan plan =
        read(
            """
            Leg;clock;lens height m;distance cm;my own column
            ring A;6:00;0.92;50;x
            ring A;3:00;92 cm;0.5 m;

            high ring;12:00;1,22;50;
            """);
    Station first = plan.shots().get(0).station();
    assertThat(first.position().y()).isCloseTo(-0.5, within(1e-12));
    assertThat(plan.shots().get(1).station().position().x()).isCloseTo(0.5, within(1e-12));
    // 30 cm up and 50 cm away: 40 cm along the floor, the triangle of 3, 4 and 5.
    assertThat(plan.shots().get(2).station().position().y()).isCloseTo(0.4, within(1e-12));
    assertThat(plan.legs()).extracting(Leg::name).containsExactly("ring A", "high ring");
    assertThat(plan.legs().get(0).setup().focus().centimetres()).isCloseTo(47, within(1e-9));
  }

  /** By hand: 40 cm + 4.8 mm + 15 cm to the middle, 16.5 cm below it, focus 2ab/(a+b). */
  @Test
  void the_table_of_the_pot_reads_as_it_is_printed() {
    ShotPlan plan = StandardPlan.of(Reckoning.of(Scenes.pot())).orElseThrow();
    assertThat(ShotCsv.of(plan).lines().limit(3))
        .containsExactly(
            "leg,number,pose,clock,azimuth_deg,lens_height_cm,distance_cm,floor_distance_cm,"
                + "aim_right_cm,aim_back_cm,aim_height_cm,hold,focus_cm,photographs,done,notes",
            "ring A,1,standing,6:00,-90,75.5,55.48,52.97,0,0,92,upright,46.81,1,,",
            "ring A,2,standing,5:36,-78,75.5,55.48,52.97,0,0,92,upright,46.81,1,,");
    assertThat(ShotText.of(plan, Lengths.METRIC).lines().limit(5))
        .containsExactly(
            "Ring A: 30 photographs",
            "  Ring A, 17° below: 30 photographs, 12° apart; the camera looks up from below the"
                + " middle.",
            "  object standing, camera upright, focus at 47 cm",
            "       no.  clock  azimuth  lens height  along floor  to the spot  aim",
            "  [ ]  1    6:00   -90°     76 cm        53 cm        55 cm        92 cm high");
  }

  @Test
  void no_cell_is_a_formula_to_a_spreadsheet() throws IOException {
    Leg leg =
        new Leg(
            "=1+1",
            Kind.RING,
            random(1).legs().get(0).setup(),
            random(1).legs().get(0).stations(),
            "");
    String csv = ShotCsv.of(new ShotPlan(List.of(leg)));
    assertThat(csv.lines().skip(1)).allSatisfy(line -> assertThat(line).startsWith("'=1+1,"));
    assertThat(read(csv).legs().get(0).name()).isEqualTo("=1+1");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cells.csv",
        "head.csv",
        "empty.csv",
        "no-rows.csv",
        "legs.csv",
        "broken.json",
        "cells.json"
      })
  void tells_every_fault_with_its_line(String name) throws IOException {
    Problems problems = new Problems();
    Optional<ShotPlan> plan =
        ShotTables.read(
            name,
            new ByteArrayInputStream(Files.readAllBytes(BAD.resolve(name))),
            DEFAULTS,
            problems);
    assertThat(plan).isEmpty();
    List<String> told = problems.sorted().stream().map(Problem::toString).toList();
    Path expected = BAD.resolve(name + ".expected");
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(expected, String.join("\n", told) + "\n");
    }
    assertThat(String.join("\n", told) + "\n").isEqualTo(Files.readString(expected));
  }
}
