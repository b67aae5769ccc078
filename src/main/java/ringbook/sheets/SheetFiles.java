package ringbook.sheets;

import java.io.File;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import ringbook.problems.Position;

/** The answer sheets below a folder, at any depth, in the order of their names. */
final class SheetFiles extends SimpleFileVisitor<Path> {

  private static final List<String> ENDINGS = List.of(".csv", ".tsv", ".json", ".jsonl", ".pdf");
  private static final List<String> SPREADSHEETS = List.of(".xlsx", ".xls", ".ods");

  /** A folder with this file was written by Ringbook: what is in it was not handed in. */
  private static final String OURS = "ringbook.txt";

  private final Path folder;
  private final Faults faults;
  private final TreeMap<String, Path> sheets = new TreeMap<>();

  private SheetFiles(Path folder, Faults faults) {
    this.folder = folder;
    this.faults = faults;
  }

  /** All sheets; what cannot be read is told. */
  static List<Path> below(Path folder, Faults faults) throws IOException {
    SheetFiles files = new SheetFiles(folder, faults);
    Files.walkFileTree(folder, files);
    if (files.sheets.isEmpty()) {
      faults.add(
          Position.ofFile(folder.toString()),
          "the folder holds no answer sheets",
          "sheets end in " + String.join(", ", ENDINGS));
    }
    return List.copyOf(files.sheets.values());
  }

  @Override
  public FileVisitResult preVisitDirectory(Path place, BasicFileAttributes facts) {
    boolean skipped =
        Files.exists(place.resolve(OURS)) || (!place.equals(folder) && isHidden(place));
    return skipped ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes facts) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    if (!isHidden(file) && ENDINGS.stream().anyMatch(name::endsWith)) {
      String path = folder.relativize(file).toString();
      sheets.put(path.replace(File.separatorChar, '/'), file);
    } else if (!isHidden(file) && SPREADSHEETS.stream().anyMatch(name::endsWith)) {
      faults.add(
          Position.ofFile(file.toString()),
          "a spreadsheet's own file cannot be read",
          "open it in the spreadsheet and save the sheet as \"CSV UTF-8\"");
    }
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFileFailed(Path file, IOException fault) {
    faults.add(
        Position.ofFile(file.toString()),
        "this cannot be read: " + AnswerSheets.reason(fault),
        "see to it that you may read it");
    return FileVisitResult.CONTINUE;
  }

  /** What begins with a point, and the lock files of office programs. */
  private static boolean isHidden(Path file) {
    String name = file.getFileName().toString();
    return name.startsWith(".") || name.startsWith("~$");
  }
}
