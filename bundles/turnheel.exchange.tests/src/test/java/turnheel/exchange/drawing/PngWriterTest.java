package turnheel.exchange.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import turnheel.engine.drawing.Bounds;
import turnheel.engine.drawing.Ink;
import turnheel.engine.drawing.Paint;
import turnheel.engine.drawing.Pen;
import turnheel.engine.drawing.Picture;
import turnheel.engine.drawing.Point;
import turnheel.engine.drawing.Shape;
import turnheel.engine.drawing.Shape.Text.Anchor;
import turnheel.engine.drawing.Shape.Text.Weight;
import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

class PngWriterTest {

    private static final Graded GRADED = Patterns.grade(Designs.cuffDown());
    private static final String PAPER = "#ffffff";

    private static Picture picture(Shape... shapes) {
        return new Picture(40, 30, "title", "description", List.of(shapes));
    }

    private static Paint paint(Ink fill, Ink edge) {
        return new Paint(Optional.of(fill), Optional.of(new Pen(edge, 2, false)));
    }

    private static String tint(Ink ink) {
        return Tint.of(ink).onLight();
    }

    @ParameterizedTest
    @EnumSource(Drawn.What.class)
    void isAsLargeAsThePictureAndDenseEnoughForPrint(Drawn.What what) throws IOException {
        Picture picture = new Drawn(what, Optional.empty()).of(GRADED);
        Png png = Png.of(picture);
        double mmPerDot = 1000.0 / png.dotsPerMetre();
        assertEquals(picture.width(), png.image().getWidth() * mmPerDot, mmPerDot);
        assertEquals(picture.height(), png.image().getHeight() * mmPerDot, mmPerDot);
        assertTrue(25.4 / mmPerDot >= 150, () -> 25.4 / mmPerDot + " dots in an inch");
    }

    @Test
    void aHugePictureHasWiderDotsAndIsStillToScale() throws IOException {
        Png png = Png.of(new Picture(400, 6000, "", "", List.of(new Shape.Rectangle(new Point(100, 1000), 200, 4000,
                paint(Ink.FABRIC, Ink.OUTLINE)))));
        assertTrue((long) png.image().getWidth() * png.image().getHeight() < 25_000_000);
        assertEquals(6000, png.image().getHeight() * 1000.0 / png.dotsPerMetre(), 1);
        assertEquals(tint(Ink.FABRIC), png.colour(200, 3000));
        assertEquals(PAPER, png.colour(200, 900));
    }

    @Test
    void saysWhatItShows() throws IOException {
        Picture picture = new Drawn(Drawn.What.OUTLINE, Optional.empty()).of(Patterns.grade(Designs.titled("Möwe & <b> 靴下 🧦 \u0000\u0007")));
        Png png = Png.of(picture);
        assertTrue(png.text("Title").startsWith("Möwe & <b> 靴下 🧦   : "), png.text("Title"));
        assertEquals(picture.description(), png.text("Description"));
    }

    @Test
    void paintsEveryKindOfShapeInItsInkWhereItLies() throws IOException {
        Png png = Png.of(picture(
                new Shape.Rectangle(new Point(2, 2), 10, 10, paint(Ink.FABRIC, Ink.OUTLINE)),
                new Shape.Group("", List.of(new Shape.Circle(new Point(25, 10), 6, paint(Ink.NO_STITCH, Ink.DIMENSION)))),
                new Shape.Line(new Point(2, 20), new Point(38, 20), new Pen(Ink.HIGHLIGHT, 1, false)),
                new Shape.Path(new Point(5, 28), List.of(new Shape.Segment.Straight(new Point(35, 28)),
                        new Shape.Segment.Curve(new Point(35, 24), new Point(5, 24), new Point(5, 28))), true,
                        new Paint(Optional.of(Ink.SHAPING), Optional.empty()))));
        assertEquals(tint(Ink.FABRIC), png.colour(7, 7));
        assertEquals(tint(Ink.OUTLINE), png.colour(2, 7));
        assertEquals(tint(Ink.NO_STITCH), png.colour(25, 10));
        assertEquals(tint(Ink.DIMENSION), png.colour(25 + 6 * Math.sqrt(0.5), 10 + 6 * Math.sqrt(0.5)));
        assertEquals(tint(Ink.HIGHLIGHT), png.colour(20, 20));
        // three quarters of the way up to its handles, a curve of this kind is at its highest
        assertEquals(tint(Ink.SHAPING), png.colour(20, 25.2));
        assertEquals(PAPER, png.colour(20, 24.5));
        assertEquals(PAPER, png.colour(36, 7));
    }

    @Test
    void laterShapesCoverEarlierOnes() throws IOException {
        Shape one = new Shape.Rectangle(new Point(5, 5), 20, 20, paint(Ink.FABRIC, Ink.FABRIC));
        Shape other = new Shape.Rectangle(new Point(5, 5), 20, 20, paint(Ink.GRID, Ink.GRID));
        assertEquals(tint(Ink.GRID), Png.of(picture(one, other)).colour(15, 15));
        assertEquals(tint(Ink.FABRIC), Png.of(picture(other, one)).colour(15, 15));
    }

    @Test
    void dashesAreFourWidthsLongAndAsFarApart() throws IOException {
        Png png = Png.of(picture(new Shape.Line(new Point(2, 15), new Point(38, 15), new Pen(Ink.OUTLINE, 1, true))));
        assertEquals(tint(Ink.OUTLINE), png.colour(4, 15));
        assertEquals(PAPER, png.colour(8, 15));
        assertEquals(tint(Ink.OUTLINE), png.colour(12, 15));
    }

    /** The engine leaves room for words without knowing the typeface. */
    @ParameterizedTest
    @EnumSource(Anchor.class)
    void wordsStayWithinTheRoomThatTheEngineLeavesForThem(Anchor anchor) throws IOException {
        for (Weight weight : Weight.values()) {
            for (String words : List.of("Foot, half around 22.9 cm (9 1/8 in)", "WWW @ MMM", "illicit fjord", "ÄÖÜ ßø")) {
                Shape.Text text = new Shape.Text(words, new Point(60, 20), 5, anchor, weight, Ink.TEXT);
                Bounds room = text.bounds();
                Png png = Png.of(new Picture(240, 30, words, words, List.of(text.placed(1, 60, 0))));
                double mmPerDot = 1000.0 / png.dotsPerMetre();
                int dark = 0;
                for (int x = 0; x < png.image().getWidth(); x++) {
                    for (int y = 0; y < png.image().getHeight(); y++) {
                        if ((png.image().getRGB(x, y) & 0xFFFFFF) != 0xFFFFFF) {
                            dark++;
                            double right = x * mmPerDot - 60;
                            double down = y * mmPerDot;
                            assertTrue(right > room.left() - 0.2 && right < room.right() + 0.2 && down > room.top() - 0.2
                                    && down < room.bottom() + 0.2, "%s at %s, %s".formatted(words, right, down));
                        }
                    }
                }
                assertTrue(dark > 100, words);
            }
        }
    }

    @Test
    void givesTheSameBytesWhateverTheLanguage() throws IOException {
        Locale language = Locale.getDefault();
        byte[] expected = bytes(new Drawn(Drawn.What.OUTLINE, Optional.empty()).of(GRADED));
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertArrayEquals(expected, bytes(new Drawn(Drawn.What.OUTLINE, Optional.empty()).of(Patterns.grade(Designs.cuffDown()))));
        } finally {
            Locale.setDefault(language);
        }
    }

    private static byte[] bytes(Picture picture) throws IOException {
        boolean[] closed = {false};
        ByteArrayOutputStream out = new ByteArrayOutputStream() {
            @Override
            public void close() {
                closed[0] = true;
            }
        };
        PngWriter.write(picture, out);
        assertFalse(closed[0], "the stream is the caller's");
        return out.toByteArray();
    }
}
