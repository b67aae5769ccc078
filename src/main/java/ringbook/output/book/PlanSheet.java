package ringbook.output.book;

import java.io.IOException;
import java.util.List;
import org.w3c.dom.Document;
import ringbook.course.CourseInfo;
import ringbook.figures.Figure;
import ringbook.figures.SvgWriter;
import ringbook.output.Templates;
import ringbook.plans.Clock;
import ringbook.plans.PlanWords;
import ringbook.sheets.PlanReport;
import ringbook.shots.Leg;
import ringbook.shots.Station;
import ringbook.units.Decimal;
import ringbook.units.Num;
import ringbook.units.Numbers;

/** A plan as pages to print, with boxes to tick: set by the press of the book. */
public final class PlanSheet {

  /** Width of the text, as in plan.css. */
  private static final double WIDE_MM = 178;

  /** What a page has room for above a caption. */
  private static final double HIGH_MM = 235;

  /** What the first page has room for below findings. */
  private static final double BELOW_MM = 160;

  private static final String BOX = "viewBox=\"0 0 ";

  private final PlanReport report;
  private final PlanWords words;
  private final StringBuilder page = new StringBuilder();

  private PlanSheet(PlanReport report) {
    this.report = report;
    words = PlanWords.of(report.assessment().plan(), report.scene().aim().lengths());
  }

  /**
   * The bytes of the PDF.
   *
   * @param figures drawn at the head, the last of them at the end
   * @param date of the edition, ISO 8601; never the clock's
   * @throws BookException if a letter is in none of the fonts or the page maker warns
   */
  public static byte[] pdf(PlanReport report, List<Figure> figures, String date)
      throws IOException {
    BookFonts fonts = BookFonts.liberation();
    Document print = PrintDocument.parse(new PlanSheet(report).xhtml(figures));
    PrintDrawings.prepare(print.getDocumentElement());
    Letters.check(print, fonts);
    CourseInfo info = new CourseInfo(report.title(), "", "", date, "en", "");
    return BookPress.press(print, fonts, info).bytes();
  }

  private String xhtml(List<Figure> figures) throws IOException {
    page.append("<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>")
        .append(text(report.title()))
        .append("</title><meta name=\"subject\" content=\"")
        .append(text(report.title()))
        .append("\"/><style>")
        .append(Templates.style("book/plan"))
        .append("</style></head><body>");
    page.append("<h1>").append(text(report.title())).append("</h1>");
    report.summary().forEach(sentence -> paragraph("summary", sentence));
    page.append("<h2>What to know</h2><ul>");
    report.findings().forEach(one -> page.append("<li>").append(text(one)).append("</li>"));
    page.append("</ul>");
    // What is walked by comes first, what few look up last.
    int last = figures.size() - 1;
    for (int i = 0; i < last; i++) {
      drawing(figures.get(i), BELOW_MM);
      boolean again = figures.get(i + 1).tableRows().equals(figures.get(i).tableRows());
      if (!again) {
        numbers(figures.get(i));
      }
    }
    report.assessment().plan().legs().forEach(this::leg);
    if (last >= 0) {
      drawing(figures.get(last), HIGH_MM);
      numbers(figures.get(last));
    }
    return page.append("</body></html>").toString();
  }

  private void drawing(Figure figure, double highest) {
    page.append("<div class=\"drawing\" data-mm=\"")
        .append(Numbers.fixed(millimetres(figure, highest), 1))
        .append("\">")
        .append(figure.svg())
        .append("</div>");
    paragraph("caption", figure.title());
  }

  /** As wide as the page, unless it would be too high then. */
  private static double millimetres(Figure figure, double highest) {
    String svg = figure.svg();
    int from = svg.indexOf(BOX) + BOX.length();
    String[] size = svg.substring(from, svg.indexOf('"', from)).split(" ", -1);
    double shape = Decimal.parse(size[1]).orElseThrow() / Decimal.parse(size[0]).orElseThrow();
    return Math.min(WIDE_MM, highest / shape);
  }

  /** The numbers of a drawing; two drawings of the same numbers in a row share one table. */
  private void numbers(Figure figure) {
    if (figure.tableRows().isEmpty()) {
      return;
    }
    page.append("<table class=\"numbers\"><thead><tr>");
    for (String head : figure.tableHead()) {
      page.append("<th scope=\"col\">").append(text(head)).append("</th>");
    }
    page.append("</tr></thead><tbody>");
    for (List<String> row : figure.tableRows()) {
      page.append("<tr>");
      row.forEach(this::cell);
      page.append("</tr>");
    }
    page.append("</tbody></table>");
  }

  private void leg(Leg leg) {
    page.append("<div class=\"leg\"><h2>").append(text(PlanWords.title(leg))).append("</h2>");
    paragraph("why", leg.why());
    paragraph(
        "setup",
        "Slate: photograph a card that says " + leg.name() + ". Then: " + words.setup(leg) + ".");
    page.append(
        "<table><thead><tr><th scope=\"col\">Done</th><th scope=\"col\">No.</th>"
            + "<th scope=\"col\">Clock</th><th scope=\"col\">Azimuth</th>"
            + "<th scope=\"col\">Lens height</th><th scope=\"col\">Along floor</th>"
            + "<th scope=\"col\">To the spot</th><th scope=\"col\">Aim</th>"
            + "<th scope=\"col\">Notes</th></tr></thead><tbody>");
    for (Station station : leg.stations()) {
      double floor = Num.hypot(station.position().x(), station.position().y());
      double away = station.target().minus(station.position()).norm();
      page.append("<tr><td><div class=\"box\"></div></td>");
      cell(String.valueOf(station.number()));
      cell(Clock.of(station.azimuth()));
      cell(PlanWords.azimuth(station));
      cell(words.length(station.position().z()));
      cell(words.length(floor));
      cell(words.length(away));
      cell(words.aim(station));
      page.append("<td class=\"notes\"></td></tr>");
    }
    page.append("</tbody></table></div>");
  }

  private void cell(String value) {
    page.append("<td>").append(text(value)).append("</td>");
  }

  private void paragraph(String kind, String sentence) {
    if (!sentence.isEmpty()) {
      page.append("<p class=\"").append(kind).append("\">").append(text(sentence)).append("</p>");
    }
  }

  private static String text(String plain) {
    return SvgWriter.escaped(plain);
  }
}
