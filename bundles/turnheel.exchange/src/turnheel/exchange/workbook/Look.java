package turnheel.exchange.workbook;

import org.apache.poi.ss.usermodel.HorizontalAlignment;

/**
 * How a cell looks, by what it is. Where a value comes from shows in the typography as well as in the colour, so
 * that it can still be told in a black and white print.
 */
enum Look {
    TITLE(HorizontalAlignment.LEFT, Ink.DARK, Ground.NONE, true, false),
    NOTE(HorizontalAlignment.LEFT, Ink.GREY, Ground.NONE, false, true),
    /** Heads a column. */
    HEAD(HorizontalAlignment.LEFT, Ink.WHITE, Ground.HEAD, true, false),
    /** Heads a column of numbers. */
    HEAD_OF_NUMBERS(HorizontalAlignment.RIGHT, Ink.WHITE, Ground.HEAD, true, false),
    /** Heads the rows of a part. */
    GROUP(HorizontalAlignment.LEFT, Ink.DARK, Ground.GROUP, true, false),
    /** Names a row. */
    LABEL(HorizontalAlignment.LEFT, Ink.DARK, Ground.NONE, false, false),
    /** Stable key or unit of a row. */
    KEY(HorizontalAlignment.LEFT, Ink.GREY, Ground.NONE, false, false),
    /** Running text. */
    TEXT(HorizontalAlignment.LEFT, Ink.DARK, Ground.NONE, false, false),
    /** Text that must not be overlooked. */
    WARNING(HorizontalAlignment.LEFT, Ink.DARK, Ground.OVERRIDDEN, true, false),
    /** The number that others are compared with. */
    REFERENCE(HorizontalAlignment.RIGHT, Ink.DARK, Ground.GROUP, true, false),
    ENTERED(HorizontalAlignment.RIGHT, Ink.BLUE, Ground.ENTERED, false, false),
    DEFAULT(HorizontalAlignment.RIGHT, Ink.BLUE, Ground.ENTERED, false, true),
    COMPUTED(HorizontalAlignment.RIGHT, Ink.DARK, Ground.NONE, false, false),
    CHOSEN(HorizontalAlignment.RIGHT, Ink.DARK, Ground.CHOSEN, true, false),
    OVERRIDDEN(HorizontalAlignment.RIGHT, Ink.DARK, Ground.OVERRIDDEN, true, true);

    /**
     * Colours of letters, red, green and blue; each has a contrast of at least 4.5 to 1 on its grounds (WCAG 2.2
     * AA).
     */
    enum Ink {
        DARK(0x22, 0x22, 0x22), GREY(0x5A, 0x5A, 0x5A), BLUE(0x1B, 0x3F, 0x8B), WHITE(0xFF, 0xFF, 0xFF);

        private final byte[] rgb;

        Ink(int red, int green, int blue) {
            rgb = new byte[] {(byte) red, (byte) green, (byte) blue};
        }

        byte[] rgb() {
            return rgb.clone();
        }
    }

    /** Colours behind letters; light enough to print grey. */
    enum Ground {
        NONE(0xFF, 0xFF, 0xFF), HEAD(0x3B, 0x4A, 0x54), GROUP(0xE4, 0xE8, 0xEA), ENTERED(0xF1, 0xF5, 0xFB),
        CHOSEN(0xE3, 0xF1, 0xE5), OVERRIDDEN(0xFF, 0xE3, 0xB0);

        private final byte[] rgb;

        Ground(int red, int green, int blue) {
            rgb = new byte[] {(byte) red, (byte) green, (byte) blue};
        }

        byte[] rgb() {
            return rgb.clone();
        }
    }

    private final HorizontalAlignment alignment;
    private final Ink ink;
    private final Ground ground;
    private final boolean bold;
    private final boolean italic;

    Look(HorizontalAlignment alignment, Ink ink, Ground ground, boolean bold, boolean italic) {
        this.alignment = alignment;
        this.ink = ink;
        this.ground = ground;
        this.bold = bold;
        this.italic = italic;
    }

    /** Whether a long text takes more lines; others run on over the empty cells beside them. */
    boolean wraps() {
        return switch (this) {
            case TITLE, HEAD, HEAD_OF_NUMBERS, KEY, LABEL, TEXT, WARNING -> true;
            case NOTE, GROUP, REFERENCE, ENTERED, DEFAULT, COMPUTED, CHOSEN, OVERRIDDEN -> false;
        };
    }

    HorizontalAlignment alignment() {
        return alignment;
    }

    Ink ink() {
        return ink;
    }

    Ground ground() {
        return ground;
    }

    boolean isBold() {
        return bold;
    }

    boolean isItalic() {
        return italic;
    }
}
