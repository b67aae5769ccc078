package ringbook.course;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.optics.Kit;
import ringbook.problems.Position;
import ringbook.shots.Scene;

/**
 * The course file: what the trainer states for a group.
 *
 * @param info title page matter
 * @param scene kit, subject, place and aim
 * @param otherKits further kits that exercises may use, by name
 * @param lessons ids of the lessons in order of the stations, with their places in the file
 * @param back ids of the pages at the back in their order, with their places in the file
 * @param shared another folder whose lessons and exercises the course may use
 */
public record CourseFile(
    CourseInfo info,
    Scene scene,
    Map<String, Kit> otherKits,
    List<LessonRef> lessons,
    List<LessonRef> back,
    Optional<FolderRef> shared) {

  public CourseFile {
    otherKits = new LinkedHashMap<>(otherKits);
    lessons = List.copyOf(lessons);
    back = List.copyOf(back);
  }

  /** A course of its own folder. */
  public CourseFile(
      CourseInfo info,
      Scene scene,
      Map<String, Kit> otherKits,
      List<LessonRef> lessons,
      List<LessonRef> back) {
    this(info, scene, otherKits, lessons, back, Optional.empty());
  }

  /** A course without pages at the back. */
  public CourseFile(
      CourseInfo info, Scene scene, Map<String, Kit> otherKits, List<LessonRef> lessons) {
    this(info, scene, otherKits, lessons, List.of());
  }

  /** The same course for another scene. */
  public CourseFile of(Scene other) {
    return new CourseFile(info, other, otherKits, lessons, back, shared);
  }

  /**
   * A lesson or a page at the back, named in the course file.
   *
   * @param id its id
   * @param position where it is named
   */
  public record LessonRef(String id, Position position) {}

  /**
   * A folder named in the course file.
   *
   * @param path as written, seen from the folder of the course file
   * @param position where it is named
   */
  public record FolderRef(String path, Position position) {}
}
