package ringbook.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringbook.course.CourseFile;
import ringbook.course.compose.CourseSources;
import ringbook.ledger.Heading;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.ledger.Working;
import ringbook.problems.Problems;
import ringbook.shots.Scene;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** Lists every quantity of the ledger for a scene. */
@Command(
    name = "quantities",
    description = "Lists every quantity with its value for a course, its formula, unit and source.",
    mixinStandardHelpOptions = true)
final class QuantitiesCommand implements Callable<Integer> {

  /** How the list is printed. */
  enum Format {
    text,
    json
  }

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "COURSE",
      defaultValue = CourseReading.STANDARD,
      description = "Course file (default: ${DEFAULT-VALUE}).")
  private Path course;

  @Option(
      names = "--only",
      paramLabel = "START",
      description = "Only quantities whose key begins so, such as 'ring.'.")
  private String only = "";

  @Option(
      names = "--with",
      paramLabel = "CHANGE",
      description = "Change the scene first, such as 'aim.step = 72°'. May be repeated.")
  private List<String> changes = new ArrayList<>();

  @Option(
      names = "--photo",
      paramLabel = "FILE",
      description =
          "Use the camera that took this photograph (JPEG, PNG, HEIC); changes come after.")
  private Path photo;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text or json (default: ${DEFAULT-VALUE}).")
  private Format format = Format.text;

  @Override
  public Integer call() throws IOException {
    Problems problems = new Problems();
    Optional<CourseFile> read = CourseSources.courseFile(course, problems);
    PrintWriter err = spec.commandLine().getErr();
    Optional<Scene> scene =
        read.flatMap(file -> TestPhoto.inPlace(photo, file.scene(), problems, err))
            .flatMap(found -> CourseReading.changed(found, changes, problems));
    if (scene.isEmpty()) {
      return CourseReading.tell(problems, err);
    }
    Reckoning reckoning = Reckoning.of(scene.get());
    List<Quantity> chosen =
        reckoning.ledger().quantities().stream()
            .filter(quantity -> quantity.key().startsWith(only))
            .toList();
    if (chosen.isEmpty()) {
      err.println("ringbook: no quantity begins with '" + only + "'");
      return Main.PROBLEMS;
    }
    PrintWriter out = spec.commandLine().getOut();
    out.print(format == Format.json ? json(chosen, reckoning) : text(chosen, reckoning));
    out.flush();
    return 0;
  }

  private static String text(List<Quantity> quantities, Reckoning reckoning) {
    int keyWidth = width(quantities.stream().map(Quantity::key).toList());
    List<String> values = quantities.stream().map(q -> value(q, reckoning)).toList();
    int valueWidth = Math.min(24, width(values));
    StringBuilder table = new StringBuilder();
    for (int i = 0; i < quantities.size(); i++) {
      Quantity quantity = quantities.get(i);
      Heading heading = Heading.of(quantity.key());
      if (i == 0 || !heading.equals(Heading.of(quantities.get(i - 1).key()))) {
        table.append(i == 0 ? "" : "\n").append(heading.title()).append("\n\n");
      }
      table
          .append(padded(quantity.key(), keyWidth))
          .append("  ")
          .append(padded(values.get(i), valueWidth))
          .append("  ");
      table.append(quantity.name()).append('\n');
      String indent = " ".repeat(keyWidth + 2);
      if (!quantity.inputs().isEmpty() || quantity.definition() instanceof Quantity.ByRule) {
        table.append(indent).append(quantity.meaning()).append('\n');
      }
      Working working = Working.of(reckoning, quantity.key());
      working.formula().ifPresent(line -> table.append(indent).append(line.text()).append('\n'));
      if (!working.rule().isEmpty()) {
        table.append(indent).append(working.rule()).append('\n');
      }
      table.append(indent).append("range: ").append(quantity.rangeText());
      table.append("; source: ").append(quantity.source());
      if (!quantity.checks().isEmpty()) {
        table.append("; checked by ").append(String.join(", ", quantity.checks()));
      }
      table.append('\n');
    }
    return table.toString();
  }

  private static String json(List<Quantity> quantities, Reckoning reckoning) {
    StringWriter text = new StringWriter();
    ObjectWriteContext pretty =
        new ObjectWriteContext.Base() {
          @Override
          public DefaultPrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter();
          }

          @Override
          public boolean hasPrettyPrinter() {
            return true;
          }
        };
    try (JsonGenerator json = new JsonFactory().createGenerator(pretty, text)) {
      json.writeStartArray();
      for (Quantity quantity : quantities) {
        write(json, quantity, reckoning);
      }
      json.writeEndArray();
    }
    return text + "\n";
  }

  private static void write(JsonGenerator json, Quantity quantity, Reckoning reckoning) {
    json.writeStartObject();
    json.writeStringProperty("key", quantity.key());
    json.writeStringProperty("name", quantity.name());
    json.writeStringProperty("meaning", quantity.meaning());
    json.writeStringProperty("unit", quantity.unit().symbol());
    if (reckoning.of(quantity.key()) instanceof Outcome.Known known) {
      json.writeStringProperty("value", reckoning.text(quantity.key()));
      if (Double.isFinite(known.si())) {
        json.writeNumberProperty("si", known.si());
      }
    } else if (reckoning.of(quantity.key()) instanceof Outcome.Refused refused) {
      json.writeStringProperty("refused", refused.reason());
      json.writeStringProperty("help", refused.help());
    }
    quantity
        .formula()
        .ifPresent(formula -> json.writeStringProperty("formula", formula.notation()));
    if (quantity.definition() instanceof Quantity.ByRule by) {
      json.writeStringProperty("rule", by.rule());
    }
    json.writeStringProperty("range", quantity.rangeText());
    list(json, "inputs", quantity.inputs());
    json.writeStringProperty("source", quantity.source());
    list(json, "checks", quantity.checks());
    json.writeEndObject();
  }

  private static void list(JsonGenerator json, String name, List<String> texts) {
    json.writeArrayPropertyStart(name);
    texts.forEach(json::writeString);
    json.writeEndArray();
  }

  private static String value(Quantity quantity, Reckoning reckoning) {
    return reckoning.of(quantity.key()) instanceof Outcome.Known
        ? reckoning.text(quantity.key())
        : "none: " + reckoning.text(quantity.key());
  }

  private static int width(List<String> texts) {
    return texts.stream().mapToInt(String::length).max().orElse(0);
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
