package ringbook.output;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ringbook.problems.Position;
import ringbook.problems.Problem;

/**
 * Tells folders that a make may replace from those it must not touch: a marker file says that the
 * folder is a course of ours and lists every file in it.
 */
final class CourseFolder {

  /** Name of the marker file; a person who opens the folder is meant to see it. */
  static final String MARKER = "ringbook.txt";

  private static final String FIRST_LINE =
      "This folder is written by Ringbook. Each make replaces all of it: keep nothing else here.";

  private static final String UNFINISHED = "(not finished)";

  /** What file browsers leave behind by themselves, beside names that begin with a point. */
  private static final Set<String> LITTER = Set.of("Thumbs.db", "desktop.ini");

  private CourseFolder() {}

  /** Creates the folder with a marker that says it is not finished. */
  static void begin(Path folder) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve(MARKER), FIRST_LINE + "\n" + UNFINISHED + "\n");
  }

  /** Writes the marker anew with all files that are there. */
  static void list(Path folder) throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(FIRST_LINE);
    lines.addAll(files(folder));
    Files.writeString(folder.resolve(MARKER), String.join("\n", lines) + "\n");
  }

  /** Why these places may not be replaced; none if all are free, empty or courses of ours. */
  static List<Problem> objections(Path asked, List<Path> places) throws IOException {
    List<Problem> problems = new ArrayList<>();
    for (Path place : places) {
      if (Files.exists(place)) {
        Path named = asked.toAbsolutePath().normalize().equals(place) ? asked : place;
        problems.addAll(objections(named));
      }
    }
    return problems;
  }

  private static List<Problem> objections(Path place) throws IOException {
    if (!Files.isDirectory(place)) {
      String message = "there is a file of this name; a course needs a folder";
      return List.of(problem(place, message, "choose another folder for the course"));
    }
    Path marker = place.resolve(MARKER);
    Set<String> strange = files(place);
    strange.remove(MARKER);
    if (strange.isEmpty()) {
      return List.of();
    }
    List<String> lines = Files.isRegularFile(marker) ? Files.readAllLines(marker) : List.of();
    if (lines.isEmpty() || !lines.get(0).equals(FIRST_LINE)) {
      String message =
          "this folder holds other files and was not made by Ringbook; it stays as it is";
      return List.of(problem(place, message, "choose a new or an empty folder for the course"));
    }
    return strangers(place, lines, strange);
  }

  private static List<Problem> strangers(Path place, List<String> lines, Set<String> found) {
    if (lines.contains(UNFINISHED)) {
      return List.of(); // a make that was cut off: all in it is ours
    }
    lines.forEach(found::remove);
    found.removeIf(CourseFolder::isLitter);
    List<Problem> problems = new ArrayList<>();
    for (String file : found) {
      String message = "'" + file + "' was not written by Ringbook and would be lost";
      problems.add(problem(place, message, "move this file to another folder, then make again"));
    }
    return problems;
  }

  private static boolean isLitter(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1);
    return name.startsWith(".") || LITTER.contains(name);
  }

  /** Paths of all files below, with {@code /} on every platform, in order of the alphabet. */
  private static Set<String> files(Path folder) throws IOException {
    Set<String> names = new TreeSet<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.filter(p -> !Files.isDirectory(p)).toList()) {
        names.add(folder.relativize(path).toString().replace(File.separatorChar, '/'));
      }
    }
    return names;
  }

  static Problem problem(Path folder, String message, String help) {
    return new Problem(Position.ofFile(folder.toString()), message, help);
  }
}
