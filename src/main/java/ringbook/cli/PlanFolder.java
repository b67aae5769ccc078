package ringbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import ringbook.assess.findings.Assessment;
import ringbook.figures.CoverageMap;
import ringbook.figures.Figure;
import ringbook.figures.ShotRings;
import ringbook.output.book.PlanSheet;
import ringbook.sheets.PlanReport;
import ringbook.sheets.ShotCsv;
import ringbook.shots.Scene;

/**
 * The files of a plan.
 *
 * @param report the plan
 * @param date of the pages, ISO 8601
 */
record PlanFolder(PlanReport report, String date) {

  void write(Path folder) throws IOException {
    Assessment assessment = report.assessment();
    Scene scene = report.scene();
    Files.writeString(folder.resolve("shots.csv"), ShotCsv.of(assessment.plan()));
    Files.writeString(folder.resolve("plan.json"), report.json());
    Files.writeString(folder.resolve("plan.txt"), report.text());
    List<Figure> figures = new ArrayList<>();
    figures.add(drawn(folder, "above", ShotRings.above(scene, assessment.plan(), "above-")));
    figures.add(drawn(folder, "side", ShotRings.side(scene, assessment.plan(), "side-")));
    figures.add(drawn(folder, "coverage", coverage(scene, assessment)));
    Files.write(folder.resolve("plan.pdf"), PlanSheet.pdf(report, figures, date));
  }

  private static Figure coverage(Scene scene, Assessment assessment) {
    return CoverageMap.of(assessment.coverage(), scene.subject().name(), "coverage-");
  }

  private static Figure drawn(Path folder, String name, Figure figure) throws IOException {
    Files.writeString(folder.resolve(name + ".svg"), figure.svg());
    return figure;
  }
}
