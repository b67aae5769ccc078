package ringbook.sheets;

import java.io.IOException;

/** Takes the marks of a class, learner by learner in the order of their names. */
public interface MarkSink {

  /** The next learner. */
  void learner(LearnerMarks marks) throws IOException;

  /** All learners have come. */
  void end(ClassTally tally) throws IOException;
}
