package ringbook.browser;

import java.util.ArrayList;
import java.util.List;
import ringbook.geometry.Ball;
import ringbook.geometry.Box;
import ringbook.geometry.Cone;
import ringbook.geometry.Cylinder;
import ringbook.geometry.Lathe;
import ringbook.geometry.Placed;
import ringbook.geometry.Placement;
import ringbook.geometry.Plate;
import ringbook.geometry.Shape;
import ringbook.geometry.Solid;
import ringbook.geometry.Torus;
import ringbook.geometry.Tube;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Numbers;

/**
 * The form of an object as data: its solids with all their digits, in metres and radians. A body
 * known by its triangles only is not carried: pages take its outline.
 */
final class ShapeData {

  private ShapeData() {}

  /** Whether all of its solids can be written. */
  static boolean isCarried(Shape shape) {
    return shape.solids().stream().allMatch(placed -> !sizes(placed.solid()).isEmpty());
  }

  /** Writes a list of solids. */
  static void write(Shape shape, JsonText out) {
    out.array();
    for (Placed placed : shape.solids()) {
      Vec3 at = placed.placement().at();
      List<String> place = new ArrayList<>();
      add(place, at.x());
      add(place, at.y());
      add(place, at.z());
      add(place, placed.placement().tilt().radians());
      add(place, placed.placement().azimuth().radians());
      out.object().member("name", placed.name()).member("kind", kind(placed.solid()));
      out.member("sizes", sizes(placed.solid())).member("place", place);
      out.member("cut", placed.isCut() ? "yes" : "no").endObject();
    }
    out.endArray();
  }

  /** The shape that {@link #write} wrote. */
  static Shape read(JsonTree data) {
    List<Placed> solids = new ArrayList<>();
    for (JsonTree one : data.items()) {
      List<Double> place = numbers(one.at("place"));
      Placement placement =
          new Placement(
              new Vec3(place.get(0), place.get(1), place.get(2)),
              new Angle(place.get(3)),
              new Angle(place.get(4)));
      Solid solid = solid(one.text("kind"), numbers(one.at("sizes")));
      solids.add(new Placed(one.text("name"), solid, placement, one.text("cut").equals("yes")));
    }
    return new Shape(solids);
  }

  private static List<Double> numbers(JsonTree list) {
    List<Double> numbers = new ArrayList<>();
    list.items().forEach(item -> numbers.add(SceneData.number(item.text())));
    return numbers;
  }

  private static void add(List<String> list, double number) {
    list.add(Numbers.shortest(number));
  }

  private static List<String> lengths(Length... lengths) {
    List<String> list = new ArrayList<>();
    for (Length length : lengths) {
      add(list, length.metres());
    }
    return list;
  }

  private static String kind(Solid solid) {
    if (solid instanceof Ball) {
      return "ball";
    }
    if (solid instanceof Box) {
      return "box";
    }
    if (solid instanceof Cone) {
      return "cone";
    }
    if (solid instanceof Cylinder) {
      return "cylinder";
    }
    if (solid instanceof Torus) {
      return "torus";
    }
    if (solid instanceof Tube) {
      return "tube";
    }
    return solid instanceof Lathe ? "turned" : "plate";
  }

  /** Its sizes in one row; empty where it has none. */
  private static List<String> sizes(Solid solid) {
    if (solid instanceof Ball ball) {
      return lengths(ball.diameter());
    }
    if (solid instanceof Box box) {
      return lengths(box.width(), box.depth(), box.height());
    }
    if (solid instanceof Cone cone) {
      return lengths(cone.base(), cone.top(), cone.height());
    }
    if (solid instanceof Cylinder cylinder) {
      return lengths(cylinder.diameter(), cylinder.height());
    }
    if (solid instanceof Torus torus) {
      return lengths(torus.ring(), torus.section());
    }
    if (solid instanceof Tube tube) {
      return lengths(tube.outer(), tube.inner(), tube.height());
    }
    if (solid instanceof Lathe lathe) {
      return turned(lathe);
    }
    return solid instanceof Plate plate ? plate(plate) : List.of();
  }

  private static List<String> turned(Lathe lathe) {
    List<String> sizes = new ArrayList<>();
    add(sizes, lathe.outside().size());
    for (Lathe.Point point : lathe.outside()) {
      sizes.addAll(lengths(point.radius(), point.height()));
    }
    for (Lathe.Point point : lathe.inside()) {
      sizes.addAll(lengths(point.radius(), point.height()));
    }
    return sizes;
  }

  private static List<String> plate(Plate plate) {
    List<String> sizes = lengths(plate.width(), plate.depth(), plate.thickness());
    add(sizes, plate.holes().size());
    for (Plate.Hole hole : plate.holes()) {
      sizes.addAll(lengths(hole.x(), hole.y(), hole.diameter()));
    }
    for (Plate.Pocket pocket : plate.pockets()) {
      sizes.addAll(lengths(pocket.x(), pocket.y(), pocket.diameter(), pocket.depth()));
      add(sizes, pocket.tilt().radians());
      add(sizes, pocket.azimuth().radians());
    }
    return sizes;
  }

  private static Solid solid(String kind, List<Double> s) {
    return switch (kind) {
      case "ball" -> new Ball(length(s, 0));
      case "box" -> new Box(length(s, 0), length(s, 1), length(s, 2));
      case "cone" -> new Cone(length(s, 0), length(s, 1), length(s, 2));
      case "cylinder" -> new Cylinder(length(s, 0), length(s, 1));
      case "torus" -> new Torus(length(s, 0), length(s, 1));
      case "tube" -> new Tube(length(s, 0), length(s, 1), length(s, 2));
      case "turned" -> lathe(s);
      case "plate" -> plate(s);
      default -> throw new IllegalArgumentException("no solid is called " + kind);
    };
  }

  private static Length length(List<Double> sizes, int i) {
    return new Length(sizes.get(i));
  }

  private static Lathe lathe(List<Double> s) {
    int outside = (int) (double) s.get(0);
    List<Lathe.Point> out = new ArrayList<>();
    List<Lathe.Point> in = new ArrayList<>();
    for (int i = 1; i + 1 < s.size(); i += 2) {
      Lathe.Point point = new Lathe.Point(length(s, i), length(s, i + 1));
      (i <= 2 * outside ? out : in).add(point);
    }
    return new Lathe(out, in);
  }

  private static Plate plate(List<Double> s) {
    int at = 4;
    List<Plate.Hole> holes = new ArrayList<>();
    for (int i = 0; i < (int) (double) s.get(3); i++, at += 3) {
      holes.add(new Plate.Hole(length(s, at), length(s, at + 1), length(s, at + 2)));
    }
    List<Plate.Pocket> pockets = new ArrayList<>();
    for (; at + 5 < s.size(); at += 6) {
      pockets.add(
          new Plate.Pocket(
              length(s, at),
              length(s, at + 1),
              length(s, at + 2),
              length(s, at + 3),
              new Angle(s.get(at + 4)),
              new Angle(s.get(at + 5))));
    }
    return new Plate(length(s, 0), length(s, 1), length(s, 2), holes, pockets);
  }
}
