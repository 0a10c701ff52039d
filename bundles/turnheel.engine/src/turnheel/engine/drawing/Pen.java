package turnheel.engine.drawing;

/**
 * How a line is drawn; its ends and corners are round.
 *
 * @param width millimetres, above 0
 * @param dashed in dashes of four widths
 */
public record Pen(Ink ink, double width, boolean dashed) {

    public Pen {
        if (!(width > 0)) {
            throw new IllegalArgumentException("a pen is wider than 0 mm, not %s".formatted(width));
        }
    }

    static Pen of(Ink ink, double width) {
        return new Pen(ink, width, false);
    }

    Pen dashes() {
        return new Pen(ink, width, true);
    }

    Pen scaled(double scale) {
        return new Pen(ink, scale * width, dashed);
    }
}
