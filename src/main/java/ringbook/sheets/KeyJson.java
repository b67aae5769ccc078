package ringbook.sheets;

import java.io.StringWriter;
import java.util.List;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/**
 * Learners' questions as a JSON array, one object a question: {@code learner}, {@code exercise},
 * {@code title}, {@code question}, {@code listed} (options, steps or items), {@code answerWith},
 * and, where answers are wanted, {@code answer} and {@code working}.
 */
public final class KeyJson {

  private static final JsonFactory JSON = new JsonFactory();

  private final boolean answers;
  private boolean begun;

  /** Prints answers with their workings, or questions alone. */
  public KeyJson(boolean answers) {
    this.answers = answers;
  }

  /** The objects of one learner; the array is opened before the first. */
  public String of(AnswerKey key) {
    StringBuilder out = new StringBuilder();
    for (AnswerKey.Line line : key.lines()) {
      out.append(begun ? ",\n" : "[\n").append(object(key.learner(), line));
      begun = true;
    }
    return out.toString();
  }

  /** What closes the array. */
  public String end() {
    return begun ? "\n]\n" : "[]\n";
  }

  private String object(String learner, AnswerKey.Line line) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
      json.writeStartObject();
      json.writeStringProperty("learner", learner);
      json.writeStringProperty("exercise", line.exercise());
      json.writeStringProperty("title", line.title());
      json.writeStringProperty("question", line.question());
      array(json, "listed", line.listed());
      json.writeStringProperty("answerWith", line.answerWith());
      if (answers) {
        json.writeStringProperty("answer", line.answer());
        array(json, "working", line.working());
      }
      json.writeEndObject();
    }
    return text.toString();
  }

  private static void array(JsonGenerator json, String name, List<String> texts) {
    json.writeArrayPropertyStart(name);
    texts.forEach(json::writeString);
    json.writeEndArray();
  }
}
