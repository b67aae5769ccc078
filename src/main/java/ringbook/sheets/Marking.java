package ringbook.sheets;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.Mark;
import ringbook.exercises.Marker;

/**
 * Marks what was handed in, learner by learner, and hands it on. The order of lines and files makes
 * no difference, except that of two answers of a learner to one exercise the first one counts.
 */
public final class Marking {

  private final List<ExerciseSource> sources;
  private final List<Exercise> exercises;
  private final Map<Integer, Marker> shared = new HashMap<>();

  /** Marks answers to these exercises, in the order of the {@link SheetRules}. */
  public Marking(List<ExerciseSource> sources) {
    this.sources = List.copyOf(sources);
    this.exercises = sources.stream().map(ExerciseSource::own).toList();
  }

  /**
   * Marks everything.
   *
   * @param group who is expected to hand in
   * @param sinks take the marks
   */
  public ClassTally run(AnswerSheets sheets, Optional<ClassList> group, List<MarkSink> sinks)
      throws IOException {
    ClassTally tally = new ClassTally(exercises, group.map(ClassList::names).orElse(List.of()));
    Iterator<Entry> entries = sheets.inOrder();
    List<OneMark> marks = new ArrayList<>();
    Entry before = null;
    while (entries.hasNext()) {
      Entry entry = entries.next();
      if (before != null && !before.learner().equals(entry.learner())) {
        handOn(before.learner(), marks, tally, sinks);
      }
      if (isSecond(entry, before)) {
        second(entry, before, sheets);
      } else {
        marks.add(mark(entry, sheets));
        before = entry;
      }
    }
    if (before != null) {
      handOn(before.learner(), marks, tally, sinks);
    }
    sheets.faults().end();
    for (MarkSink sink : sinks) {
      sink.end(tally);
    }
    return tally;
  }

  private void handOn(String learner, List<OneMark> marks, ClassTally tally, List<MarkSink> sinks)
      throws IOException {
    LearnerMarks all = new LearnerMarks(learner, marks, exercises.size());
    marks.clear();
    tally.add(all);
    for (MarkSink sink : sinks) {
      sink.learner(all);
    }
  }

  private static boolean isSecond(Entry entry, Entry before) {
    return before != null
        && before.exercise() == entry.exercise()
        && before.learner().equals(entry.learner());
  }

  private void second(Entry entry, Entry first, AnswerSheets sheets) {
    sheets
        .faults()
        .add(
            sheets.position(entry),
            Quote.of(entry.learner()) + " answers '" + id(entry) + "' a second time",
            "the first answer, at "
                + sheets.position(first)
                + ", was marked; take one of them out");
  }

  private OneMark mark(Entry entry, AnswerSheets sheets) {
    if (entry.text().isEmpty()) {
      sheets
          .faults()
          .add(
              sheets.position(entry),
              Quote.of(entry.learner()) + " left '" + id(entry) + "' empty",
              "");
    }
    Mark mark = marker(entry).mark(entry.answer(id(entry)));
    return new OneMark(entry.exercise(), mark, entry.ownNumbers(), sources.get(entry.exercise()));
  }

  private Marker marker(Entry entry) {
    return entry.ownNumbers()
        ? Marker.of(sources.get(entry.exercise()).toJudge(entry.learner()))
        : shared.computeIfAbsent(entry.exercise(), place -> Marker.of(exercises.get(place)));
  }

  private String id(Entry entry) {
    return exercises.get(entry.exercise()).id();
  }
}
