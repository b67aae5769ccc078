package ringbook.output.book;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;

/** What is added to pages once they are set, before the file is written. */
@FunctionalInterface
public interface LastStep {

  /** Changes {@code pdf}, whose pages and tags are complete. */
  void add(PDDocument pdf) throws IOException;
}
