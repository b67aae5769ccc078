package ringbook.output.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.course.ComposedCourse;
import ringbook.output.FileNames;
import ringbook.output.Output;
import ringbook.output.Templates;
import ringbook.output.book.LastStep;
import ringbook.output.book.PagePress;
import ringbook.shots.ShotPlan;

/**
 * Writes {@code pack}: the sheets a trainer carries into the room, one PDF a sheet, in a folder for
 * each paper and kind of ink ({@code pack/a4-colour}). Every file has an even number of pages, so
 * that files printed one after the other on both sides of the paper each begin on a front.
 */
public final class PackOutput implements Output {

  /** The folder this output writes. */
  public static final String FOLDER = "pack";

  /** Sheets that state what the field card states. */
  private static final List<String> WITH_CARD =
      List.of("field-card", "choosing-sheet", "set-up", "before-you-leave", "consent-and-record");

  private static final String WORKSHEET = "worksheet";

  private final PackMatter matter;
  private final List<Paper> papers;
  private final List<Inks> inks;
  private final Templates templates = new Templates();

  /** A pack of this matter on these papers with these inks. */
  public PackOutput(PackMatter matter, List<Paper> papers, List<Inks> inks) {
    this.matter = matter;
    this.papers = List.copyOf(papers);
    this.inks = List.copyOf(inks);
  }

  @Override
  public String name() {
    return "print pack";
  }

  @Override
  public void write(ComposedCourse course, Path folder) throws IOException {
    PagePress press = PagePress.open();
    Map<String, Map<String, Object>> sheets = sheets(course, press);
    for (Paper paper : papers) {
      for (Inks ink : inks) {
        Path place = folder.resolve(FOLDER).resolve(paper.plainName() + "-" + ink.plainName());
        for (Map.Entry<String, Map<String, Object>> sheet : sheets.entrySet()) {
          Map<String, Object> model = new LinkedHashMap<>(sheet.getValue());
          model.put("paper", paper);
          model.put("inks", ink);
          String xhtml = templates.fill("pack/" + template(sheet.getKey()), model);
          byte[] pdf = press.sheet(xhtml, course.info(), ink::of, last(model, course));
          Path file = place.resolve(sheet.getKey() + ".pdf");
          Files.createDirectories(file.getParent());
          Files.write(file, pdf);
        }
      }
    }
  }

  /** Worksheets lie in a folder that is named as their template. */
  private static String template(String sheet) {
    int slash = sheet.indexOf('/');
    return slash < 0 ? sheet : WORKSHEET;
  }

  private static LastStep last(Map<String, Object> model, ComposedCourse course) {
    LastStep blank = new BlankBack();
    if (model.get("sheet") instanceof Worksheet sheet && sheet.form()) {
      FormFields fields = new FormFields(course.info().title(), sheet.learner());
      return pdf -> {
        blank.add(pdf);
        fields.add(pdf);
      };
    }
    return blank;
  }

  private void worksheets(
      ComposedCourse course, PagePress press, Map<String, Map<String, Object>> sheets) {
    Worksheet all = Worksheet.of(course);
    for (Worksheet.Part part : all.lessons()) {
      String number = (part.number() < 10 ? "0" : "") + part.number();
      Worksheet one = new Worksheet(part.title(), "", "", List.of(part), List.of(), true);
      sheets.put("worksheets/" + number + "-" + part.id(), Map.of("sheet", one));
    }
    FileNames names = new FileNames();
    List<Worksheet> own = new ArrayList<>();
    for (String learner : matter.learners()) {
      Worksheet one = all.own(learner, press.printable(learner), matter.own().of(learner));
      own.add(one);
      sheets.put("learners/" + names.of(learner), Map.of("sheet", one));
    }
    sheets.put("answer-key", Map.of("sheet", all.key(own)));
  }

  private Map<String, Map<String, Object>> sheets(ComposedCourse course, PagePress press) {
    PackNumbers numbers = new PackNumbers(matter.reckoning());
    Map<String, Map<String, Object>> sheets = new LinkedHashMap<>();
    Map<String, Object> card = Map.of("card", FieldCard.model(course, matter));
    for (String sheet : WITH_CARD) {
      sheets.put(sheet, card);
    }
    List<String> names =
        matter.learners().isEmpty()
            ? List.of("", "", "")
            : matter.learners().stream().map(press::printable).toList();
    sheets.put("result-slip", Map.of("names", names));
    Optional<ShotPlan> plan = matter.plan();
    plan.ifPresent(
        found -> sheets.put("shot-table", Map.of("table", ShotTable.model(matter, found))));
    worksheets(course, press, sheets);
    Map<String, Map<String, Object>> full = new LinkedHashMap<>();
    sheets.forEach(
        (name, own) -> {
          Map<String, Object> model = new LinkedHashMap<>(own);
          model.put("info", course.info());
          model.put("foot", foot(course));
          model.put("n", numbers);
          full.put(name, model);
        });
    return full;
  }

  /** Stands in a string of the style sheet. */
  private static String foot(ComposedCourse course) {
    String title = course.info().title().replace("\\", "").replace("\"", "”");
    return title + " · " + course.info().date();
  }
}
