package ringbook.course;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.geometry.Placed;
import ringbook.geometry.Placement;
import ringbook.geometry.Scan;
import ringbook.geometry.Shape;
import ringbook.geometry.Solid;
import ringbook.geometry.Vec3;
import ringbook.meshes.MeshFile;
import ringbook.meshes.MeshUnit;
import ringbook.problems.Nearest;
import ringbook.problems.Problems;
import ringbook.units.Angle;
import ringbook.units.Lengths;

/** Reads the form of the object: a list of solids, or the name of a mesh file. */
final class ShapeReader {

  private final Lengths lengths;
  private final Problems problems;

  private ShapeReader(Lengths lengths, Problems problems) {
    this.lengths = lengths;
    this.problems = problems;
  }

  /** The shape that the field states; empty, with problems told, where it states none. */
  static Optional<Shape> read(YamlNode.Field field, Lengths lengths, Problems problems) {
    ShapeReader reader = new ShapeReader(lengths, problems);
    if (field.value() instanceof YamlNode.Items items && !items.items().isEmpty()) {
      return reader.solids(items);
    }
    if (field.value() instanceof YamlNode.Fields fields && fields.find("mesh").isPresent()) {
      return reader.meshFile(fields);
    }
    problems.add(
        field.position(),
        "'shape' must be a list of solids or a mesh file",
        "write '- solid: cylinder' and its sizes below it, or 'mesh: pot.ply'");
    return Optional.empty();
  }

  private Optional<Shape> solids(YamlNode.Items items) {
    List<Placed> all = new ArrayList<>();
    int before = problems.size();
    for (YamlNode item : items.items()) {
      if (item instanceof YamlNode.Fields fields) {
        placed(fields).ifPresent(all::add);
      } else {
        problems.add(item.position(), "a solid has fields", "write '- solid: cylinder'");
      }
    }
    if (problems.size() > before) {
      return Optional.empty();
    }
    if (all.stream().allMatch(Placed::isCut)) {
      problems.add(
          items.position(), "the shape has only solids to take away", "add the solid they are in");
      return Optional.empty();
    }
    return Optional.of(new Shape(all));
  }

  private Optional<Placed> placed(YamlNode.Fields fields) {
    SolidFields read = new SolidFields(fields, lengths, problems);
    Optional<Solid> solid = SolidReader.read(read);
    String name = read.text("name").orElse("");
    boolean cut = read.yes("take away");
    Vec3 at = read.point("at");
    Angle tilt = read.angle("tilt");
    Angle towards = read.angle("towards");
    read.refuseOthers();
    return solid.map(s -> new Placed(name, s, new Placement(at, tilt, towards), cut));
  }

  private Optional<Shape> meshFile(YamlNode.Fields fields) {
    SolidFields read = new SolidFields(fields, lengths, problems);
    String name = read.text("mesh").orElse("");
    String written = read.text("unit").orElse("m");
    read.refuseOthers();
    Optional<MeshUnit> unit = MeshUnit.written(written);
    if (unit.isEmpty()) {
      problems.add(
          fields.find("unit").orElseThrow().value().position(),
          "a mesh cannot have the unit '" + written + "'",
          Nearest.help(written, MeshUnit.names()));
    }
    if (name.isEmpty() || unit.isEmpty()) {
      return Optional.empty();
    }
    try {
      Path course = Path.of(fields.position().file());
      return MeshFile.read(course.resolveSibling(name), unit.get(), problems)
          .map(mesh -> Shape.of(new Scan(mesh)));
    } catch (InvalidPathException noPath) {
      problems.add(
          fields.find("mesh").orElseThrow().value().position(),
          "'" + name + "' is not the name of a file",
          "write it relative to the course file: mesh: pot.ply");
      return Optional.empty();
    }
  }
}
