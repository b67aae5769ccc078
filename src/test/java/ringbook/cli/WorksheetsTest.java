package ringbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.course.compose.CourseSources;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.problems.Problems;

/** Worksheets filled in by PDFBox, handed in among others, and marked. */
final class WorksheetsTest {

  private static final String LESSON = DistanceSheets.NAME;

  @TempDir private static Path folder;
  private static Path place;
  private static List<ExerciseSource> exercises;

  @BeforeAll
  static void make() throws IOException {
    Problems problems = new Problems();
    CourseSources sources =
        CourseSources.read(Path.of("lessons/course.yaml"), problems).orElseThrow();
    exercises = sources.plainSources(problems);
    place = DistanceSheets.write(sources, folder, "Ida");
  }

  private interface Change {
    void make(PDDocument pdf) throws IOException;
  }

  private static byte[] changed(Path sheet, Change change) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(sheet.toFile())) {
      change.make(pdf);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      pdf.save(bytes);
      return bytes.toByteArray();
    }
  }

  private static void fill(PDDocument pdf, String name, Map<String, String> answers)
      throws IOException {
    PDAcroForm form = pdf.getDocumentCatalog().getAcroForm(null);
    if (!name.isEmpty()) {
      form.getField("@learner").setValue(name);
    }
    for (Map.Entry<String, String> answer : answers.entrySet()) {
      form.getField(answer.getKey()).setValue(answer.getValue());
    }
  }

  private static Map<String, String> fields(Path sheet) throws IOException {
    Map<String, String> fields = new TreeMap<>();
    try (PDDocument pdf = Loader.loadPDF(sheet.toFile())) {
      for (PDField field : pdf.getDocumentCatalog().getAcroForm(null).getFieldTree()) {
        fields.put(field.getFullyQualifiedName(), field.getAlternateFieldName());
      }
    }
    return fields;
  }

  @Test
  void fields_are_named_as_their_exercises_and_say_their_titles() throws IOException {
    assertThat(fields(place.resolve("worksheets/" + LESSON)))
        .containsEntry("distance-owl", "The stone owl")
        .containsEntry("@learner", "Your name");
    try (PDDocument pdf = Loader.loadPDF(place.resolve("worksheets/" + LESSON).toFile())) {
      for (PDPage page : pdf.getPages()) {
        // Tab order by the structure, ISO 32000-1, table 30.
        assertThat(page.getCOSObject().getNameAsString("Tabs")).isEqualTo("S");
      }
    }
  }

  @Test
  void a_filled_worksheet_is_marked_as_a_table_with_its_answers() throws IOException {
    for (boolean own : new boolean[] {false, true}) {
      Path sheet = place.resolve(own ? "learners/Ida.pdf" : "worksheets/" + LESSON);
      Map<String, String> answers = new TreeMap<>();
      StringBuilder table = new StringBuilder("learner,exercise,answer\n");
      int count = 0;
      for (ExerciseSource source : exercises) {
        if (fields(sheet).containsKey(source.id())) {
          Exercise exercise = own ? source.forLearner("Ida") : source.own();
          String answer = count++ % 3 == 2 ? "17 cm" : exercise.answerText();
          answers.put(source.id(), answer);
          table.append("Ida,").append(source.id()).append(",\"");
          table.append(answer.replace("\"", "\"\"")).append("\"\n");
        }
      }
      assertThat(answers).hasSizeGreaterThan(5);
      Path form = folder.resolve(own ? "own.pdf" : "book.pdf");
      Files.write(form, changed(sheet, pdf -> fill(pdf, own ? "" : "Ida", answers)));
      Path csv = folder.resolve(own ? "own.csv" : "book.csv");
      Files.writeString(csv, table);
      Shell filled = Shell.run("mark", form.toString());
      Shell written = Shell.run("mark", csv.toString(), "--numbers", own ? "own" : "book");
      assertThat(filled.err()).isEmpty();
      assertThat(filled.out()).isEqualTo(written.out()).contains("Right");
      assertThat(filled.code()).isZero();
    }
  }

  /**
   * {@code filled-in-a-browser.pdf} is the sheet of lesson 4, typed into key by key in the viewer
   * of a Gecko browser (version 153, by WebDriver BiDi) and saved by that viewer, with letters
   * outside Latin-1 in the name; the table beside it holds what was typed. {@code
   * filled-in-chromium.pdf} is the same sheet, typed into from field to field by the tab key in
   * Chromium's viewer (version 156) and saved there with its changes.
   */
  @ParameterizedTest
  @CsvSource({
    "filled-in-a-browser, Zoë Łukasz, 7 of 7",
    "filled-in-chromium, Çağla Şahin-Łukasz, 8 of 8"
  })
  void a_worksheet_filled_in_the_viewer_of_a_browser_is_marked_as_a_table_with_its_answers(
      String name, String learner, String answered) {
    String place = "src/test/resources/ringbook/cli/" + name + ".";
    Shell filled = Shell.run("mark", place + "pdf");
    Shell written = Shell.run("mark", place + "csv", "--numbers", "book");
    assertThat(filled.err()).isEmpty();
    assertThat(filled.out()).isEqualTo(written.out()).contains(learner, answered);
    assertThat(filled.code()).isZero();
  }

  /**
   * Poppler, a second reader of PDF, sees the answers where the page shows them. (It takes letters
   * with single spaces between them for one word in spaced type, hence the commas.)
   */
  @Test
  void another_reader_shows_what_was_filled_in_below_its_question()
      throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/pdftotext")), "needs poppler-utils");
    Map<String, String> answers = Map.of("distance-owl", "42.5 cm", "distance-order", "c, a, b, d");
    Path form = folder.resolve("poppler.pdf");
    Files.write(
        form, changed(place.resolve("worksheets/" + LESSON), pdf -> fill(pdf, "Zoë", answers)));
    Process reader =
        new ProcessBuilder("/usr/bin/pdftotext", "-enc", "UTF-8", "-layout", form.toString(), "-")
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String text = new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(reader.waitFor()).isZero();
    assertThat(text.replaceAll("\\s+", " "))
        .contains(
            "Your name Zoë The stone owl distance-owl", "with its unit 42.5 cm", "c, a, b, d");
  }

  @Test
  void files_that_cannot_be_read_are_told_each_and_the_rest_is_marked() throws IOException {
    Path sheet = place.resolve("worksheets/" + LESSON);
    Path in = Files.createDirectories(folder.resolve("in/deep"));
    Map<String, String> right = Map.of("distance-owl", "42.5 cm");
    Files.write(in.resolve("good.pdf"), changed(sheet, pdf -> fill(pdf, "Ida", right)));
    Files.write(in.resolve("noname.pdf"), changed(sheet, pdf -> fill(pdf, "", right)));
    Files.write(
        in.resolve("locked.pdf"),
        changed(
            sheet,
            pdf -> pdf.protect(new StandardProtectionPolicy("o", "u", new AccessPermission()))));
    Files.write(
        in.resolve("open-locked.pdf"),
        changed(
            sheet,
            pdf -> pdf.protect(new StandardProtectionPolicy("o", "", new AccessPermission()))));
    Files.write(
        in.resolve("script.pdf"),
        changed(
            sheet,
            pdf -> pdf.getDocumentCatalog().setOpenAction(new PDActionJavaScript("app.alert(1)"))));
    Files.write(
        in.resolve("flat.pdf"),
        changed(
            sheet,
            pdf -> {
              fill(pdf, "Ida", right);
              pdf.getDocumentCatalog().getAcroForm(null).flatten();
            }));
    byte[] whole = Files.readAllBytes(in.resolve("good.pdf"));
    Files.write(in.resolve("half.pdf"), java.util.Arrays.copyOf(whole, whole.length / 2));
    Files.write(in.resolve("no-head.pdf"), java.util.Arrays.copyOfRange(whole, 2000, whole.length));
    Files.write(in.resolve("empty.pdf"), new byte[0]);
    Files.write(in.resolve("unanswered.pdf"), changed(sheet, pdf -> fill(pdf, "Bo", Map.of())));
    try (PDDocument scan = new PDDocument()) {
      PDPage page = new PDPage();
      scan.addPage(page);
      BufferedImage picture = new BufferedImage(8, 8, BufferedImage.TYPE_BYTE_GRAY);
      try (PDPageContentStream ink = new PDPageContentStream(scan, page)) {
        ink.drawImage(LosslessFactory.createFromImage(scan, picture), 0, 0, 600, 800);
      }
      scan.save(in.resolve("scan.pdf").toFile());
    }
    try (PDDocument other = new PDDocument()) {
      other.addPage(new PDPage());
      other.save(in.resolve("other.pdf").toFile());
    }
    Files.write(
        in.resolve("course.pdf"),
        changed(
            sheet,
            pdf -> {
              fill(pdf, "Ida", right);
              pdf.getDocumentCatalog()
                  .getAcroForm(null)
                  .getField("@course")
                  .getCOSObject()
                  .setString(org.apache.pdfbox.cos.COSName.V, "Another");
            }));
    Shell shell = Shell.run("mark", folder.resolve("in").toString());
    String err = shell.err().replace(in + "/", "").replaceAll("(?m)^  mend:.*\n", "");
    assertThat(err.lines())
        .containsExactlyInAnyOrder(
            "course.pdf: error: this worksheet belongs to the course 'Another'",
            "empty.pdf: error: this file is named as a PDF, but there is none in it",
            "flat.pdf: error: this PDF shows exercises but has no fields to read: it is a"
                + " flattened worksheet, or none",
            "half.pdf: error: this PDF is damaged: it ends too early or its parts do not fit",
            "locked.pdf: error: this PDF is encrypted",
            "no-head.pdf: error: this file is named as a PDF, but there is none in it",
            "noname.pdf: error: the worksheet has no name on it",
            "open-locked.pdf: error: this PDF is encrypted",
            "other.pdf: error: this PDF is foreign: it is no worksheet of a course",
            "script.pdf: error: this PDF is scripted: it holds actions that run, send or fetch"
                + " something; nothing was run or read",
            "scan.pdf: error: this PDF is a picture, such as a scan: no answers can be read in it",
            "unanswered.pdf: error: the worksheet of Bo has no answers in it",
            "12 problems.");
    assertThat(shell.code()).isEqualTo(Main.PROBLEMS);
    assertThat(shell.out()).contains("Ida      1 of 1    1      1");
  }
}
