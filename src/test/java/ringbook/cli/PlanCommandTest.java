package ringbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code plan}: what it prints and writes, and what it finds in people's tables. */
final class PlanCommandTest {

  private static final String HEAD = "leg,clock,lens_height_cm,distance_cm,focus_cm\n";
  private static final String SMALL =
      "subject.outline = rectangular, subject.width = 12 cm, subject.depth = 10 cm,"
          + " subject.height = 15 cm";

  @TempDir private Path folder;

  private static Shell plan(String... arguments) {
    List<String> all = new ArrayList<>(List.of("plan", "--no-course"));
    all.addAll(List.of(arguments));
    return Shell.run(all.toArray(String[]::new));
  }

  /** A ring of a person's table: from one azimuth to another, in degrees. */
  private static String ring(String leg, int photos, double from, double to, String rest) {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < photos; i++) {
      double azimuth = from + (to - from) * i / photos;
      long minutes = Math.floorMod((long) Math.rint((90 - azimuth) * 2), 720L);
      rows.append(leg).append(',');
      rows.append(minutes / 60 == 0 ? 12 : minutes / 60).append(':');
      rows.append(minutes % 60 < 10 ? "0" : "")
          .append(minutes % 60)
          .append(',')
          .append(rest)
          .append('\n');
    }
    return rows.toString();
  }

  private Shell judge(String table, String... more) throws IOException {
    Path file = folder.resolve("table.csv");
    Files.writeString(file, HEAD + table);
    List<String> all = new ArrayList<>(List.of(more));
    all.addAll(List.of("--judge", file.toString()));
    return plan(all.toArray(String[]::new));
  }

  @Test
  void prints_a_plan_with_its_bound_its_findings_and_its_table() {
    Shell shell = plan("--with", SMALL);
    assertThat(shell.err()).isEmpty();
    assertThat(shell.code()).isZero();
    assertThat(shell.out().replace("\n  ", " "))
        .startsWith("Shot plan: object\n")
        .containsPattern("From the \\d+ stations tried, no plan of fewer than \\d+ sees as much")
        .contains("What to know", "What to take", "[ ]  1 ")
        .containsPattern("Ring A, .*: \\d+ photographs, ")
        .contains("cannot be seen in this pose: second pose");
  }

  @Test
  void writes_all_files_or_none() throws IOException {
    Path to = folder.resolve("plan");
    Shell shell = plan("--with", SMALL, "--to", to.toString());
    assertThat(shell.code()).as(shell.err()).isZero();
    assertThat(to).isDirectoryContaining("glob:**plan.pdf");
    for (String name : List.of("shots.csv", "plan.json", "plan.txt", "above.svg", "side.svg")) {
      assertThat(to.resolve(name)).isNotEmptyFile();
    }
    assertThat(wellInDrawing(Files.readString(to.resolve("coverage.svg"))))
        .isEqualTo(firstMatch("(\\d+) % of the surface is seen well", shell.out()));
    assertThat(Files.readString(to.resolve("plan.txt"))).isEqualTo(shell.out());
    try (PDDocument pdf = Loader.loadPDF(to.resolve("plan.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      assertThat(text).contains("Shot plan: object", "What to know", "Ring A", "Done");
      assertThat(text).contains("Part and height above the table", "Fewest", "Most");
    }
    byte[] first = Files.readAllBytes(to.resolve("plan.pdf"));
    assertThat(plan("--with", SMALL, "--to", to.toString()).code()).isZero();
    assertThat(Files.readAllBytes(to.resolve("plan.pdf"))).isEqualTo(first);
    Path taken = folder.resolve("taken");
    Files.createDirectories(taken);
    Files.writeString(taken.resolve("mine.txt"), "keep");
    assertThat(plan("--with", SMALL, "--to", taken.toString()).code()).isEqualTo(1);
    assertThat(taken.toFile().list()).containsExactly("mine.txt");
  }

  private static String wellInDrawing(String svg) {
    return firstMatch("(\\d+)\u00a0% of the surface is seen well", svg);
  }

  private static String firstMatch(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    assertThat(matcher.find()).as(pattern).isTrue();
    return matcher.group(1);
  }

  /** Its own table, read back, is judged like the plan itself. */
  @Test
  void judges_its_own_table_as_it_judged_its_plan() throws IOException {
    Path table = folder.resolve("own.csv");
    Shell made = plan("--with", SMALL, "--format", "csv");
    Files.writeString(table, made.out());
    Shell judged = plan("--with", SMALL, "--judge", table.toString());
    assertThat(judged.err()).isEmpty();
    assertThat(judged.out()).contains("What to know").doesNotContain("pieces", "not tied");
    Path json = folder.resolve("own.json");
    Files.writeString(json, plan("--with", SMALL, "--format", "json").out());
    Shell byJson = plan("--with", SMALL, "--judge", json.toString());
    assertThat(Files.readString(json)).containsPattern("\"stations_tried\": ?\\d\\d+");
    assertThat(known(byJson.out())).isEqualTo(known(judged.out())).isNotEmpty();
  }

  private static String known(String report) {
    return report.substring(report.indexOf("What to know"), report.indexOf("What to take"));
  }

  @Test
  void finds_that_five_photographs_are_too_few() throws IOException {
    Shell shell = judge(ring("ring A", 5, -90, 270, "95,42,36"));
    assertThat(shell.code()).isEqualTo(1);
    assertThat(shell.out().replace("\n  ", " "))
        .containsPattern("Ring A: 5 photographs, 72° apart, are too few to be matched")
        .containsPattern("Mend: ring A: \\d+ photographs instead of 5 \\(\\d+ more\\)");
  }

  @Test
  void finds_a_blocked_arc_and_says_how_many_are_missing() throws IOException {
    Shell shell = judge(ring("ring A", 25, -90, 210, "95,42,36"));
    assertThat(shell.code()).isEqualTo(1);
    assertThat(shell.out().replace("\n  ", " "))
        .containsPattern("Ring A between \\d+° and \\d+° .*: no photograph over 7\\d°")
        .containsPattern("\\d more photographs between");
  }

  @Test
  void finds_that_the_low_ring_was_forgotten() throws IOException {
    Shell shell = judge(ring("ring A", 24, -90, 270, "126,42,36"));
    assertThat(shell.code()).isEqualTo(1);
    assertThat(shell.out().replace("\n  ", " "))
        .containsPattern("Side, all round, 0 cm to \\d+ cm above the table.*Mend: a ring of");
  }

  /** Round the demo's pot a workbench is in the way of one arc. */
  @Test
  void mends_five_photographs_beside_a_workbench() throws IOException {
    assertThat(ofDemo(ring("ring A", 5, -90, 270, "106,55,47")))
        .containsPattern(
            "Ring A: 5 photographs, 72° apart, are too few to be matched.*Mend: ring A: 2\\d"
                + " photographs instead of 5 \\((1|2)\\d more\\), 1\\d° apart, but for the"
                + " .*places? where nobody can stand");
  }

  @Test
  void finds_the_blocked_arc_of_the_demo() throws IOException {
    assertThat(ofDemo(ring("ring A", 25, -90, 210, "106,55,47")))
        .containsPattern(
            "Ring A between 318° and 342° .*: no photograph over 24°, behind workbench")
        .containsPattern(
            "Ring A between 198° and 270° .*: no photograph over 72°; .* Mend: ring A: 5 more"
                + " photographs between 198° and 270°");
  }

  /** Two rings from above; the band near the table is only seen too slanted. */
  @Test
  void finds_the_forgotten_low_ring_of_the_demo() throws IOException {
    String high = ring("ring A", 24, -90, 270, "120,55,47");
    assertThat(ofDemo(high + ring("ring B", 20, -90, 270, "134,55,47")))
        .containsPattern(
            "Side, all round, 0 cm to \\d cm above the table: \\d+ % of the surface is not seen:"
                + " only seen too slanted. Mend: a ring of 2\\d photographs, lens \\d\\d cm above"
                + " the floor");
  }

  private String ofDemo(String table) throws IOException {
    Path file = folder.resolve("demo.csv");
    Files.writeString(file, HEAD + table);
    Shell shell = Shell.run("plan", "lessons/course.yaml", "--judge", file.toString());
    assertThat(shell.code()).isEqualTo(1);
    return shell.out().replace("\n  ", " ");
  }

  /** The chair has the longest drawing; all of its letters are of 8 points or more. */
  @Test
  void prints_no_letter_too_small_to_read() throws IOException {
    Path to = folder.resolve("chair");
    Shell shell =
        Shell.run("plan", "src/test/resources/ringbook/plans/chair.yaml", "--to", to.toString());
    assertThat(shell.code()).as(shell.err()).isZero();
    List<String> small = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(to.resolve("plan.pdf").toFile())) {
      new PDFTextStripper() {
        @Override
        protected void writeString(String text, List<TextPosition> letters) {
          for (TextPosition letter : letters) {
            if (letter.getYScale() < 8) {
              small.add(letter.getUnicode() + " " + letter.getYScale());
            }
          }
        }
      }.getText(pdf);
    }
    assertThat(small).isEmpty();
  }

  /** The demo pot by its sides only: what is inside and in the pockets is missing. */
  @Test
  void finds_a_forgotten_hole() throws IOException {
    Path file = folder.resolve("table.csv");
    Files.writeString(file, HEAD + ring("ring A", 30, -90, 270, "90,55,47"));
    Shell shell = Shell.run("plan", "lessons/course.yaml", "--judge", file.toString());
    assertThat(shell.code()).isEqualTo(1);
    assertThat(shell.out().replace("\n  ", " "))
        .containsPattern("(Inside|Pocket \\d).*of the surface is not seen")
        .containsPattern("Mend: \\d+ photographs aimed at it|Mend: a ring of");
  }

  /** Of its own plan only the workbench in the way and the side it rests on are told. */
  @Test
  void mends_its_own_plan_of_the_demo_before_it_shows_it() {
    Shell shell = Shell.run("plan", "lessons/course.yaml");
    assertThat(shell.code()).as(shell.err()).isZero();
    assertThat(known(shell.out().replace("\n  ", " ")).lines().filter(l -> l.startsWith("- ")))
        .allSatisfy(
            line ->
                assertThat(line)
                    .containsAnyOf("behind workbench", "cannot be seen in this pose", "small"));
  }

  /** The owl is a mesh file and is turned over: nothing is left to find. */
  @Test
  void plans_for_a_mesh_in_two_poses() {
    Shell shell = Shell.run("plan", "src/test/resources/ringbook/plans/owl.yaml");
    assertThat(shell.code()).as(shell.err()).isZero();
    assertThat(shell.out())
        .contains("100 % of the surface is seen well", "object turned over", "object standing")
        .contains("- Nothing is wrong with this plan.");
  }

  /** Between two walls no ring closes, and the plan says so; all the same it is one chain. */
  @Test
  void plans_for_a_chair_in_a_narrow_room() {
    Shell shell = Shell.run("plan", "src/test/resources/ringbook/plans/chair.yaml");
    assertThat(shell.code()).as(shell.err()).isZero();
    assertThat(shell.out().replace("\n  ", " "))
        .contains("behind left wall", "behind right wall")
        .contains("Seat: base, all round, 42 cm above the table")
        .doesNotContain("not tied", "pieces");
  }

  @Test
  void faults_of_a_table_and_of_the_command_are_told() throws IOException {
    Shell broken = judge("ring A,6:00,high,42,36\n");
    assertThat(broken.code()).isEqualTo(1);
    assertThat(broken.err())
        .contains("table.csv:2: error: lens height: 'high'")
        .contains("1 problem.");
    assertThat(broken.out()).isEmpty();
    assertThat(plan("--judge", folder.resolve("none.csv").toString()).code()).isEqualTo(1);
    assertThat(plan("lessons/course.yaml").code()).isEqualTo(2);
    assertThat(plan("--with", "aim.stepLimit = 3°").err()).contains("there is no plan");
    assertThat(plan("--with", "subject.hight = 3 cm").code()).isEqualTo(1);
    assertThat(Shell.run("plan", "--format", "xml").code()).isEqualTo(2);
  }
}
