package turnheel.exchange.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The style sheet of every page, {@code print.css}, and the area that it leaves to the text. */
final class PrintStyle {

    /** Width of the text on an upright page, in mm. */
    static final double WIDTH = 168;
    /** Height of the text on an upright page, in mm. */
    static final double HEIGHT = 247;
    /** Height of a picture of which an upright page has two and the imprint, in mm. */
    static final double HALF_HEIGHT = 104;
    /** Width of the text on a page on its side, in mm. */
    static final double WIDE_WIDTH = 255;
    /** Height of the text on a page on its side, in mm. */
    static final double WIDE_HEIGHT = 160;

    /** Height that a heading of the first and of a deeper level takes at most, in mm, when it has one line. */
    static final double HEADING = 18;
    static final double SUBHEADING = 12;
    /** Height that the imprint takes at the end, in mm. */
    static final double IMPRINT = 26;

    static final String SHEET = sheet();

    private PrintStyle() {
    }

    private static String sheet() {
        try (InputStream sheet = Objects.requireNonNull(PrintStyle.class.getResourceAsStream("print.css"))) {
            return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("a part of the program cannot be read", e);
        }
    }
}
