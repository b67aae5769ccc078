package ringbook.sheets;

import java.util.Map;
import java.util.TreeMap;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/** A sheet as JSON: an array of objects, or one object a line. Read as a stream. */
final class JsonSheet {

  private static final JsonFactory JSON = new JsonFactory();

  private final String file;
  private final Intake intake;
  private final Problems problems;
  private int linesAbove;

  JsonSheet(String file, Intake intake, Problems problems) {
    this.file = file;
    this.intake = intake;
    this.problems = problems;
  }

  void read(String text) {
    if (text.stripLeading().startsWith("[")) {
      readValues(text);
      return;
    }
    for (String line : text.lines().toList()) {
      if (!line.isBlank()) {
        readValues(line);
      }
      linesAbove++;
    }
  }

  private void readValues(String text) {
    try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), text)) {
      JsonToken token = json.nextToken();
      boolean array = token == JsonToken.START_ARRAY;
      if (array) {
        token = json.nextToken();
      }
      while (token != null && token != JsonToken.END_ARRAY) {
        value(json, token);
        token = json.nextToken();
      }
      if (array && json.nextToken() != null) {
        problems.add(at(json), "something stands behind the end of the list", "take it out");
      }
    } catch (JacksonException fault) {
      TokenStreamLocation location = fault.getLocation();
      problems.add(
          location == null ? Position.ofFile(file) : at(location),
          linesAbove > 0 || !text.stripLeading().startsWith("[")
              ? "this line is not a whole JSON object"
              : "this is not JSON",
          "look for a bracket, a comma or a quotation mark that is missing here or just above");
    }
  }

  private void value(JsonParser json, JsonToken token) {
    if (token != JsonToken.START_OBJECT) {
      problems.add(
          at(json),
          "an answer is an object with learner, exercise and answer",
          "write {\"learner\": \"…\", \"exercise\": \"…\", \"answer\": \"…\"}");
      json.skipChildren();
      return;
    }
    Position start = at(json);
    Map<String, String> found = new TreeMap<>();
    int before = problems.size();
    while (json.nextToken() != JsonToken.END_OBJECT) {
      field(json, found);
    }
    for (String name : CsvSheet.COLUMNS) {
      if (!found.containsKey(name) && problems.size() == before) {
        problems.add(start, "the object has no '" + name + "'", "add \"" + name + "\": \"…\"");
      }
    }
    if (problems.size() == before) {
      intake.take(
          found.get("learner"),
          found.get("exercise"),
          found.get("answer"),
          new Position(file, start.line(), 0));
    }
  }

  private void field(JsonParser json, Map<String, String> found) {
    String name = json.currentName();
    Position at = at(json);
    JsonToken token = json.nextToken();
    if (!CsvSheet.COLUMNS.contains(name)) {
      json.skipChildren();
    } else if (token == JsonToken.VALUE_NULL) {
      repeated(found.put(name, ""), name, at);
    } else if (token.isScalarValue()) {
      repeated(found.put(name, json.getString()), name, at);
    } else {
      problems.add(at, "'" + name + "' must be a text", "write it between quotation marks");
      json.skipChildren();
    }
  }

  private void repeated(String earlier, String name, Position at) {
    if (earlier != null) {
      problems.add(at, "the object states '" + name + "' twice", "keep one of them");
    }
  }

  private Position at(JsonParser json) {
    return at(json.currentTokenLocation());
  }

  private Position at(TokenStreamLocation location) {
    return new Position(file, linesAbove + location.getLineNr(), location.getColumnNr());
  }
}
