package turnheel.exchange.drawing;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

import turnheel.engine.drawing.Ink;

/**
 * An image whose colours have numbers. A drawing needs few: its inks, and steps between them along the edges of lines. The
 * steps are sixteenths or, where that gives more colours than there are numbers, coarser; inks keep their exact colours.
 */
record NumberedImage(int width, int height, int[] colours, byte[] numbers) {

    private static final int MOST = 256;
    private static final int[] FINE_TO_COARSE = {0xF0F0F0, 0xE0E0E0, 0xC0C0C0};

    /** The dots of an image without transparency. */
    static NumberedImage of(BufferedImage image) {
        int width = image.getWidth();
        int[] dots = image.getRGB(0, 0, width, image.getHeight(), null, 0, width);
        for (int step : FINE_TO_COARSE) {
            Colours colours = new Colours(step);
            byte[] numbers = colours.numbers(dots);
            if (colours.size <= MOST) {
                return new NumberedImage(width, image.getHeight(), Arrays.copyOf(colours.all, colours.size), numbers);
            }
        }
        throw new IllegalStateException("64 steps and the inks have more than %d colours".formatted(MOST));
    }

    /** Gives numbers to colours in the order in which they are seen. */
    private static final class Colours {

        private final int step;
        private final int[] all = new int[MOST];
        private final Map<Integer, Integer> known = new HashMap<>();
        private final Map<Integer, Integer> steps = new HashMap<>();
        private int size;

        Colours(int step) {
            this.step = step;
            for (Ink ink : Ink.values()) {
                int colour = Integer.decode(Tint.of(ink).onLight());
                known.computeIfAbsent(colour, this::add);
                steps.putIfAbsent(colour & step, known.get(colour));
            }
        }

        private int add(int colour) {
            if (size < MOST) {
                all[size] = colour;
            }
            size++;
            return size - 1;
        }

        byte[] numbers(int[] dots) {
            byte[] numbers = new byte[dots.length];
            int last = -1;
            byte number = 0;
            for (int i = 0; i < dots.length; i++) {
                int colour = dots[i] & 0xFFFFFF;
                if (colour != last) {
                    last = colour;
                    number = number(colour).byteValue();
                }
                numbers[i] = number;
            }
            return numbers;
        }

        /** Inks have numbers of their own; what lies between shares one with what can hardly be told from it. */
        private Integer number(int colour) {
            return known.computeIfAbsent(colour, any -> steps.computeIfAbsent(colour & step, key -> add(colour)));
        }
    }
}
