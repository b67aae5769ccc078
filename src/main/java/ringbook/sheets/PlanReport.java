package ringbook.sheets;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.PatchClass.Group;
import ringbook.assess.findings.Assessment;
import ringbook.assess.findings.Finding;
import ringbook.assess.findings.Gravity;
import ringbook.assess.findings.Mend;
import ringbook.plans.Proposal;
import ringbook.shots.Leg;
import ringbook.shots.Scene;
import ringbook.shots.SceneDetails;
import ringbook.units.Numbers;
import ringbook.units.Unit;
import ringbook.units.Words;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/**
 * What is told of a plan: how many photographs, what they see, what is wrong, and the table.
 *
 * @param scene what it is for
 * @param proposal how the plan came about; empty for a plan that a person made
 * @param assessment the plan, judged
 */
public record PlanReport(Scene scene, Optional<Proposal> proposal, Assessment assessment) {

  private static final JsonFactory JSON = new JsonFactory();
  private static final int WIDTH = 100;

  /** Of a plan that was worked out. */
  public static PlanReport of(Scene scene, Proposal proposal, Assessment assessment) {
    return new PlanReport(scene, Optional.of(proposal), assessment);
  }

  /** Of a plan that a person made. */
  public static PlanReport of(Scene scene, Assessment assessment) {
    return new PlanReport(scene, Optional.empty(), assessment);
  }

  /** Whether nothing is found that a person must mend. */
  public static boolean isSound(Assessment assessment) {
    for (Finding finding : assessment.findings()) {
      if (finding.gravity() != Gravity.NOTE) {
        return false;
      }
    }
    return true;
  }

  /** All in words, with the table; ends with a line end. */
  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(title()).append("\n\n");
    summary().forEach(sentence -> paragraph(out, "", sentence));
    out.append("\nWhat to know\n\n");
    findings().forEach(finding -> paragraph(out, "- ", finding));
    out.append("\nWhat to take\n\n");
    out.append(ShotText.of(assessment.plan(), scene.aim().lengths()));
    return out.toString();
  }

  /** What it is a plan of. */
  public String title() {
    return "Shot plan: " + scene.subject().name();
  }

  /** Sentences about the plan as a whole. */
  public List<String> summary() {
    List<String> summary = new ArrayList<>();
    int photos = assessment.plan().photos();
    summary.add(
        proposal.map(Proposal::proof).orElse(Words.count(photos, "photograph") + ".")
            + " They come in "
            + Words.count(assessment.plan().legs().size(), "leg")
            + "; before each, photograph a card with its name.");
    String well = percent(assessment.coverage().share(Group.WELL));
    summary.add(
        well
            + " of the surface is seen well"
            + proposal
                .map(
                    made -> "; within this room and reach " + percent(made.reachable()) + " can be")
                .orElse("")
            + ".");
    proposal.ifPresent(made -> summary.add(work(made)));
    return summary;
  }

  private String work(Proposal made) {
    double seconds = SceneDetails.si(scene, "aim.secondsPerPhoto");
    return "The lens is carried about "
        + walk(made.walk().metres())
        + "; at "
        + Numbers.significant(seconds, 2)
        + " s a photograph that is "
        + Numbers.fixed(Math.ceil(made.plan().photos() * seconds / 60), 0)
        + " min.";
  }

  private String walk(double metres) {
    Unit unit = scene.aim().lengths().either(Unit.METRE, Unit.FOOT);
    return Numbers.significant(unit.fromSi(metres), 2) + " " + unit.symbol();
  }

  /** What was found, in words; one sentence that says so if nothing was. */
  public List<String> findings() {
    List<String> findings = new ArrayList<>();
    assessment.findings().forEach(finding -> findings.add(finding.text()));
    if (findings.isEmpty()) {
      findings.add("Nothing is wrong with this plan.");
    }
    return findings;
  }

  private static String percent(double share) {
    return Numbers.fixed(100 * share, 0) + " %";
  }

  private static void paragraph(StringBuilder out, String mark, String text) {
    StringBuilder line = new StringBuilder(mark);
    for (String word : text.replace('\u00a0', ' ').split(" ", -1)) {
      if (line.length() + word.length() > WIDTH) {
        out.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(" ".repeat(mark.length()));
      }
      line.append(word).append(' ');
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }

  /** The same as JSON, with the legs as {@link ShotJson} writes them. */
  public String json() {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
      json.writeStartObject();
      json.writeStringProperty("object", scene.subject().name());
      json.writeNumberProperty("photographs_in_all", assessment.plan().photos());
      proposal.ifPresent(made -> json.writeNumberProperty("fewest_possible", made.bound()));
      proposal.ifPresent(made -> json.writeNumberProperty("stations_tried", made.tried()));
      json.writeNumberProperty("seen_well", assessment.coverage().share(Group.WELL));
      json.writeArrayPropertyStart("findings");
      assessment.findings().forEach(finding -> write(json, finding));
      json.writeEndArray();
      json.writeEndObject();
    }
    String head = text.toString();
    return head.substring(0, head.length() - 1)
        + ",\n\"legs\": "
        + ShotJson.legs(assessment.plan())
        + "\n}\n";
  }

  private static void write(JsonGenerator json, Finding finding) {
    json.writeStartObject();
    json.writeStringProperty(
        "gravity", finding.gravity().name().toLowerCase(java.util.Locale.ROOT));
    json.writeStringProperty("where", finding.where());
    json.writeStringProperty("what", finding.what());
    json.writeNumberProperty("share", finding.share());
    json.writeArrayPropertyStart("mends");
    for (Mend mend : finding.mends()) {
      json.writeStartObject();
      json.writeStringProperty("do", mend.words());
      json.writeNumberProperty("photographs", mend.photographs());
      json.writeNumberProperty("mended", mend.mended());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** The legs with their explanations, in the order of shooting. */
  public List<String> explanations() {
    return assessment.plan().legs().stream().map(Leg::why).toList();
  }
}
