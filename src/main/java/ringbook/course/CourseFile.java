package ringbook.course;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
 */
public record CourseFile(
    CourseInfo info, Scene scene, Map<String, Kit> otherKits, List<LessonRef> lessons) {

  public CourseFile {
    otherKits = new LinkedHashMap<>(otherKits);
    lessons = List.copyOf(lessons);
  }

  /**
   * A lesson named in the course file.
   *
   * @param id its id
   * @param position where it is named
   */
  public record LessonRef(String id, Position position) {}
}
