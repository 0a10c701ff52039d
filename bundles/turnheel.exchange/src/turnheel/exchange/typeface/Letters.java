package turnheel.exchange.typeface;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;

/**
 * Text as outlines of the shipped typeface. The platform's own fonts are not asked: without any installed font it would
 * not even start to look, and each machine hints letters its own way. Letters stand side by side without kerning; scripts
 * that run to the left do so, without joined forms; a letter that the typeface lacks is an empty box.
 *
 * <p>Reads each cut once and keeps the letters it was asked for: one object for one export, used by one thread.
 */
public final class Letters {

    private final Map<Typeface, Cut> cuts = new EnumMap<>(Typeface.class);

    /**
     * A line of text.
     *
     * @param outline from the left end of its base line, for letters of size 1; y grows downwards
     * @param width how far the next letter would stand to the right, for letters of size 1
     */
    public record Outlined(Shape outline, double width) {
    }

    /** A font file that was read. */
    private static final class Cut {

        private final TrueTypeFont font;
        private final CmapLookup places;
        private final double unit;
        private final Map<Integer, Outlined> known = new HashMap<>();

        Cut(TrueTypeFont font) throws IOException {
            this.font = font;
            this.places = font.getUnicodeCmapLookup();
            this.unit = 1.0 / font.getUnitsPerEm();
        }

        Outlined letter(int codePoint) {
            return known.computeIfAbsent(codePoint, this::read);
        }

        private Outlined read(int codePoint) {
            try {
                int place = places.getGlyphId(codePoint);
                GlyphData glyph = font.getGlyph().getGlyph(place);
                Path2D path = glyph == null ? new Path2D.Double() : glyph.getPath();
                return new Outlined(path.createTransformedShape(AffineTransform.getScaleInstance(unit, -unit)),
                        font.getAdvanceWidth(place) * unit);
            } catch (IOException damaged) {
                throw new UncheckedIOException(damaged);
            }
        }
    }

    /** The outlines of a text in one line. */
    public Outlined of(String text, Typeface typeface) {
        Cut cut = cuts.computeIfAbsent(typeface, Letters::read);
        Path2D line = new Path2D.Double();
        double width = 0;
        for (int codePoint : visible(Normalizer.normalize(text, Normalizer.Form.NFC))) {
            Outlined letter = cut.letter(codePoint);
            line.append(letter.outline().getPathIterator(AffineTransform.getTranslateInstance(width, 0)), false);
            width += letter.width();
        }
        return new Outlined(line, width);
    }

    private static Cut read(Typeface typeface) {
        try (InputStream file = typeface.open()) {
            return new Cut(new TTFParser().parseEmbedded(file));
        } catch (IOException damaged) {
            // The file is a part of this program; without it there is nothing that a person could do.
            throw new UncheckedIOException(damaged);
        }
    }

    /** The letters from left to right, as they are seen. */
    private static int[] visible(String text) {
        if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
            return text.codePoints().toArray();
        }
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        byte[] levels = new byte[bidi.getRunCount()];
        Integer[] runs = new Integer[levels.length];
        for (int run = 0; run < levels.length; run++) {
            levels[run] = (byte) bidi.getRunLevel(run);
            runs[run] = run;
        }
        Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
        return IntStream.range(0, runs.length).flatMap(place -> {
            int run = runs[place];
            String part = text.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
            boolean leftwards = bidi.getRunLevel(run) % 2 == 1;
            return (leftwards ? new StringBuilder(part).reverse().toString() : part).codePoints();
        }).toArray();
    }
}
