package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/** The folder that is handed over, as a tree, with what lies in each part. */
final class FolderTree {

  private static final double WIDTH = 560;
  private static final double TOP = 26;
  private static final double ROW = 28;
  private static final double INDENT = 26;
  private static final double NOTE = 232;

  private final Readings readings;
  private final SvgWriter svg;
  private final List<Part> parts;

  /** A folder or file. */
  private record Part(int depth, String name, String note) {

    boolean folder() {
      return name.endsWith("/");
    }
  }

  private FolderTree(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    parts = parts();
    svg = new SvgWriter(WIDTH, TOP + parts.size() * ROW + 4, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new FolderTree(reckoning, idPrefix).figure();
  }

  private List<Part> parts() {
    List<Part> all = new ArrayList<>();
    all.add(new Part(0, "DATE_OBJECT/", readings.text("job.storage") + " of photographs"));
    all.add(new Part(1, "photos/", readings.count("job.runs", "run") + ", as they were shot"));
    all.add(new Part(2, "r1/", "slate and " + readings.text("ring.photos") + " stations"));
    all.add(new Part(2, "…", "one folder for each run"));
    all.add(new Part(1, "extras/", "scale bars, white paper, the place"));
    all.add(new Part(1, "rejects/", "bad ones: kept, not used"));
    all.add(new Part(1, "record.txt", "who, what, where, when, how"));
    all.add(new Part(1, "consent.pdf", "what the keeper agreed to"));
    String lines = "one line a file, " + readings.text("handover.hashDigits") + " signs each";
    all.add(new Part(1, "checksums.txt", lines));
    return all;
  }

  private Figure figure() {
    for (int i = 0; i < parts.size(); i++) {
      branch(i);
    }
    for (int i = 0; i < parts.size(); i++) {
      draw(parts.get(i), i);
    }
    readings.tabulate("job.runs", "ring.photos", "job.files", "job.storage", "handover.hashDigits");
    parts.forEach(part -> readings.row(part.name(), part.note()));
    return readings.figure(svg, "The folder to hand over", description());
  }

  private static double y(int row) {
    return TOP + row * ROW;
  }

  private static double x(int depth) {
    return 16 + depth * INDENT;
  }

  /** From the folder that holds a part, down and to the right. */
  private void branch(int row) {
    int depth = parts.get(row).depth();
    int parent = row;
    while (parent > 0 && parts.get(parent).depth() >= depth) {
      parent--;
    }
    if (depth > 0) {
      double x = x(depth - 1) + 8;
      svg.line(new Point(x, y(parent) + 8), new Point(x, y(row) - 4), Stroke.solid(Ink.FAINT, 1.4));
      svg.line(
          new Point(x, y(row) - 4),
          new Point(x(depth) - 3, y(row) - 4),
          Stroke.solid(Ink.FAINT, 1.4));
    }
  }

  private void draw(Part part, int row) {
    double x = x(part.depth());
    double y = y(row);
    if (part.folder()) {
      svg.area(new Box(x, y - 13, x + 7, y - 9), Fill.ACCENT);
      svg.area(new Box(x, y - 10, x + 17, y + 2), Fill.ACCENT);
    } else {
      svg.box(new Box(x + 3, y - 13, x + 14, y + 2), Stroke.THIN, Fill.PAPER);
    }
    Label name = Label.of(part.name(), new Point(x + 24, y), Anchor.START);
    svg.text(part.folder() ? name.bold() : name);
    svg.text(Label.of(part.note(), new Point(NOTE, y), Anchor.START));
  }

  private String description() {
    List<String> told = new ArrayList<>();
    for (Part part : parts.subList(1, parts.size())) {
      told.add(part.name() + " (" + part.note() + ")");
    }
    return "A tree of folders and files. The folder is called by date and object and holds: "
        + Sentence.list(told)
        + ". In all there are "
        + readings.text("job.files")
        + " files from the camera; the photographs take "
        + readings.text("job.storage")
        + ".";
  }
}
