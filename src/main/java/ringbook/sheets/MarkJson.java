package ringbook.sheets;

import java.io.IOException;
import java.io.StringWriter;
import ringbook.exercises.Feedback;
import ringbook.exercises.Mark;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/**
 * The marks of a class as a JSON array, one object an answer, each on its line: {@code learner},
 * {@code exercise}, {@code answer} as handed in, {@code numbers} ({@code own} or {@code book}),
 * {@code verdict} (a short name), {@code points} (0 to 1, in quarters), {@code feedback}, {@code
 * working} (an array of lines) and {@code next}.
 */
public final class MarkJson implements MarkSink {

  private static final JsonFactory JSON = new JsonFactory();

  private final Appendable out;
  private boolean begun;

  /** Writes to {@code out}. */
  public MarkJson(Appendable out) {
    this.out = out;
  }

  @Override
  public void learner(LearnerMarks marks) throws IOException {
    for (OneMark one : marks.marks()) {
      out.append(begun ? ",\n" : "[\n").append(object(one));
      begun = true;
    }
  }

  @Override
  public void end(ClassTally tally) throws IOException {
    out.append(begun ? "\n]\n" : "[]\n");
  }

  private static String object(OneMark one) {
    StringWriter text = new StringWriter();
    Mark mark = one.mark();
    Feedback feedback = one.feedback();
    try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
      json.writeStartObject();
      json.writeStringProperty("learner", mark.answer().learner());
      json.writeStringProperty("exercise", mark.answer().exercise());
      json.writeStringProperty("answer", mark.answer().text());
      json.writeStringProperty("numbers", one.ownNumbers() ? "own" : "book");
      json.writeStringProperty("verdict", mark.verdict().label());
      json.writeNumberProperty("points", mark.credit().share());
      json.writeStringProperty("feedback", feedback.happened());
      json.writeArrayPropertyStart("working");
      feedback.working().forEach(json::writeString);
      json.writeEndArray();
      json.writeStringProperty("next", feedback.next());
      json.writeEndObject();
    }
    return text.toString();
  }
}
