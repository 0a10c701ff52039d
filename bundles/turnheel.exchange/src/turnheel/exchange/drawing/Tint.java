package turnheel.exchange.drawing;

import java.util.Locale;

import turnheel.engine.drawing.Ink;

/**
 * The colours of an ink on white paper and on a dark screen. Words and lines that carry meaning have at least 4.5 to 1
 * of contrast to what they lie on, as WCAG 2.2 asks of text.
 *
 * @param onLight as {@code #rrggbb}
 * @param onDark as {@code #rrggbb}
 */
public record Tint(String onLight, String onDark) {

    public static Tint of(Ink ink) {
        return switch (ink) {
            case PAPER -> new Tint("#ffffff", "#16191d");
            case OUTLINE -> new Tint("#1f2933", "#e9edf1");
            case SHAPING -> new Tint("#5b6670", "#a3adb7");
            case FABRIC -> new Tint("#f4f0e6", "#262b31");
            case DIMENSION -> new Tint("#1d5c74", "#7fc4dd");
            case TEXT -> new Tint("#1f2933", "#e9edf1");
            case MUTED -> new Tint("#55606a", "#aab4be");
            case GRID -> new Tint("#8a949e", "#6d7781");
            case SYMBOL -> new Tint("#1f2933", "#e9edf1");
            case NO_STITCH -> new Tint("#d3d8dd", "#3a4149");
            case HIGHLIGHT -> new Tint("#a3341f", "#ff9d85");
        };
    }

    static String name(Ink ink) {
        return ink.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
