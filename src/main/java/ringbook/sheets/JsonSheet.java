package ringbook.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import ringbook.problems.Position;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;

/** A sheet as JSON: an array of objects, or one object a line. Read as a stream. */
final class JsonSheet {

  private static final JsonFactory JSON = new JsonFactory();
  private static final String MISSING =
      "look for a bracket, a comma or a quotation mark that is missing here or just above";

  private final String file;
  private final Intake intake;
  private final Faults faults;
  private int linesAbove;
  private boolean sound;

  JsonSheet(String file, Intake intake, Faults faults) {
    this.file = file;
    this.intake = intake;
    this.faults = faults;
  }

  /**
   * Reads the whole sheet.
   *
   * @param text UTF-8
   * @param array whether it is one array, or else an object a line
   */
  void read(InputStream text, boolean array) throws IOException {
    if (array) {
      readArray(new InputStreamReader(text, StandardCharsets.UTF_8));
      return;
    }
    SheetLines lines = new SheetLines(text);
    for (SheetLine line = lines.next(); line != null; line = lines.next()) {
      linesAbove = line.number() - 1;
      if (line.flaw().isPresent()) {
        SheetLine.Flaw flaw = line.flaw().get();
        faults.add(new Position(file, line.number(), 0), flaw.message(), flaw.help());
      } else if (!line.text().isBlank()) {
        readLine(line.text());
      }
    }
  }

  private void readLine(String text) {
    try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), text)) {
      readValues(json);
    } catch (JacksonException fault) {
      told(fault, "this line is not a whole JSON object", MISSING);
    }
  }

  private void readArray(Reader text) {
    try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), text)) {
      readValues(json);
    } catch (UnexpectedEndOfInputException fault) {
      told(
          fault,
          "the file ends amid the list",
          "hand in the whole file; what stands above is marked");
    } catch (JacksonException fault) {
      told(fault, "this is not JSON", MISSING + "; only what stands above is marked");
    }
  }

  private void told(JacksonException fault, String message, String help) {
    TokenStreamLocation location = fault.getLocation();
    faults.add(location == null ? Position.ofFile(file) : at(location), message, help);
  }

  private void readValues(JsonParser json) {
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
      faults.add(at(json), "something stands behind the end of the list", "take it out");
    }
  }

  private void value(JsonParser json, JsonToken token) {
    if (token != JsonToken.START_OBJECT) {
      faults.add(
          at(json),
          "an answer is an object with learner, exercise and answer",
          "write {\"learner\": \"…\", \"exercise\": \"…\", \"answer\": \"…\"}");
      json.skipChildren();
      return;
    }
    Position start = at(json);
    Map<String, String> found = new TreeMap<>();
    sound = true;
    while (json.nextToken() != JsonToken.END_OBJECT) {
      field(json, found);
    }
    for (String name : SheetRow.COLUMNS) {
      if (!found.containsKey(name) && sound) {
        faults.add(start, "the object has no '" + name + "'", "add \"" + name + "\": \"…\"");
        sound = false;
      }
    }
    if (sound) {
      intake.take(
          new SheetRow(
              found.get("learner"),
              found.get("exercise"),
              found.get("answer"),
              found.getOrDefault(SheetRow.NUMBERS, "")),
          new Position(file, start.line(), 0));
    }
  }

  private void field(JsonParser json, Map<String, String> found) {
    String name = json.currentName();
    Position at = at(json);
    JsonToken token = json.nextToken();
    if (!SheetRow.COLUMNS.contains(name) && !name.equals(SheetRow.NUMBERS)) {
      json.skipChildren();
    } else if (token == JsonToken.VALUE_NULL) {
      repeated(found.put(name, ""), name, at);
    } else if (token.isScalarValue()) {
      repeated(found.put(name, json.getString()), name, at);
    } else {
      sound = false;
      faults.add(at, "'" + name + "' must be a text", "write it between quotation marks");
      json.skipChildren();
    }
  }

  private void repeated(String earlier, String name, Position at) {
    if (earlier != null) {
      sound = false;
      faults.add(at, "the object states '" + name + "' twice", "keep one of them");
    }
  }

  private Position at(JsonParser json) {
    return at(json.currentTokenLocation());
  }

  private Position at(TokenStreamLocation location) {
    return new Position(file, linesAbove + location.getLineNr(), location.getColumnNr());
  }
}
