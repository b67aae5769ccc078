package ringbook.output.book;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Consumer;
import java.util.logging.Level;

/** Gathers what the page maker warns of, so that a spoilt page stops the make. */
final class BookWarnings implements Consumer<Diagnostic> {

  private final Set<String> warnings = new LinkedHashSet<>();

  BookWarnings() {
    // Switching the log off would mute this listener too; a silent logger does not.
    XRLog.setLoggerImpl(new Silent());
  }

  @Override
  public void accept(Diagnostic said) {
    if (said.getLevel().intValue() >= Level.WARNING.intValue()) {
      String cause = said.hasError() ? " (" + said.getError() + ")" : "";
      warnings.add(said.getFormattedMessage() + cause);
    }
  }

  /** Throws if there was a warning. */
  void check() throws BookException {
    if (!warnings.isEmpty()) {
      throw new BookException("the page maker warns: " + String.join("; ", warnings));
    }
  }

  private static final class Silent implements XRLogger {
    @Override
    public void log(String where, Level level, String message) {}

    @Override
    public void log(String where, Level level, String message, Throwable cause) {}

    @Override
    public void setLevel(String where, Level level) {}

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
      return true;
    }
  }
}
