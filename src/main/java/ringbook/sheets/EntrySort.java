package ringbook.sheets;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Puts any number of entries in order, learner by learner, and holds only some thousands of them at
 * a time: the rest waits in working files of the machine's folder for such, which only this user
 * may read and which are deleted at the end. A class of usual size never leaves the memory.
 */
final class EntrySort implements Closeable {

  /** As many entries are held at a time. */
  private static final int HELD = 20_000;

  /** As many working files are open at a time. */
  private static final int FILES = 40;

  private final int most;
  private final List<Entry> held = new ArrayList<>();
  private final List<EntryFile> files = new ArrayList<>();
  private Path folder;
  private int written;

  EntrySort() {
    this(HELD);
  }

  EntrySort(int most) {
    this.most = most;
  }

  void add(Entry entry) throws IOException {
    held.add(entry);
    if (held.size() == most) {
      held.sort(LearnerOrder.OF_ENTRIES);
      files.add(write(held.iterator()));
      held.clear();
      if (files.size() == FILES) {
        mergeFiles();
      }
    }
  }

  /** All entries in order; they can be taken once. */
  Iterator<Entry> inOrder() throws IOException {
    held.sort(LearnerOrder.OF_ENTRIES);
    if (files.isEmpty()) {
      return held.iterator();
    }
    files.add(write(held.iterator()));
    held.clear();
    return new Merge(files);
  }

  private void mergeFiles() throws IOException {
    EntryFile all = write(new Merge(files));
    for (EntryFile file : files) {
      file.close();
    }
    files.clear();
    files.add(all);
  }

  private EntryFile write(Iterator<Entry> entries) throws IOException {
    if (folder == null) {
      folder = Files.createTempDirectory("ringbook");
    }
    return EntryFile.write(folder.resolve("entries-" + written++), entries);
  }

  @Override
  public void close() throws IOException {
    for (EntryFile file : files) {
      file.close();
    }
    if (folder != null) {
      Files.deleteIfExists(folder);
    }
  }

  /** The entries of several files in one order. */
  private static final class Merge implements Iterator<Entry> {

    private final PriorityQueue<EntryFile> queue =
        new PriorityQueue<>(
            Comparator.comparing(file -> file.head().orElseThrow(), LearnerOrder.OF_ENTRIES));

    Merge(List<EntryFile> files) {
      for (EntryFile file : files) {
        offer(file);
      }
    }

    private void offer(EntryFile file) {
      if (file.head().isPresent()) {
        queue.add(file);
      }
    }

    @Override
    public boolean hasNext() {
      return !queue.isEmpty();
    }

    @Override
    public Entry next() {
      EntryFile first = queue.remove();
      try {
        Entry entry = first.take();
        offer(first);
        return entry;
      } catch (IOException fault) {
        throw new UncheckedIOException(fault);
      }
    }
  }
}
