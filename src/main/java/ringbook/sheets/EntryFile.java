package ringbook.sheets;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;

/** Entries in order in a working file, read back one by one. */
final class EntryFile implements Closeable {

  private static final int BUFFER = 1 << 14;

  private final Path path;
  private final DataInputStream in;
  private Optional<Entry> head;

  private EntryFile(Path path) throws IOException {
    this.path = path;
    this.in = new DataInputStream(new BufferedInputStream(Files.newInputStream(path), BUFFER));
    this.head = read();
  }

  /** Writes entries, which come in order, and opens the file. */
  static EntryFile write(Path path, Iterator<Entry> entries) throws IOException {
    try (DataOutputStream out =
        new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(path), BUFFER))) {
      while (entries.hasNext()) {
        write(entries.next(), out);
      }
      out.writeBoolean(false);
    }
    return new EntryFile(path);
  }

  private static void write(Entry entry, DataOutputStream out) throws IOException {
    out.writeBoolean(true);
    out.writeUTF(entry.learner());
    out.writeInt(entry.exercise());
    out.writeUTF(entry.text());
    out.writeBoolean(entry.ownNumbers());
    out.writeInt(entry.place().file());
    out.writeInt(entry.place().line());
    out.writeLong(entry.place().count());
  }

  /** The next entry, which stays the next until it is taken; empty at the end. */
  Optional<Entry> head() {
    return head;
  }

  /** Takes the next entry. */
  Entry take() throws IOException {
    Entry taken = head.orElseThrow();
    head = read();
    return taken;
  }

  private Optional<Entry> read() throws IOException {
    if (!in.readBoolean()) {
      return Optional.empty();
    }
    return Optional.of(
        new Entry(
            in.readUTF(),
            in.readInt(),
            in.readUTF(),
            in.readBoolean(),
            new Entry.Place(in.readInt(), in.readInt(), in.readLong())));
  }

  @Override
  public void close() throws IOException {
    in.close();
    Files.deleteIfExists(path);
  }
}
