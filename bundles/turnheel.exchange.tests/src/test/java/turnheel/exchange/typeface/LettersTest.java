package turnheel.exchange.typeface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The platform's reader of fonts, given the same file, is the second opinion. */
class LettersTest {

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final double HUNDREDTH_OF_A_LETTER = 0.01;

    private final Letters letters = new Letters();

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            PLAIN | Foot, half around 22.9 cm
            BOLD  | Foot, half around 9 1/8 in
            PLAIN | Überschuß “åéîõü” – 38/39 × 2 ≤ 5 ½
            BOLD  | Носок с узором, κάλτσα
            """)
    void areThoseOfTheFile(Typeface typeface, String text) throws IOException, FontFormatException {
        try (InputStream file = typeface.open()) {
            GlyphVector expected = Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(100f)
                    .createGlyphVector(EXACT, text);
            Letters.Outlined line = letters.of(text, typeface);
            assertEquals(expected.getGlyphPosition(expected.getNumGlyphs()).getX() / 100, line.width(),
                    HUNDREDTH_OF_A_LETTER);
            Rectangle2D box = expected.getOutline().getBounds2D();
            Rectangle2D found = line.outline().getBounds2D();
            assertEquals(box.getMinX() / 100, found.getMinX(), HUNDREDTH_OF_A_LETTER);
            assertEquals(box.getMaxX() / 100, found.getMaxX(), HUNDREDTH_OF_A_LETTER);
            assertEquals(box.getMinY() / 100, found.getMinY(), HUNDREDTH_OF_A_LETTER);
            assertEquals(box.getMaxY() / 100, found.getMaxY(), HUNDREDTH_OF_A_LETTER);
        }
    }

    @Test
    void runToTheLeftWhereTheScriptDoes() {
        Letters.Outlined alef = letters.of("א", Typeface.PLAIN);
        Letters.Outlined bet = letters.of("ב", Typeface.PLAIN);
        Letters.Outlined both = letters.of("אב", Typeface.PLAIN);
        assertEquals(bet.outline().getBounds2D().getMinX(), both.outline().getBounds2D().getMinX(), 1e-9);
        assertEquals(bet.width() + alef.outline().getBounds2D().getMaxX(), both.outline().getBounds2D().getMaxX(), 1e-9);
        assertEquals(letters.of("12", Typeface.PLAIN).outline().getBounds2D().getMinX(),
                letters.of("12 א", Typeface.PLAIN).outline().getBounds2D().getMinX(), 1e-9);
    }

    @Test
    void accentsThatStandAloneAreJoinedToTheirLetters() {
        assertEquals(letters.of("é", Typeface.PLAIN).width(), letters.of("e\u0301", Typeface.PLAIN).width());
    }

    @Test
    void anUnknownLetterIsABoxAndNoTextIsNothing() {
        assertFalse(letters.of("靴", Typeface.PLAIN).outline().getBounds2D().isEmpty());
        assertTrue(letters.of("", Typeface.PLAIN).outline().getBounds2D().isEmpty());
        assertEquals(0, letters.of("", Typeface.BOLD).width());
    }

    @ParameterizedTest
    @EnumSource(Typeface.class)
    void theLicenceLiesBesideTheFonts(Typeface typeface) throws IOException {
        try (InputStream licence = typeface.getClass().getResourceAsStream("DejaVu-LICENSE.txt")) {
            String text = new String(licence.readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(text.contains("Permission is hereby granted, free of charge"), text);
        }
    }
}
