package ringbook.sheets;

import java.io.StringWriter;
import ringbook.exercises.Feedback;
import ringbook.exercises.Mark;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** The marks of a group as a JSON array, one object an answer, each on its line. */
public final class MarkJson {

  private static final JsonFactory JSON = new JsonFactory();

  private MarkJson() {}

  /** The whole text; ends with a line end. */
  public static String of(MarkList list) {
    StringBuilder out = new StringBuilder("[");
    String before = "\n";
    for (Mark mark : list.marks()) {
      out.append(before).append(object(mark));
      before = ",\n";
    }
    return out.append("\n]\n").toString();
  }

  private static String object(Mark mark) {
    StringWriter text = new StringWriter();
    Feedback feedback = mark.feedback();
    try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
      json.writeStartObject();
      json.writeStringProperty("learner", mark.answer().learner());
      json.writeStringProperty("exercise", mark.answer().exercise());
      json.writeStringProperty("answer", mark.answer().text());
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
