package turnheel.exchange.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

import turnheel.exchange.typeface.Typeface;

/** The shipped typeface in one file; words and pictures share it, and only the letters used go in. */
final class Faces {

    private static final char REPLACEMENT = '\uFFFD';

    private final Map<Typeface, PDFont> fonts = new EnumMap<>(Typeface.class);

    Faces(PDDocument file) throws IOException {
        for (Typeface face : Typeface.values()) {
            try (InputStream font = face.open()) {
                fonts.put(face, PDType0Font.load(file, font));
            }
        }
    }

    PDFont font(Typeface face) {
        return Objects.requireNonNull(fonts.get(face));
    }

    /** The text with a sign in place of each letter that the face lacks. */
    String printable(Typeface face, String text) throws IOException {
        StringBuilder printable = new StringBuilder();
        for (int letter : text.codePoints().toArray()) {
            if (has(face, letter)) {
                printable.appendCodePoint(letter);
            } else {
                printable.append(REPLACEMENT);
            }
        }
        return printable.toString();
    }

    private boolean has(Typeface face, int letter) throws IOException {
        try {
            font(face).encode(Character.toString(letter));
            return true;
        } catch (IllegalArgumentException missing) {
            // the library has no other way to ask
            return false;
        }
    }
}
