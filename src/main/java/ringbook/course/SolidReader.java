package ringbook.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import ringbook.geometry.Ball;
import ringbook.geometry.Box;
import ringbook.geometry.Cone;
import ringbook.geometry.Cylinder;
import ringbook.geometry.Lathe;
import ringbook.geometry.Plate;
import ringbook.geometry.Solid;
import ringbook.geometry.Torus;
import ringbook.geometry.Tube;
import ringbook.problems.Nearest;
import ringbook.units.Length;

/** Reads one solid by its kind and its sizes. */
final class SolidReader {

  /** A kind whose sizes are plain lengths. */
  private record Kind(List<String> sizes, Function<List<Length>, Solid> make) {}

  private static final Map<String, Kind> PLAIN = new LinkedHashMap<>();

  static {
    PLAIN.put(
        "box",
        new Kind(List.of("width", "depth", "height"), s -> new Box(s.get(0), s.get(1), s.get(2))));
    PLAIN.put(
        "cylinder", new Kind(List.of("diameter", "height"), s -> new Cylinder(s.get(0), s.get(1))));
    PLAIN.put(
        "cone",
        new Kind(
            List.of("lower diameter", "upper diameter", "height"),
            s -> new Cone(s.get(0), s.get(1), s.get(2))));
    PLAIN.put("ball", new Kind(List.of("diameter"), s -> new Ball(s.get(0))));
    PLAIN.put(
        "torus",
        new Kind(List.of("ring diameter", "section diameter"), s -> new Torus(s.get(0), s.get(1))));
    PLAIN.put(
        "tube",
        new Kind(
            List.of("outer diameter", "inner diameter", "height"),
            s -> new Tube(s.get(0), s.get(1), s.get(2))));
  }

  private final SolidFields fields;

  private SolidReader(SolidFields fields) {
    this.fields = fields;
  }

  /** The solid; empty, with problems told, where it is none. */
  static Optional<Solid> read(SolidFields fields) {
    try {
      return new SolidReader(fields).solid();
    } catch (IllegalArgumentException impossible) {
      fields.fault(fields.position(), impossible.getMessage(), "mend the sizes of this solid");
      return Optional.empty();
    }
  }

  private Optional<Solid> solid() {
    List<String> kinds = new ArrayList<>(PLAIN.keySet());
    kinds.addAll(List.of("turned", "plate"));
    Optional<String> kind = fields.text("solid");
    if (kind.isEmpty()) {
      fields.fault(
          fields.position(),
          "'solid' is missing",
          "write 'solid:' and one of: " + String.join(", ", kinds));
      return Optional.empty();
    }
    if (PLAIN.containsKey(kind.get())) {
      return plain(PLAIN.get(kind.get()));
    }
    return switch (kind.get()) {
      case "turned" -> turned();
      case "plate" -> plate();
      default -> {
        fields.fault(
            fields.find("solid").orElseThrow().position(),
            "there is no solid '" + kind.get() + "'",
            Nearest.help(kind.get(), kinds));
        yield Optional.empty();
      }
    };
  }

  private Optional<Solid> plain(Kind kind) {
    List<Length> sizes = new ArrayList<>();
    for (String size : kind.sizes()) {
      fields.length(size).ifPresent(sizes::add);
    }
    return sizes.size() == kind.sizes().size()
        ? Optional.of(kind.make().apply(sizes))
        : Optional.empty();
  }

  private Optional<Solid> turned() {
    if (fields.find("outside").isEmpty()) {
      fields.fault(
          fields.position(),
          "'outside' is missing",
          "write the outline from foot to top: outside: "
              + fields.told("[[10 cm, 0 cm], [12 cm, 30 cm]]", "[[4 in, 0 in], [5 in, 12 in]]")
              + ", each [radius, height]");
      return Optional.empty();
    }
    Optional<List<Lathe.Point>> outside = outline("outside");
    Optional<List<Lathe.Point>> inside = outline("inside");
    return outside.isPresent() && inside.isPresent()
        ? Optional.of(new Lathe(outside.get(), inside.get()))
        : Optional.empty();
  }

  private Optional<List<Lathe.Point>> outline(String name) {
    List<Lathe.Point> points = new ArrayList<>();
    List<YamlNode> items = items(name);
    for (YamlNode item : items) {
      fields.lengths(item, 2).ifPresent(p -> points.add(new Lathe.Point(p.get(0), p.get(1))));
    }
    return points.size() == items.size() ? Optional.of(points) : Optional.empty();
  }

  private List<YamlNode> items(String name) {
    Optional<YamlNode> node = fields.find(name);
    if (node.isPresent() && !(node.get() instanceof YamlNode.Items)) {
      fields.fault(node.get().position(), "'" + name + "' must be a list", "");
    }
    return node.filter(YamlNode.Items.class::isInstance)
        .map(items -> ((YamlNode.Items) items).items())
        .orElse(List.of());
  }

  private Optional<Solid> plate() {
    Optional<Length> width = fields.length("width");
    Optional<Length> depth = fields.length("depth");
    Optional<Length> thickness = fields.length("thickness");
    List<Plate.Hole> holes = new ArrayList<>();
    for (SolidFields hole : openings("holes")) {
      Optional<List<Length>> at = place(hole);
      Optional<Length> diameter = hole.length("diameter");
      hole.refuseOthers();
      if (at.isPresent() && diameter.isPresent()) {
        holes.add(new Plate.Hole(at.get().get(0), at.get().get(1), diameter.get()));
      }
    }
    List<Plate.Pocket> pockets = new ArrayList<>();
    for (SolidFields pocket : openings("pockets")) {
      pocket(pocket).ifPresent(pockets::add);
    }
    return width.isPresent() && depth.isPresent() && thickness.isPresent()
        ? Optional.of(new Plate(width.get(), depth.get(), thickness.get(), holes, pockets))
        : Optional.empty();
  }

  private Optional<Plate.Pocket> pocket(SolidFields pocket) {
    Optional<List<Length>> at = place(pocket);
    Optional<Length> diameter = pocket.length("diameter");
    Optional<Length> depth = pocket.length("depth");
    var tilt = pocket.angle("tilt");
    var towards = pocket.angle("towards");
    pocket.refuseOthers();
    return at.isPresent() && diameter.isPresent() && depth.isPresent()
        ? Optional.of(
            new Plate.Pocket(
                at.get().get(0), at.get().get(1), diameter.get(), depth.get(), tilt, towards))
        : Optional.empty();
  }

  private Optional<List<Length>> place(SolidFields opening) {
    Optional<YamlNode> at = opening.find("at");
    if (at.isEmpty()) {
      fields.fault(
          opening.position(),
          "'at' is missing",
          "write at: " + fields.told("[1 cm, 2 cm]", "[1 in, 2 in]") + ": right, away");
    }
    return at.flatMap(node -> opening.lengths(node, 2));
  }

  private List<SolidFields> openings(String name) {
    List<SolidFields> all = new ArrayList<>();
    for (YamlNode item : items(name)) {
      if (item instanceof YamlNode.Fields one) {
        all.add(fields.inner(one));
      } else {
        fields.fault(
            item.position(),
            "an opening has fields",
            "write {at: " + fields.told("[1 cm, 2 cm]", "[1 in, 2 in]") + ", …}");
      }
    }
    return all;
  }
}
