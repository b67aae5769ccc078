package ringbook.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A value of a JSON text, for the few kinds that Ringbook writes itself: objects, lists, texts.
 * What is missing is empty, so that a reader need not ask first.
 */
final class JsonTree {

  private static final JsonTree NOTHING = new JsonTree("", List.of(), Map.of());

  private final String text;
  private final List<JsonTree> items;
  private final Map<String, JsonTree> members;

  private JsonTree(String text, List<JsonTree> items, Map<String, JsonTree> members) {
    this.text = text;
    this.items = items;
    this.members = members;
  }

  /**
   * Reads a text.
   *
   * @throws IllegalArgumentException if it is none that {@link JsonText} could have written
   */
  static JsonTree read(String json) {
    return new Reader(json).whole();
  }

  /** The text; empty for other kinds. */
  String text() {
    return text;
  }

  /** The items of a list. */
  List<JsonTree> items() {
    return items;
  }

  /** The members of an object, in their order. */
  Map<String, JsonTree> members() {
    return members;
  }

  /** The member of that name, or nothing. */
  JsonTree at(String name) {
    return members.getOrDefault(name, NOTHING);
  }

  /** The text of the member of that name; empty if there is none. */
  String text(String name) {
    return at(name).text();
  }

  /** Whether there is a member of that name. */
  boolean has(String name) {
    return members.containsKey(name);
  }

  private static final class Reader {
    private final String json;
    private int at;

    Reader(String json) {
      this.json = json;
    }

    JsonTree whole() {
      JsonTree tree = value();
      if (peek() != 0) {
        throw fault();
      }
      return tree;
    }

    private JsonTree value() {
      return switch (peek()) {
        case '{' -> object();
        case '[' -> list();
        default -> new JsonTree(string(), List.of(), Map.of());
      };
    }

    private JsonTree object() {
      Map<String, JsonTree> members = new LinkedHashMap<>();
      at++;
      while (peek() != '}') {
        String name = string();
        take(':');
        members.put(name, value());
        comma('}');
      }
      at++;
      return new JsonTree("", List.of(), members);
    }

    private JsonTree list() {
      List<JsonTree> items = new ArrayList<>();
      at++;
      while (peek() != ']') {
        items.add(value());
        comma(']');
      }
      at++;
      return new JsonTree("", items, Map.of());
    }

    private void comma(char end) {
      if (peek() != end) {
        take(',');
      }
    }

    private String string() {
      take('"');
      StringBuilder text = new StringBuilder();
      while (here() != '"') {
        text.append(here() == '\\' ? escaped() : here());
        at++;
      }
      at++;
      return text.toString();
    }

    /** The character behind a backslash; stops on the last character it is written with. */
    private char escaped() {
      at++;
      if (here() != 'u') {
        return here();
      }
      int code = 0;
      for (int i = 0; i < 4; i++) {
        at++;
        int digit = "0123456789abcdef".indexOf(here());
        if (digit < 0) {
          throw fault();
        }
        code = code * 16 + digit;
      }
      return (char) code;
    }

    private void take(char c) {
      if (peek() != c) {
        throw fault();
      }
      at++;
    }

    /** The next character that is no space, or 0 at the end. */
    private char peek() {
      while (at < json.length() && json.charAt(at) <= ' ') {
        at++;
      }
      return at < json.length() ? json.charAt(at) : 0;
    }

    private char here() {
      if (at >= json.length()) {
        throw fault();
      }
      return json.charAt(at);
    }

    private IllegalArgumentException fault() {
      return new IllegalArgumentException(
          "the course's data cannot be read at character " + (at + 1));
    }
  }
}
