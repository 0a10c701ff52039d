package turnheel.exchange.drawing;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;

import turnheel.engine.drawing.Picture;
import turnheel.exchange.typeface.Letters;

/**
 * Writes pictures as PNG (ISO/IEC 15948), dense enough for print, with their scale, their title and their description.
 * The same picture gives the same pixels on every machine and the same bytes on one Java platform.
 */
public final class PngWriter {

    /** Twice the dots of a screen; a hair line of a drawing, 0.2 mm, is more than one dot wide. */
    private static final double DOTS_PER_INCH = 192;
    /** The charts of two dozen sizes in one picture; more would not fit into the memory of a small machine. */
    private static final double MOST_DOTS = 24e6;
    private static final double MM_PER_INCH = 25.4;
    private static final double MM_PER_METRE = 1000;

    private final Letters letters = new Letters();

    /** Writes one file, a millimetre as a millimetre; the stream is not closed. A huge picture has wider dots. */
    public static void write(Picture picture, OutputStream out) throws IOException {
        double dots = picture.width() * picture.height() * Math.pow(DOTS_PER_INCH / MM_PER_INCH, 2);
        double density = DOTS_PER_INCH * Math.min(1, Math.sqrt(MOST_DOTS / dots));
        new PngWriter().write(picture, 1, density, out);
    }

    /**
     * Writes one of several pictures; the stream is not closed.
     *
     * @param scale millimetres of paper for a millimetre of the picture
     * @param dotsPerInch of paper
     */
    public void write(Picture picture, double scale, double dotsPerInch, OutputStream out) throws IOException {
        BufferedImage image = painted(picture, scale * dotsPerInch / MM_PER_INCH);
        PngFile.write(NumberedImage.of(image), dots(dotsPerInch / MM_PER_INCH * MM_PER_METRE), picture.title(),
                picture.description(), out);
    }

    private BufferedImage painted(Picture picture, double dotsPerMm) {
        BufferedImage image = new BufferedImage(dots(picture.width() * dotsPerMm), dots(picture.height() * dotsPerMm),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        try {
            // The last dot is rarely a whole one: the picture is stretched to its edge, and no black is seen there.
            surface.scale(image.getWidth() / picture.width(), image.getHeight() / picture.height());
            PicturePainter.paint(picture, surface, letters);
        } finally {
            surface.dispose();
        }
        return image;
    }

    private static int dots(double exact) {
        return Math.max(1, (int) Math.round(exact));
    }
}
