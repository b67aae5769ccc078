package ringbook.photos;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * Decodes the brightness of a photograph and averages it in boxes down to about 1000 pixels. The
 * averages keep what a matcher of features sees and drop noise; leaving out pixels instead would
 * make false patterns.
 *
 * <p>Of a JPEG the first channel is taken as it is stored: brightness in nearly all, red in the few
 * that store red, green and blue.
 */
final class LumaReader {

  private static final int LONG_SIDE = 1000;

  /** Pixels decoded at once: 60 MB of three channels, though one is used. */
  private static final int STRIP_PIXELS = 20_000_000;

  private final ImageReader reader;
  private final int stripPixels;
  private final int width;
  private final int height;
  private final int box;
  private final int columns;
  private final int rows;
  private final double[] levels;

  private LumaReader(ImageReader reader, int stripPixels) throws IOException {
    this.reader = reader;
    this.stripPixels = stripPixels;
    width = reader.getWidth(0);
    height = reader.getHeight(0);
    box = Math.max(1, (Math.max(width, height) + LONG_SIDE / 2) / LONG_SIDE);
    columns = Math.max(1, width / box);
    rows = Math.max(1, height / box);
    levels = new double[columns * rows];
  }

  /** The brightness; empty where the pixels cannot be decoded. */
  static Optional<Luma> read(Path file) {
    return read(file, STRIP_PIXELS);
  }

  /** The same, decoding about {@code stripPixels} at once. */
  static Optional<Luma> read(Path file, int stripPixels) {
    try (ImageInputStream bytes = ImageIO.createImageInputStream(file.toFile())) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(bytes);
      if (!readers.hasNext()) {
        return Optional.empty();
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(bytes);
        return Optional.of(new LumaReader(reader, stripPixels).read());
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException broken) {
      // On broken files the decoder throws what comes.
      return Optional.empty();
    }
  }

  private Luma read() throws IOException {
    int strip = Math.max(1, stripPixels / width / box);
    for (int row = 0; row < rows; row += strip) {
      int count = Math.min(strip, rows - row);
      ImageReadParam part = reader.getDefaultReadParam();
      int lines = Math.min(count * box, height - row * box);
      part.setSourceRegion(new Rectangle(0, row * box, width, lines));
      if (reader.canReadRaster()) {
        average(row, count, channel(reader.readRaster(0, part)));
      } else {
        average(row, count, colours(reader.read(0, part)));
      }
    }
    return new Luma(columns, rows, levels);
  }

  /** The brightness of one row of pixels. */
  @FunctionalInterface
  private interface Row {
    int[] of(int row);
  }

  private static Row channel(Raster raster) throws IIOException {
    if (raster.getNumBands() != 1 && raster.getNumBands() != 3) {
      throw new IIOException("inks of a print, whose first channel is no brightness");
    }
    return row ->
        raster.getSamples(
            raster.getMinX(),
            raster.getMinY() + row,
            raster.getWidth(),
            1,
            0,
            new int[raster.getWidth()]);
  }

  /** Weights of JPEG's brightness (ITU-R BT.601). */
  private static Row colours(BufferedImage picture) {
    return row -> {
      int[] pixels = picture.getRGB(0, row, picture.getWidth(), 1, null, 0, picture.getWidth());
      for (int i = 0; i < pixels.length; i++) {
        int red = pixels[i] >> 16 & 255;
        int green = pixels[i] >> 8 & 255;
        int blue = pixels[i] & 255;
        pixels[i] = (299 * red + 587 * green + 114 * blue + 500) / 1000;
      }
      return pixels;
    };
  }

  private void average(int first, int count, Row source) {
    for (int row = 0; row < count; row++) {
      int at = (first + row) * columns;
      int lines = Math.min(box, height - (first + row) * box);
      for (int line = 0; line < lines; line++) {
        int[] pixels = source.of(row * box + line);
        for (int column = 0; column < columns; column++) {
          levels[at + column] += sum(pixels, column);
        }
      }
      for (int column = 0; column < columns; column++) {
        levels[at + column] /= (double) lines * Math.min(box, width);
      }
    }
  }

  private double sum(int[] pixels, int column) {
    double sum = 0;
    int end = Math.min((column + 1) * box, pixels.length);
    for (int i = column * box; i < end; i++) {
      sum += pixels[i];
    }
    return sum;
  }
}
