package ringbook.sheets;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/**
 * A shot table as JSON. An object states what it holds for all objects in the lists it holds, if it
 * states it before them: a leg for its stations.
 */
final class ShotJsonReader {

  private static final JsonFactory JSON = new JsonFactory();

  private final String file;
  private final ShotIntake intake;
  private final Problems problems;

  ShotJsonReader(String file, ShotIntake intake, Problems problems) {
    this.file = file;
    this.intake = intake;
    this.problems = problems;
  }

  void read(InputStream in) {
    try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), in)) {
      JsonToken token = json.nextToken();
      ShotRow nothing = new ShotRow(Position.ofFile(file));
      if (token == JsonToken.START_ARRAY) {
        list(json, nothing);
      } else {
        object(json, nothing);
      }
      if (json.nextToken() != null) {
        problems.add(at(json), "something stands behind the end of the table", "take it out");
      }
    } catch (JacksonException fault) {
      TokenStreamLocation location = fault.getLocation();
      problems.add(
          location == null ? Position.ofFile(file) : at(location),
          "this is not JSON",
          "look for a bracket, a comma or a quotation mark that is missing here or just above");
    }
  }

  private void list(JsonParser json, ShotRow above) {
    for (JsonToken token = json.nextToken(); token != JsonToken.END_ARRAY; ) {
      if (token == JsonToken.START_OBJECT) {
        object(json, above);
      } else {
        problems.add(at(json), "a station is an object", "write {\"leg\": \"…\", …}");
        json.skipChildren();
      }
      token = json.nextToken();
    }
  }

  private void object(JsonParser json, ShotRow above) {
    ShotRow row = above.copy(new Position(file, at(json).line(), 0));
    List<String> seen = new ArrayList<>();
    boolean holdsList = false;
    while (json.nextToken() != JsonToken.END_OBJECT) {
      String name = json.currentName();
      Position at = at(json);
      JsonToken token = json.nextToken();
      if (seen.contains(name)) {
        problems.add(at, "the object states '" + Quote.of(name) + "' twice", "keep one of them");
      }
      seen.add(name);
      if (token == JsonToken.START_ARRAY && (name.equals("legs") || name.equals("stations"))) {
        list(json, row);
        holdsList = true;
      } else {
        field(json, row, name, token);
      }
    }
    if (!holdsList) {
      intake.take(row);
    }
  }

  private void field(JsonParser json, ShotRow row, String name, JsonToken token) {
    Optional<ShotField> field = ShotField.named(name.toLowerCase(Locale.ROOT));
    if (field.isEmpty() || token == JsonToken.VALUE_NULL) {
      json.skipChildren();
    } else if (token.isScalarValue()) {
      row.put(field.get(), json.getString());
    } else {
      problems.add(
          at(json), "'" + Quote.of(name) + "' must be a number or a text", "write one value");
      json.skipChildren();
    }
  }

  private Position at(JsonParser json) {
    return at(json.currentTokenLocation());
  }

  private Position at(TokenStreamLocation location) {
    return new Position(file, location.getLineNr(), location.getColumnNr());
  }
}
