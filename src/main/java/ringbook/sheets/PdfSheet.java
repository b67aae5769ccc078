package ringbook.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.apache.pdfbox.text.PDFTextStripper;
import ringbook.problems.Position;

/**
 * A worksheet that was filled in as a PDF form. Only values of fields are read; a file that could
 * run anything is refused. Empty fields are questions that were not answered.
 */
final class PdfSheet {

  /** Larger files are not read. */
  private static final int LARGEST = 50_000_000;

  private static final int START = 1024;
  private static final int PAGES_TO_SEARCH = 3;
  private static final String AGAIN = "hand in the worksheet again as it was saved by the viewer";

  /** Actions that a worksheet never has: they run, send or fetch something. */
  private static final Set<String> RUNS =
      Set.of("JavaScript", "Launch", "SubmitForm", "ImportData", "Rendition", "GoToR", "GoToE");

  private final String file;
  private final Intake intake;
  private final Faults faults;
  private final Optional<String> course;

  PdfSheet(String file, Intake intake, Faults faults, Optional<String> course) {
    this.file = file;
    this.intake = intake;
    this.faults = faults;
    this.course = course;
  }

  /** Whether a file that begins so is a PDF; the sign may stand a little behind the start. */
  static boolean isMeant(byte[] start) {
    return new String(start, StandardCharsets.ISO_8859_1).contains("%PDF-");
  }

  /** Whether a file is named as a PDF, whatever is in it. */
  static boolean isNamed(String file) {
    return file.toLowerCase(Locale.ROOT).endsWith(".pdf");
  }

  /** How many bytes {@link #isMeant} looks at. */
  static int lookAt() {
    return START;
  }

  void read(InputStream in) throws IOException {
    byte[] bytes = in.readNBytes(LARGEST + 1);
    if (bytes.length > LARGEST) {
      fault("this PDF is too large for a worksheet", "hand in the worksheet alone");
    } else if (!isMeant(Arrays.copyOf(bytes, Math.min(bytes.length, START)))) {
      fault("this file is named as a PDF, but there is none in it", AGAIN);
    } else if (!ends(bytes)) {
      damaged();
    } else {
      open(bytes);
    }
  }

  private void open(byte[] bytes) {
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      if (pdf.isEncrypted()) {
        encrypted();
      } else if (runs(pdf.getDocument().getTrailer())) {
        fault(
            "this PDF is scripted: it holds actions that run, send or fetch something; nothing was"
                + " run or read",
            "hand in the worksheet as it was handed out");
      } else {
        form(pdf);
      }
    } catch (InvalidPasswordException locked) {
      encrypted();
    } catch (IOException | RuntimeException broken) {
      // A broken file can break its reader in many ways; none may keep the others from being read.
      damaged();
    }
  }

  private void encrypted() {
    fault("this PDF is encrypted", "save it without a password, then hand it in again");
  }

  private void damaged() {
    fault("this PDF is damaged: it ends too early or its parts do not fit", AGAIN);
  }

  private void fault(String message, String help) {
    faults.add(Position.ofFile(file), message, help);
  }

  private static boolean ends(byte[] bytes) {
    int from = Math.max(0, bytes.length - START);
    String tail = new String(bytes, from, bytes.length - from, StandardCharsets.ISO_8859_1);
    return tail.contains("%%EOF");
  }

  private void form(PDDocument pdf) throws IOException {
    PDAcroForm form = pdf.getDocumentCatalog().getAcroForm(null);
    String of = value(form, WorksheetFields.COURSE);
    if (of.isEmpty()) {
      noForm(pdf);
    } else if (course.isPresent() && !course.get().equals(of)) {
      fault(
          "this worksheet belongs to the course '" + Quote.of(of) + "'",
          "mark it with that course: --course");
    } else {
      answers(form);
    }
  }

  private void answers(PDAcroForm form) {
    String learner = value(form, WorksheetFields.LEARNER);
    if (learner.isBlank()) {
      fault("the worksheet has no name on it", "fill in the name in its first field");
      return;
    }
    String numbers = value(form, WorksheetFields.NUMBERS);
    boolean none = true;
    for (PDField field : form.getFieldTree()) {
      String name = field.getFullyQualifiedName();
      if (!name.startsWith("@") && !field.getValueAsString().isBlank()) {
        String answer = field.getValueAsString().replace('\r', '\n').replace('\n', ' ');
        intake.take(new SheetRow(learner, name, answer, numbers), Position.ofFile(file));
        none = false;
      }
    }
    if (none) {
      fault(
          "the worksheet of " + Quote.of(learner) + " has no answers in it",
          "where some were written, the file was not saved with them: save it in the viewer, then"
              + " hand that file in");
    }
  }

  private static String value(PDAcroForm form, String name) {
    return form != null && form.getField(name) instanceof PDTextField field
        ? field.getValue().strip()
        : "";
  }

  private void noForm(PDDocument pdf) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setEndPage(PAGES_TO_SEARCH);
    String text = stripper.getText(pdf);
    boolean ours = false;
    for (String word : text.split("\\s+", -1)) {
      ours |= intake.knows(word);
    }
    if (ours) {
      fault(
          "this PDF shows exercises but has no fields to read: it is a flattened worksheet, or"
              + " none",
          "save a worksheet in the viewer instead of printing it to a file, or write its answers"
              + " into a table");
    } else if (text.isBlank() && holdsPicture(pdf)) {
      fault(
          "this PDF is a picture, such as a scan: no answers can be read in it",
          "write its answers into a table");
    } else {
      fault("this PDF is foreign: it is no worksheet of a course", "take it out of the folder");
    }
  }

  private static boolean holdsPicture(PDDocument pdf) throws IOException {
    for (int i = 0; i < Math.min(PAGES_TO_SEARCH, pdf.getNumberOfPages()); i++) {
      PDResources resources = pdf.getPage(i).getResources();
      if (resources != null) {
        for (COSName name : resources.getXObjectNames()) {
          if (resources.isImageXObject(name)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Whether anything reachable from {@code root} is an action that runs something. */
  private static boolean runs(COSDictionary root) {
    Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<COSBase> open = new ArrayDeque<>();
    open.push(root);
    while (!open.isEmpty()) {
      COSBase next = open.pop();
      COSBase object = next instanceof COSObject reference ? reference.getObject() : next;
      if (object == null || !seen.add(object)) {
        continue;
      }
      if (object instanceof COSDictionary dictionary) {
        COSBase kind = dictionary.getDictionaryObject(COSName.S);
        boolean action = kind instanceof COSName name && RUNS.contains(name.getName());
        if (action
            || dictionary.containsKey(COSName.JS)
            || dictionary.containsKey(COSName.getPDFName("JavaScript"))
            || dictionary.containsKey(COSName.XFA)) {
          return true;
        }
        dictionary.getValues().forEach(open::push);
      } else if (object instanceof COSArray array) {
        array.forEach(open::push);
      }
    }
    return false;
  }
}
