package ringbook.course.compose;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringbook.exercises.Exercise;

/**
 * What lessons can place.
 *
 * @param figures the figures
 * @param exercises the exercises of the course, by id
 * @param withFaults ids of exercises that could not be read, which has been told already
 * @param folder where pictures named in lessons are looked up
 */
record CourseParts(
    FigureSource figures, Map<String, Exercise> exercises, Set<String> withFaults, Path folder) {

  static CourseParts of(
      FigureSource figures, List<Exercise> exercises, Set<String> withFaults, Path folder) {
    Map<String, Exercise> byId = new LinkedHashMap<>();
    exercises.forEach(exercise -> byId.put(exercise.id(), exercise));
    return new CourseParts(figures, byId, withFaults, folder);
  }
}
