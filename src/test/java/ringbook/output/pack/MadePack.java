package ringbook.output.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import ringbook.course.ComposedCourse;
import ringbook.course.compose.CourseSources;
import ringbook.ledger.Reckoning;
import ringbook.plans.StandardPlan;
import ringbook.problems.Problems;
import ringbook.shots.ShotPlan;

/**
 * The pack of one lesson of the demo, made once for all tests: A4 in colour, US Letter in grey, the
 * latter twice, for three learners and a plan of all legs, two of which have pages of their own.
 */
final class MadePack {

  /** A name that fills a line of print. */
  static final String LONG =
      "Maximiliana Theodora Alexandrowna von und zu Hohenfelsenstein-Wetterau";

  static final List<String> LEARNERS = List.of("Ida", "Zoë Çelebi-Ångström", LONG);

  private static Map<String, byte[]> files;
  private static PackMatter matter;
  private static ComposedCourse course;

  private MadePack() {}

  /** By path; the second making under {@code again/}. */
  static synchronized Map<String, byte[]> files() throws IOException {
    if (files == null) {
      files = make();
    }
    return files;
  }

  /** What the pack is made of. */
  static synchronized PackMatter matter() throws IOException {
    files();
    return matter;
  }

  /** The course with one lesson. */
  static synchronized ComposedCourse course() throws IOException {
    files();
    return course;
  }

  private static Map<String, byte[]> make() throws IOException {
    Problems problems = new Problems();
    CourseSources sources =
        CourseSources.read(Path.of("lessons/course.yaml"), problems).orElseThrow();
    ComposedCourse whole = sources.compose(problems).orElseThrow();
    course =
        new ComposedCourse(
            whole.info(),
            whole.lessons().stream().filter(lesson -> lesson.number() == 4).toList(),
            List.of());
    Reckoning reckoning = Reckoning.of(sources.file().scene());
    ShotPlan planned = StandardPlan.of(reckoning).orElseThrow();
    ShotPlan some = new ShotPlan(List.of(planned.legs().get(0), planned.legs().get(6)));
    matter = new PackMatter(reckoning, Optional.of(some), sources::composedFor, LEARNERS);
    Path folder = Files.createTempDirectory("pack");
    new PackOutput(matter, List.of(Paper.A4), List.of(Inks.COLOUR)).write(course, folder);
    new PackOutput(matter, List.of(Paper.LETTER), List.of(Inks.GREY)).write(course, folder);
    Path again = folder.resolve("again");
    new PackOutput(matter, List.of(Paper.LETTER), List.of(Inks.GREY)).write(course, again);
    return read(folder);
  }

  private static Map<String, byte[]> read(Path folder) throws IOException {
    Map<String, byte[]> read = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        read.put(folder.relativize(file).toString(), Files.readAllBytes(file));
        Files.delete(file);
      }
    }
    return read;
  }
}
