package ringbook.sheets;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/**
 * Reads answer sheets, any number of any size: answers are taken one by one, and only some
 * thousands are held at a time.
 *
 * <p><b>As a table</b> (CSV): the first line names the columns {@code learner}, {@code exercise}
 * and {@code answer} in any order; a column {@code numbers} may say {@code own} or {@code book};
 * further columns are passed over. Columns are parted by commas, semicolons or tabs.
 *
 * <p><b>As JSON</b>: an array of objects, or one object a line, with the same names.
 *
 * <p><b>As a filled-in worksheet</b> (PDF): its fields are named as the exercises, see {@link
 * WorksheetFields}.
 *
 * <p>Tables and JSON are UTF-8, with or without a byte order mark, or UTF-16. What a file is shows
 * in its first characters. Lines in another encoding are told and passed over.
 */
public final class AnswerSheets implements Closeable {

  private static final int BLANK_AT_MOST = 1 << 12;

  private final Faults faults;
  private final EntrySort entries = new EntrySort();
  private final Intake intake;
  private final List<String> files = new ArrayList<>();
  private Optional<String> course = Optional.empty();
  private boolean semicolons;
  private boolean otherForms;

  /** Reads answers by these rules; faults go to {@code problems}. */
  public AnswerSheets(SheetRules rules, Problems problems) {
    this.faults = new Faults(problems);
    this.intake = new Intake(rules, faults, entries);
  }

  /** From now on refuses worksheets that belong to a course of another title. */
  public void expect(String title) {
    course = Optional.of(title);
  }

  /** Reads one more sheet, or all that lie below a folder in the order of their names. */
  public void read(Path place) throws IOException {
    if (!Files.isDirectory(place)) {
      readFile(place);
      return;
    }
    for (Path sheet : SheetFiles.below(place, faults)) {
      readFile(sheet);
    }
  }

  private void readFile(Path file) throws IOException {
    InputStream opened;
    try {
      opened = Files.newInputStream(file);
    } catch (IOException fault) {
      faults.add(Position.ofFile(file.toString()), "this cannot be read: " + reason(fault), "");
      return;
    }
    try (opened) {
      read(file.toString(), opened);
    }
  }

  static String reason(IOException fault) {
    if (fault instanceof NoSuchFileException) {
      return "there is no file or folder of this name";
    }
    return fault instanceof AccessDeniedException
        ? "you have no permission to"
        : String.valueOf(fault.getMessage());
  }

  /**
   * Reads one more sheet.
   *
   * @param file the name for messages
   * @param bytes its content
   */
  public void read(String file, byte[] bytes) throws IOException {
    read(file, new ByteArrayInputStream(bytes));
  }

  private void read(String file, InputStream raw) throws IOException {
    files.add(file);
    intake.nextFile();
    BufferedInputStream whole = new BufferedInputStream(raw, 2 * PdfSheet.lookAt());
    whole.mark(PdfSheet.lookAt());
    byte[] start = whole.readNBytes(PdfSheet.lookAt());
    whole.reset();
    if (PdfSheet.isMeant(start) || PdfSheet.isNamed(file)) {
      new PdfSheet(file, intake, faults, course).read(whole);
      return;
    }
    Optional<InputStream> opened = SheetBytes.open(file, whole, faults);
    if (opened.isEmpty()) {
      return;
    }
    InputStream text = new BufferedInputStream(opened.get(), 2 * BLANK_AT_MOST);
    int first = firstSign(text);
    if (first == '[' || first == '{') {
      new JsonSheet(file, intake, faults).read(text, first == '[');
    } else {
      char delimiter = new CsvSheet(file, intake, faults).read(new SheetLines(text));
      semicolons |= delimiter == ';';
      otherForms |= delimiter != ';';
    }
  }

  /** The first character that is no blank, with {@code text} still at its beginning; -1 if none. */
  private static int firstSign(InputStream text) throws IOException {
    text.mark(BLANK_AT_MOST);
    int sign = ' ';
    for (int i = 0; i < BLANK_AT_MOST && sign > 0 && sign <= ' '; i++) {
      sign = text.read();
    }
    text.reset();
    return sign;
  }

  /** How many answers can be marked. */
  public long count() {
    return intake.count();
  }

  /** Whether the tables come from a place where semicolons part cells and commas are decimal. */
  public boolean partedBySemicolons() {
    return semicolons && !otherForms;
  }

  /** All answers that can be marked, learner by learner; they can be taken once. */
  Iterator<Entry> inOrder() throws IOException {
    return entries.inOrder();
  }

  Faults faults() {
    return faults;
  }

  Position position(Entry entry) {
    return new Position(files.get(entry.place().file()), entry.place().line(), 0);
  }

  @Override
  public void close() throws IOException {
    entries.close();
  }
}
