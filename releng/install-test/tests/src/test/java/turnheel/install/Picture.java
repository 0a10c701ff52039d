package turnheel.install;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

import javax.imageio.ImageIO;

/** A photograph of a grid and what can be told from it without knowing what it should show. */
record Picture(BufferedImage image) {

    /** How far a colour must be from the background, of 255 per channel, to be writing: grid lines are fainter. */
    private static final int WRITING = 90;

    static Picture of(Path file) throws IOException {
        BufferedImage image = ImageIO.read(file.toFile());
        if (image == null) {
            throw new IOException(file + " is not a picture");
        }
        return new Picture(image);
    }

    /**
     * The number of fields, of {@code columns} by {@code rows} equal ones over the left upper part of the picture that
     * is {@code width} by {@code height} pixels, that hold some writing.
     */
    int fieldsWithWriting(int columns, int rows, int width, int height) {
        int background = mostFrequentColour();
        int right = Math.min(width, image.getWidth());
        int bottom = Math.min(height, image.getHeight());
        boolean[][] written = new boolean[columns][rows];
        for (int x = 0; x < right; x++) {
            for (int y = 0; y < bottom; y++) {
                if (distance(background, image.getRGB(x, y)) > WRITING) {
                    written[x * columns / right][y * rows / bottom] = true;
                }
            }
        }
        int fields = 0;
        for (boolean[] column : written) {
            for (boolean field : column) {
                fields += field ? 1 : 0;
            }
        }
        return fields;
    }

    private int mostFrequentColour() {
        Map<Integer, Integer> counts = new HashMap<>();
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                counts.merge(image.getRGB(x, y), 1, Integer::sum);
            }
        }
        return counts.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    }

    private static int distance(int one, int other) {
        int distance = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            distance = Math.max(distance, Math.abs((one >> shift & 0xFF) - (other >> shift & 0xFF)));
        }
        return distance;
    }
}
