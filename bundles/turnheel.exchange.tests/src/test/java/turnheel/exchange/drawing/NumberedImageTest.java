package turnheel.exchange.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;

import org.junit.jupiter.api.Test;

import turnheel.engine.drawing.Ink;

class NumberedImageTest {

    private static int numbered(NumberedImage image, int dot) {
        return image.colours()[Byte.toUnsignedInt(image.numbers()[dot])];
    }

    private static BufferedImage row(int... colours) {
        BufferedImage image = new BufferedImage(colours.length, 1, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, colours.length, 1, colours, 0, colours.length);
        return image;
    }

    @Test
    void inksKeepTheirColours() {
        int[] inks = new int[Ink.values().length];
        for (Ink ink : Ink.values()) {
            inks[ink.ordinal()] = Integer.decode(Tint.of(ink).onLight());
        }
        NumberedImage image = NumberedImage.of(row(inks));
        for (int i = 0; i < inks.length; i++) {
            assertEquals(inks[i], numbered(image, i), Ink.values()[i].name());
        }
    }

    @Test
    void whatLiesBetweenInksIsOffByLessThanASixteenth() {
        int[] greys = new int[256];
        for (int grey = 0; grey < greys.length; grey++) {
            greys[grey] = 0x010101 * grey;
        }
        NumberedImage image = NumberedImage.of(row(greys));
        for (int grey = 0; grey < greys.length; grey++) {
            assertEquals(grey, numbered(image, grey) & 0xFF, 16);
        }
    }

    @Test
    void anImageOfEveryColourHasCoarserStepsAndNoMoreNumbersThanABytesWorth() {
        int[] colours = new int[4096];
        for (int i = 0; i < colours.length; i++) {
            colours[i] = (i >> 8) * 0x110000 + (i >> 4 & 0xF) * 0x1100 + (i & 0xF) * 0x11;
        }
        NumberedImage image = NumberedImage.of(row(colours));
        assertTrue(image.colours().length <= 256);
        for (int i = 0; i < colours.length; i++) {
            for (int shift = 0; shift <= 16; shift += 8) {
                assertEquals(colours[i] >> shift & 0xFF, numbered(image, i) >> shift & 0xFF, 64);
            }
        }
    }
}
