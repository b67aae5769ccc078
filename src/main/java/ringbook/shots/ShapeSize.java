package ringbook.shots;

import java.util.Optional;
import ringbook.geometry.Mesh;
import ringbook.geometry.Scan;
import ringbook.geometry.Shape;
import ringbook.geometry.Vec3;
import ringbook.shots.SceneDraft.Fault;
import ringbook.units.Length;
import ringbook.units.Numbers;

/**
 * Holds a stated form against the stated sizes. A draft knows it as a function only, so that it
 * brings no meshes into a script in which no form is ever stated.
 */
final class ShapeSize {

  /** By how much, as a part, a measured mesh may differ: a tape measure and a rounded drawing. */
  private static final double MESH_SLACK = 0.05;

  /** Solids give the form and are stretched to the sizes stated, up to double or half. */
  private static final double SOLIDS_SLACK = 1;

  private final Shape shape;

  /** As measured on its triangles, in metres: (0, 0, 0) where nothing is left; null until asked. */
  private Vec3 size;

  /** The size of a form; thousands of triangles are measured for it when it is first asked for. */
  ShapeSize(Shape shape) {
    this.shape = shape;
  }

  private Vec3 size() {
    if (size == null) {
      Mesh mesh = shape.mesh(new Length(shape.bounds().diagonal() / 40));
      size = mesh.triangles() == 0 ? new Vec3(0, 0, 0) : mesh.bounds().size();
    }
    return size;
  }

  private double slack() {
    boolean scan = shape.solids().stream().anyMatch(placed -> placed.solid() instanceof Scan);
    return scan ? MESH_SLACK : SOLIDS_SLACK;
  }

  /** What is wrong, if the form is not about as large as {@code stated}, in metres. */
  Optional<Fault> compare(Vec3 stated) {
    Vec3 found = size();
    if (found.norm() == 0) {
      return Optional.of(fault("nothing is left of the shape", "take less of it away"));
    }
    Optional<Fault> height = with("high", found.z(), "height", stated.z());
    Optional<Fault> width = with("wide", found.x(), "width", stated.x());
    Optional<Fault> depth = with("deep", found.y(), "depth", stated.y());
    return height.isPresent() ? height : width.isPresent() ? width : depth;
  }

  private Optional<Fault> with(String how, double metres, String field, double stated) {
    double ratio = metres / stated;
    double slack = slack();
    if (ratio <= 1 + slack && ratio >= 1 / (1 + slack)) {
      return Optional.empty();
    }
    String message =
        "the shape is "
            + length(metres)
            + " "
            + how
            + ", but '"
            + field
            + "' says "
            + length(stated);
    return Optional.of(fault(message, help(ratio)));
  }

  private static Fault fault(String message, String help) {
    return new Fault("subject.shape", message, help);
  }

  private static String help(double ratio) {
    double factor = Math.max(ratio, 1 / ratio);
    if (factor > 800 && factor < 1250) {
      return "about 1000 times: millimetres and metres are mixed up; state the unit of the numbers";
    }
    if (factor > 80 && factor < 125) {
      return "about 100 times: centimetres and metres are mixed up; state the unit of the numbers";
    }
    if (factor > 8 && factor < 12.5) {
      return "about 10 times: millimetres and centimetres are mixed up; state the unit";
    }
    return "mend the size or the shape; width runs to the right, depth away";
  }

  private static String length(double metres) {
    if (metres >= 10 || metres < 0.001) {
      return Numbers.significant(metres, 3) + " m";
    }
    return Numbers.significant(metres * 100, 3) + " cm";
  }
}
