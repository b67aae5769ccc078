package ringbook.output.book;

import static org.assertj.core.api.Assertions.assertThat;

import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ringbook.course.typeset.Formulas;

/** Formulas that are kept once and placed again, against an SVG renderer that draws each anew. */
final class FormulaDrawerTest {

  private static final int DPI = 144;

  /** Pixels: the other drawer rounds places and cuts off at whole pixels of 1/96 in. */
  private static final int NEAR = 3;

  private static byte[] ours;
  private static List<BufferedImage> once;
  private static List<BufferedImage> anew;

  @BeforeAll
  static void press() throws IOException {
    ours = pressed(new FormulaDrawer());
    once = pages(ours);
    anew = pages(pressed(new BatikSVGDrawer()));
  }

  /** The same formulas on each of six pages, in two sizes and two colours. */
  private static byte[] pressed(SVGDrawer drawer) throws IOException {
    List<String> formulas = new ArrayList<>();
    for (String tex :
        List.of(
            "u_{\\mathrm{w}}=f\\,\\left(1+\\frac{W}{\\varphi\\,s_{\\mathrm{w}}}\\right)",
            "d=\\sqrt{w^2+h^2}",
            "D=59.1\\,\\mathrm{cm}")) {
      formulas.add(Formulas.display(tex, "a formula").orElseThrow());
    }
    StringBuilder page = new StringBuilder();
    for (int i = 0; i < 6; i++) {
      page.append("<div class=\"page").append(i % 2).append("\">");
      for (String formula : formulas) {
        page.append("<p>with ").append(formula).append(" it is ").append(formula).append("</p>");
      }
      page.append("</div>");
    }
    String style =
        "@page{size:130mm 70mm;margin:10mm} svg{display:inline-block} p{height:14mm;margin:0}"
            + " div{page-break-after:always;font:11pt 'Liberation Serif'} .page1{font-size:8.5pt}";
    String xhtml =
        "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>t</title>"
            + "<meta name=\"subject\" content=\"s\"/><style>"
            + style
            + "</style></head><body><h1 style=\"font:9pt 'Liberation Sans'\">Formulas</h1>"
            + page
            + "</body></html>";
    BookFonts fonts = BookFonts.liberation();
    return BookPress.press(PrintDocument.sheet(xhtml), fonts, SampleCourse.INFO, pdf -> {}, drawer)
        .bytes();
  }

  private static List<BufferedImage> pages(byte[] bytes) throws IOException {
    List<BufferedImage> pages = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      for (int page = 0; page < pdf.getNumberOfPages(); page++) {
        pages.add(new PDFRenderer(pdf).renderImageWithDPI(page, DPI));
      }
    }
    return pages;
  }

  private static boolean dark(BufferedImage page, int x, int y) {
    return darker(page, x, y, 128);
  }

  private static boolean darker(BufferedImage page, int x, int y, int level) {
    boolean inside = x >= 0 && y >= 0 && x < page.getWidth() && y < page.getHeight();
    return inside && (page.getRGB(x, y) & 255) < level;
  }

  private static boolean darkNear(BufferedImage page, int x, int y) {
    for (int dx = -NEAR; dx <= NEAR; dx++) {
      for (int dy = -NEAR; dy <= NEAR; dy++) {
        if (darker(page, x + dx, y + dy, 200)) { // a hair line between two pixels is pale
          return true;
        }
      }
    }
    return false;
  }

  /** Dark pixels of one page that have no dark one near them on the other. */
  private static int lost(BufferedImage from, BufferedImage on) {
    int lost = 0;
    for (int y = 0; y < from.getHeight(); y++) {
      for (int x = 0; x < from.getWidth(); x++) {
        lost += dark(from, x, y) && !darkNear(on, x, y) ? 1 : 0;
      }
    }
    return lost;
  }

  @Test
  void no_place_is_left_empty() {
    assertThat(once).hasSameSizeAs(anew).hasSizeGreaterThanOrEqualTo(6);
    for (int page = 0; page < once.size(); page++) {
      assertThat(lost(anew.get(page), once.get(page))).as("lost on page " + page).isZero();
      assertThat(lost(once.get(page), anew.get(page))).as("new on page " + page).isZero();
    }
  }

  @Test
  void pages_with_the_same_words_look_the_same() {
    for (int page = 4; page < 6; page++) {
      BufferedImage first = once.get(page - 2);
      BufferedImage later = once.get(page);
      assertThat(pixels(later)).isEqualTo(pixels(first));
    }
  }

  private static int[] pixels(BufferedImage page) {
    return page.getRGB(0, 0, page.getWidth(), page.getHeight(), null, 0, page.getWidth());
  }

  @Test
  void each_is_kept_once_for_each_size() throws IOException {
    Set<Long> kept = new TreeSet<>();
    try (PDDocument pdf = Loader.loadPDF(ours)) {
      for (PDPage page : pdf.getPages()) {
        for (COSName name : page.getResources().getXObjectNames()) {
          kept.add(
              page.getResources()
                  .getCOSObject()
                  .getCOSDictionary(COSName.XOBJECT)
                  .getCOSObject(name)
                  .getKey()
                  .getNumber());
        }
      }
    }
    assertThat(kept).hasSize(6);
  }

  /** The lower ends of figures and of brackets: the other drawer leaves a strip of them out. */
  @Test
  void nothing_is_cut_off_below() {
    BufferedImage page = once.get(0);
    int last = 0;
    int lastAnew = 0;
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        last = dark(page, x, y) ? y : last;
        lastAnew = dark(anew.get(0), x, y) ? y : lastAnew;
      }
    }
    assertThat(last).isGreaterThanOrEqualTo(lastAnew);
  }
}
