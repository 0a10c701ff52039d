package turnheel.exchange.typeface;

import java.io.InputStream;
import java.util.Objects;

/**
 * The two cuts of DejaVu Sans 2.37 as TrueType files. It has the letters of all European languages, arrows, fractions and
 * mathematical signs; its licence ({@code DejaVu-LICENSE.txt}) allows embedding.
 */
public enum Typeface {
    PLAIN("DejaVuSans.ttf"),
    BOLD("DejaVuSans-Bold.ttf");

    /** The name of the family, as style sheets and documents call it. */
    public static final String FAMILY = "DejaVu Sans";

    private final String file;

    Typeface(String file) {
        this.file = file;
    }

    /** The font file from its beginning; the caller closes it. */
    public InputStream open() {
        return Objects.requireNonNull(Typeface.class.getResourceAsStream(file), file);
    }
}
