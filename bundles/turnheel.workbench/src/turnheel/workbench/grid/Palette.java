package turnheel.workbench.grid;

import java.util.Arrays;

import org.eclipse.swt.graphics.RGB;

/**
 * The colours of the grid, mixed from the ones around it, so that it fits a light and a dark theme, and one that nobody
 * has seen yet. Text colours are moved towards the foreground until they can be read on the background.
 *
 * @param background where numbers stand that can be set
 * @param foreground of those numbers
 * @param quiet text that stands back: results, defaults, marks, units
 * @param shaded where numbers stand that follow from others, and headers
 * @param heading where the heading of a part stands
 * @param line between cells
 * @param accent text of an override, and the frame of the selected cell
 * @param selected the background of selected cells
 * @param error text of what cannot be knitted
 * @param errorGround background of it
 * @param warning text of what a person should decide
 * @param warningGround background of it
 */
record Palette(RGB background, RGB foreground, RGB quiet, RGB shaded, RGB heading, RGB line, RGB accent, RGB selected,
        RGB error, RGB errorGround, RGB warning, RGB warningGround) {

    /** WCAG 2.2, success criterion 1.4.3. */
    static final double READABLE = 4.5;

    /** The same hues for text on a light and on a dark background; mixing alone would leave them grey. */
    private record Hues(RGB red, RGB amber, RGB blue) {
    }

    private static final Hues ON_LIGHT = new Hues(new RGB(196, 43, 28), new RGB(156, 92, 0), new RGB(28, 92, 176));
    private static final Hues ON_DARK = new Hues(new RGB(255, 138, 122), new RGB(240, 180, 76), new RGB(122, 180, 255));
    private static final int STEPS = 20;

    /**
     * The palette on this background. Where text in {@code foreground} could not be read, black or white takes its
     * place.
     */
    static Palette on(RGB background, RGB foreground) {
        RGB text = contrast(foreground, background) >= READABLE ? foreground : strongest(background);
        Hues hues = luminance(text) < luminance(background) ? ON_LIGHT : ON_DARK;
        RGB shaded = tinted(background, text, 0.04, text);
        RGB heading = tinted(background, text, 0.10, text);
        RGB errorGround = tinted(background, hues.red(), 0.14, text);
        RGB warningGround = tinted(background, hues.amber(), 0.16, text);
        RGB selected = tinted(background, hues.blue(), 0.22, text);
        return new Palette(background, text,
                readable(mix(text, background, 0.40), text, background, shaded, selected), shaded, heading,
                mix(background, text, 0.14), readable(hues.blue(), text, background, selected), selected,
                readable(hues.red(), text, errorGround, selected), errorGround,
                readable(hues.amber(), text, warningGround, selected), warningGround);
    }

    private static RGB strongest(RGB background) {
        RGB black = new RGB(0, 0, 0);
        RGB white = new RGB(255, 255, 255);
        return contrast(black, background) >= contrast(white, background) ? black : white;
    }

    /** The background with up to {@code share} of the hue, as long as the text can be read on it. */
    private static RGB tinted(RGB background, RGB hue, double share, RGB text) {
        for (int step = STEPS; step > 0; step--) {
            RGB tried = mix(background, hue, share * step / STEPS);
            if (contrast(text, tried) >= READABLE) {
                return tried;
            }
        }
        return background;
    }

    /** The wanted colour, with as much of the text's colour as it takes to read it on these grounds. */
    private static RGB readable(RGB wanted, RGB text, RGB... grounds) {
        for (int step = 0; step < STEPS; step++) {
            RGB tried = mix(wanted, text, (double) step / STEPS);
            if (Arrays.stream(grounds).allMatch(ground -> contrast(tried, ground) >= READABLE)) {
                return tried;
            }
        }
        return text;
    }

    /** {@code share} of {@code other} in {@code one}. */
    static RGB mix(RGB one, RGB other, double share) {
        return new RGB(mix(one.red, other.red, share), mix(one.green, other.green, share),
                mix(one.blue, other.blue, share));
    }

    private static int mix(int one, int other, double share) {
        return (int) Math.round(one + (other - one) * share);
    }

    /** Contrast ratio of WCAG 2.2, 1 to 21. */
    static double contrast(RGB one, RGB other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(RGB colour) {
        return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
