package ringbook.photos;

import com.drew.lang.Rational;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.lang.reflect.Array;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The Exif numbers of one photograph, those of its thumbnail left out. */
final class ExifTags {

  private final List<Directory> directories = new ArrayList<>();

  ExifTags(Metadata metadata) {
    directories.addAll(metadata.getDirectoriesOfType(ExifSubIFDDirectory.class));
    directories.addAll(metadata.getDirectoriesOfType(ExifIFD0Directory.class));
  }

  /** Whether there is any at all. */
  boolean isEmpty() {
    return directories.isEmpty();
  }

  /** Whether a part of them could not be read. */
  boolean isDamaged() {
    return directories.stream().anyMatch(Directory::hasErrors);
  }

  boolean has(int tag) {
    return find(tag).isPresent();
  }

  /** The number stated, or the first of several; empty for none and for a fraction over 0. */
  OptionalDouble number(int tag) {
    return find(tag).map(ExifTags::number).orElse(OptionalDouble.empty());
  }

  /** The number stated, if it is above 0. */
  OptionalDouble positive(int tag) {
    OptionalDouble number = number(tag);
    return number.isPresent() && number.getAsDouble() > 0 ? number : OptionalDouble.empty();
  }

  private Optional<Object> find(int tag) {
    for (Directory directory : directories) {
      Object value = directory.getObject(tag);
      if (value != null) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }

  private static OptionalDouble number(Object value) {
    if (value instanceof Rational fraction) {
      return fraction.getDenominator() == 0
          ? OptionalDouble.empty()
          : OptionalDouble.of((double) fraction.getNumerator() / fraction.getDenominator());
    }
    if (value instanceof Number number) {
      return OptionalDouble.of(number.doubleValue());
    }
    boolean several = value.getClass().isArray() && Array.getLength(value) > 0;
    return several ? number(Array.get(value, 0)) : OptionalDouble.empty();
  }
}
