package ringbook.sheets;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.List;
import ringbook.plans.ShotColumn;
import ringbook.shots.Leg;
import ringbook.shots.ShotPlan;
import ringbook.shots.ShotPlan.Shot;
import ringbook.units.Words;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** A plan as JSON: legs with what holds for all their stations, then the stations, one a line. */
public final class ShotJson {

  private static final JsonFactory JSON = new JsonFactory();

  private static final List<ShotColumn> OF_LEG =
      List.of(
          ShotColumn.LEG, ShotColumn.POSE, ShotColumn.HOLD, ShotColumn.FOCUS, ShotColumn.PHOTOS);
  private static final List<ShotColumn> OF_STATION =
      List.of(
          ShotColumn.NUMBER,
          ShotColumn.CLOCK,
          ShotColumn.AZIMUTH,
          ShotColumn.LENS_HEIGHT,
          ShotColumn.DISTANCE,
          ShotColumn.FLOOR_DISTANCE,
          ShotColumn.AIM_RIGHT,
          ShotColumn.AIM_BACK,
          ShotColumn.AIM_HEIGHT);

  private ShotJson() {}

  /** The value of {@code "legs"}: a list, ending without a line end. */
  public static String legs(ShotPlan plan) {
    StringBuilder out = new StringBuilder("[");
    String before = "\n";
    for (Leg leg : plan.legs()) {
      out.append(before).append(leg(leg));
      before = ",\n";
    }
    return out.append("\n]").toString();
  }

  /** The plan alone: an object with its number of photographs and its legs. */
  public static String of(ShotPlan plan) {
    return "{\n\"photographs_in_all\": " + plan.photos() + ",\n\"legs\": " + legs(plan) + "\n}\n";
  }

  private static String leg(Leg leg) {
    Shot first = new Shot(leg, leg.stations().get(0));
    String head =
        object(
            json -> {
              fields(json, OF_LEG, first);
              json.writeStringProperty(ShotField.KIND, Words.lower(leg.kind().name()));
              json.writeStringProperty(ShotField.WHY, leg.why());
            });
    StringBuilder out = new StringBuilder(head.substring(0, head.length() - 1));
    String before = ",\"stations\":[\n";
    for (int i = 0; i < leg.stations().size(); i++) {
      Shot shot = new Shot(leg, leg.stations().get(i));
      out.append(before).append("  ").append(object(json -> fields(json, OF_STATION, shot)));
      before = ",\n";
    }
    return out.append("]}").toString();
  }

  /** Writes the inside of an object. */
  @FunctionalInterface
  private interface Inside {
    void write(JsonGenerator json);
  }

  private static String object(Inside inside) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
      json.writeStartObject();
      inside.write(json);
      json.writeEndObject();
    }
    return text.toString();
  }

  private static void fields(JsonGenerator json, List<ShotColumn> columns, Shot shot) {
    for (ShotColumn column : columns) {
      String text = column.of(shot);
      boolean isNumber =
          column.isMeasure() || column == ShotColumn.NUMBER || column == ShotColumn.PHOTOS;
      if (isNumber) {
        json.writeNumberProperty(column.head(), new BigDecimal(text));
      } else {
        json.writeStringProperty(column.head(), text);
      }
    }
  }
}
