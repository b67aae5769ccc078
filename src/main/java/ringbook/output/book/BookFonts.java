package ringbook.output.book;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The open fonts of the book: three families that travel with the program, never the machine's. */
final class BookFonts {

  private static final List<String> FAMILIES =
      List.of("Liberation Serif", "Liberation Sans", "Liberation Mono");
  private static final List<String> STYLES = List.of("Regular", "Bold", "Italic", "BoldItalic");

  /** The file of the face that drawings use. */
  static InputStream sans(String style) {
    return new Face("Liberation Sans", style).file();
  }

  private record Face(String family, String style) {
    int weight() {
      return style.startsWith("Bold") ? 700 : 400;
    }

    FontStyle slope() {
      return style.endsWith("Italic") ? FontStyle.ITALIC : FontStyle.NORMAL;
    }

    /** Without its table of ligatures: looking through it takes longer than all the rest. */
    TrueTypeFont open() throws IOException {
      TrueTypeFont font;
      try (InputStream in = file()) {
        font = new TTFParser().parse(new RandomAccessReadBuffer(in));
      }
      font.setEnableGsub(false);
      return font;
    }

    InputStream file() {
      String name = family.replace(" ", "") + "-" + style + ".ttf";
      return BookFonts.class.getResourceAsStream("/liberation/" + name);
    }
  }

  private final Map<Face, TrueTypeFont> faces;
  private final List<CmapLookup> letters;

  private BookFonts(Map<Face, TrueTypeFont> faces, List<CmapLookup> letters) {
    this.faces = faces;
    this.letters = letters;
  }

  /** Reads the fonts from the class path. */
  static BookFonts liberation() throws IOException {
    Map<Face, TrueTypeFont> faces = new LinkedHashMap<>();
    List<CmapLookup> letters = new ArrayList<>();
    for (String family : FAMILIES) {
      for (String style : STYLES) {
        Face face = new Face(family, style);
        TrueTypeFont font = face.open();
        faces.put(face, font);
        letters.add(font.getUnicodeCmapLookup());
      }
    }
    return new BookFonts(faces, letters);
  }

  /** Whether every face has this letter. */
  boolean know(int codePoint) {
    return letters.stream().allMatch(face -> face.getGlyphId(codePoint) > 0);
  }

  /** Hands the fonts to the page maker for the text of {@code pdf}. */
  void giveTo(PdfRendererBuilder builder, PDDocument pdf) throws IOException {
    for (Map.Entry<Face, TrueTypeFont> one : faces.entrySet()) {
      PDType0Font font = PDType0Font.load(pdf, one.getValue(), true);
      Face face = one.getKey();
      builder.useFont(new PDFontSupplier(font), face.family(), face.weight(), face.slope(), true);
    }
  }

  /** Hands them over for the words in drawings; each is read anew, which takes its time. */
  void giveToDrawings(PdfRendererBuilder builder) {
    for (Face face : faces.keySet()) {
      builder.useFont(
          face::file,
          face.family(),
          face.weight(),
          face.slope(),
          true,
          EnumSet.of(FSFontUseCase.SVG));
    }
  }
}
