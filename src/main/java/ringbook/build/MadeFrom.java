package ringbook.build;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which of our classes a script was made from, with their content: noted in a file when it is made,
 * and looked up before it is made again.
 */
final class MadeFrom {

  private static final String OURS = "ringbook/";
  private static final String CLASS = ".class";

  private final Path classes;
  private final Path list;

  /**
   * The classes of one script.
   *
   * @param classes folder of compiled classes
   * @param list file for the note; need not exist
   */
  MadeFrom(Path classes, Path list) {
    this.classes = classes;
    this.list = list;
  }

  /** A short name for the content of the noted classes now; empty if nothing was noted. */
  String mark() throws IOException {
    return Files.exists(list) ? mark(Files.readAllLines(list)) : "";
  }

  /** Notes what {@code noting} handed out and the classes of the build itself; gives its mark. */
  String note(Noting noting) throws IOException {
    Set<String> names = new TreeSet<>(noting.handedOut);
    Path build = classes.resolve("ringbook/build");
    try (var files = Files.list(build)) {
      files.forEach(file -> names.add(OURS + "build/" + file.getFileName()));
    }
    Files.createDirectories(list.getParent());
    Files.write(list, names);
    return mark(List.copyOf(names));
  }

  private String mark(List<String> names) throws IOException {
    MessageDigest digest = sha256();
    for (String name : names) {
      digest.update(name.getBytes(StandardCharsets.UTF_8));
      Path file = classes.resolve(name);
      digest.update(Files.exists(file) ? Files.readAllBytes(file) : new byte[0]);
    }
    return HexFormat.of().formatHex(digest.digest(), 0, 8);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }

  /** Hands classes to the compiler and remembers which of ours. */
  static final class Noting extends ClassLoader {

    private final Set<String> handedOut = Collections.synchronizedSet(new TreeSet<>());

    Noting(ClassLoader parent) {
      super(parent);
    }

    @Override
    public URL getResource(String name) {
      return note(name, super.getResource(name));
    }

    @Override
    public InputStream getResourceAsStream(String name) {
      return note(name, super.getResourceAsStream(name));
    }

    @Override
    public Enumeration<URL> getResources(String name) throws IOException {
      List<URL> found = new ArrayList<>(Collections.list(super.getResources(name)));
      found.forEach(url -> note(name, url));
      return Collections.enumeration(found);
    }

    private <T> T note(String name, T found) {
      if (found != null && name.startsWith(OURS) && name.endsWith(CLASS)) {
        handedOut.add(name);
      }
      return found;
    }
  }
}
