package ringbook.output.book;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.extend.UserAgentCallback;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;

/**
 * Draws typeset formulas as one filled outline each; the same formula in the same size and colour
 * is kept once and placed again. Built up as other drawings are, each took its share of a quarter
 * of the time of a sheet, and lost a strip below and to the right.
 */
final class FormulaDrawer implements SVGDrawer {

  private final BatikSVGDrawer drawings = new BatikSVGDrawer();

  /** Most formulas of a sheet stand there several times. */
  private final Map<String, Shape> outlines = new HashMap<>();

  /** The page maker knows what it drew before by the very object, not by one that is equal. */
  private final Map<Object, Object> drawn = new HashMap<>();

  @Override
  public SVGImage buildSVGImage(
      Element svg, Box box, CssContext context, double width, double height, double dots) {
    if (width > 0 && height > 0 && FormulaImage.isFormula(svg)) {
      String data = FormulaImage.path(svg).getAttribute("d");
      Shape outline = outlines.computeIfAbsent(data, FormulaImage::outline);
      Object same = List.of(outline, width, height, svg.getAttribute("color"));
      return new FormulaImage(
          svg, outline, width, height, dots, drawn.computeIfAbsent(same, first -> first));
    }
    return drawings.buildSVGImage(svg, box, context, width, height, dots);
  }

  @Override
  public SVGImage buildStandaloneSVGImage(
      Element svg, String address, double width, double height, double dots) {
    return drawings.buildStandaloneSVGImage(svg, address, width, height, dots);
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> rules, SharedContext shared) {
    drawings.importFontFaceRules(rules, shared);
  }

  @Override
  public void withUserAgent(UserAgentCallback agent) {
    drawings.withUserAgent(agent);
  }

  @Override
  public void addFontFile(File file, String family, Integer weight, FontStyle style)
      throws IOException, FontFormatException {
    drawings.addFontFile(file, family, weight, style);
  }

  @Override
  public void addFontStream(
      FSSupplier<InputStream> file, String family, Integer weight, FontStyle style)
      throws IOException, FontFormatException {
    drawings.addFontStream(file, family, weight, style);
  }

  @Override
  public void close() {
    drawings.close();
  }
}
