package ringbook.meshes;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Reads the points and faces of a PLY file, text or binary of either order; other elements and
 * properties are passed over. Format: G. Turk, The PLY polygon file format, 1994 (from memory).
 */
final class PlyReader {

  private static final Map<String, Integer> SIZES =
      Map.ofEntries(
          Map.entry("char", 1),
          Map.entry("int8", 1),
          Map.entry("uchar", -1),
          Map.entry("uint8", -1),
          Map.entry("short", 2),
          Map.entry("int16", 2),
          Map.entry("ushort", -2),
          Map.entry("uint16", -2),
          Map.entry("int", 4),
          Map.entry("int32", 4),
          Map.entry("uint", -4),
          Map.entry("uint32", -4),
          Map.entry("float", 40),
          Map.entry("float32", 40),
          Map.entry("double", 80),
          Map.entry("float64", 80));

  private static final int MOST_CORNERS = 1000;

  /** A named value, or a list of them where {@code counter} is not null. */
  private record Property(String name, String type, String counter) {}

  private record Element(String name, long count, List<Property> properties) {}

  private final ByteSource in;
  private final MeshSink sink;
  private final List<Element> elements = new ArrayList<>();
  private String format = "";

  /** Words of the current line of a text file, and how many are taken. */
  private List<String> words = List.of();

  private int taken;

  PlyReader(ByteSource in, MeshSink sink) {
    this.in = in;
    this.sink = sink;
  }

  void read() throws IOException, BrokenMeshException {
    header();
    for (Element element : elements) {
      for (long i = 0; i < element.count(); i++) {
        one(element);
      }
    }
  }

  private void header() throws IOException, BrokenMeshException {
    List<String> w = in.words();
    while (!w.isEmpty() && !w.get(0).equals("end_header")) {
      switch (w.get(0)) {
        case "format" -> format = w.size() > 1 ? w.get(1) : "";
        case "element" -> element(w);
        case "property" -> property(w);
        case "ply", "comment", "obj_info" -> {
          // nothing to keep
        }
        default -> throw header("'" + w.get(0) + "' has no place in the header");
      }
      w = in.words();
    }
    if (w.isEmpty()) {
      throw header("the header has no end ('end_header')");
    }
    if (!List.of("ascii", "binary_little_endian", "binary_big_endian").contains(format)) {
      throw header("the format '" + format + "' is not known");
    }
  }

  private BrokenMeshException header(String message) {
    return new BrokenMeshException(in.line(), message, "the file is damaged; export it again");
  }

  private void element(List<String> w) throws BrokenMeshException {
    if (w.size() != 3) {
      throw header("an element has a name and a number");
    }
    int count = in.whole(w.get(2));
    if (count < 0) {
      throw header("the number of elements is below 0");
    }
    boolean faces = w.get(1).equals("face");
    MeshSink.requireFew(faces ? 0 : count, faces ? count : 0, in.line());
    elements.add(new Element(w.get(1), count, new ArrayList<>()));
  }

  private void property(List<String> w) throws BrokenMeshException {
    boolean list = w.size() == 5 && w.get(1).equals("list");
    if (elements.isEmpty() || (w.size() != 3 && !list)) {
      throw header("a property has a type and a name, below an element");
    }
    Property property =
        list ? new Property(w.get(4), w.get(3), w.get(2)) : new Property(w.get(2), w.get(1), null);
    if (!SIZES.containsKey(property.type()) || (list && !SIZES.containsKey(property.counter()))) {
      throw header("a property has a type that is not known");
    }
    elements.get(elements.size() - 1).properties().add(property);
  }

  private void one(Element element) throws IOException, BrokenMeshException {
    long where = text() ? 0 : -in.offset();
    nextLine(element);
    double[] place = {Double.NaN, Double.NaN, Double.NaN};
    int found = 0;
    for (Property property : element.properties()) {
      if (property.counter() != null) {
        int[] numbers = list(property);
        if (element.name().equals("face")
            && (property.name().equals("vertex_indices")
                || property.name().equals("vertex_index"))) {
          sink.polygon(numbers, text() ? in.line() : 0);
        }
      } else {
        double value = value(property.type());
        int axis = List.of("x", "y", "z").indexOf(property.name());
        if (axis >= 0) {
          place[axis] = value;
          found++;
        }
      }
    }
    if (element.name().equals("vertex")) {
      if (found < 3) {
        throw header("the points have no x, y and z");
      }
      sink.point(place, text() ? in.line() : where);
    }
  }

  private boolean text() {
    return format.equals("ascii");
  }

  private void nextLine(Element element) throws IOException, BrokenMeshException {
    if (text()) {
      words = in.words();
      taken = 0;
      if (words.isEmpty()) {
        throw new BrokenMeshException(
            in.line(),
            "the file ends before its " + element.count() + " elements '" + element.name() + "'",
            "it is cut off; copy or export it again");
      }
    }
  }

  private int[] list(Property property) throws IOException, BrokenMeshException {
    double count = value(property.counter());
    if (!(count >= 0 && count <= MOST_CORNERS)) {
      throw new BrokenMeshException(
          text() ? in.line() : 0,
          "a list has " + (long) count + " entries" + (text() ? "" : " at byte " + in.offset()),
          "the file is damaged; export it again");
    }
    int[] numbers = new int[(int) count];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = (int) value(property.type());
    }
    return numbers;
  }

  private double value(String type) throws IOException, BrokenMeshException {
    int size = SIZES.get(type);
    if (text()) {
      if (taken == words.size()) {
        throw new BrokenMeshException(
            in.line(), "the line has too few numbers", "the file is damaged; export it again");
      }
      return in.number(words.get(taken++));
    }
    boolean leastFirst = format.equals("binary_little_endian");
    if (size >= 40) {
      return in.real(size / 10, leastFirst);
    }
    long raw = in.integer(Math.abs(size), leastFirst);
    int spare = 64 - 8 * size;
    return size < 0 ? raw : raw << spare >> spare;
  }
}
