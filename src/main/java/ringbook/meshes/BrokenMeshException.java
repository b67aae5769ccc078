package ringbook.meshes;

/** A mesh file that cannot be used, with the place and a way to mend it. */
final class BrokenMeshException extends Exception {

  private static final long serialVersionUID = 1;

  private final int line;
  private final String help;

  /** A fault in a line; 0 for the whole file. */
  BrokenMeshException(int line, String message, String help) {
    super(message);
    this.line = line;
    this.help = help;
  }

  int line() {
    return line;
  }

  String help() {
    return help;
  }
}
