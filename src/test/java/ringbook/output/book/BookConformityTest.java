package ringbook.output.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.VeraPDFFoundry;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import ringbook.course.ComposedLesson.Markup;

/**
 * The book against the standards for accessible and for lasting PDF files, ISO 14289-1 (PDF/UA-1)
 * and ISO 19005-2 (PDF/A-2, level A), as the veraPDF validator checks them.
 */
class BookConformityTest {

  /** What the sample lacks: a box before any section, a footnote, an inline code, a picture. */
  private static final String MORE =
      """
      <section class="try"><h3>Look here</h3><blockquote><p>A quoted <code>word</code>.</p></blockquote>
      <p>Noted<sup class="note-ref"><a id="n-ref" href="course:one-ring#n">1</a></sup> and seen
      <a href="https://example.org/">outside</a>.</p>
      <p><img alt="a red dot" src="data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR4nGP4z8AAAAMBAQDJ/pLvAAAAAElFTkSuQmCC" /></p>
      </section><section class="footnotes"><ol><li id="n">The note. <a class="back"
      href="course:one-ring#n-ref">Back</a></li></ol></section>
      """;

  private static byte[] book;

  @BeforeAll
  static void press(@TempDir Path folder) throws IOException {
    VeraGreenfieldFoundryProvider.initialise();
    book = PressedBook.bytes(SampleCourse.with(List.of(new Markup(MORE))), folder);
  }

  @ParameterizedTest
  @EnumSource(
      value = PDFAFlavour.class,
      names = {"PDFUA_1", "PDFA_2_A"})
  void conforms(PDFAFlavour standard) throws IOException, VeraPDFException {
    Set<String> faults = new TreeSet<>();
    VeraPDFFoundry foundry = Foundries.defaultInstance();
    try (PDFAParser parser = foundry.createParser(new ByteArrayInputStream(book), standard);
        PDFAValidator validator = foundry.createValidator(standard, false)) {
      ValidationResult result = validator.validate(parser);
      for (TestAssertion assertion : result.getTestAssertions()) {
        if (assertion.getStatus() == TestAssertion.Status.FAILED) {
          faults.add(assertion.getRuleId().getClause() + " " + assertion.getMessage());
        }
      }
      assertThat(faults).isEmpty();
      assertThat(result.isCompliant()).isTrue();
    }
  }
}
