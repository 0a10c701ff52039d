package turnheel.engine.drawing;

/** What a colour is for. Who paints a picture chooses the colours, for light and for dark surroundings. */
public enum Ink {
    /** The surface itself, behind words that would lie on lines. */
    PAPER,
    /** The edge of the sock. */
    OUTLINE,
    /** Lines on the fabric: where parts meet, where a part is shaped. */
    SHAPING,
    /** The area of the sock. */
    FABRIC,
    /** Lines that say from where to where something is measured. */
    DIMENSION,
    /** Words and numbers. */
    TEXT,
    /** Words that may be passed over at a first look. */
    MUTED,
    /** The lines between the squares of a chart, and the rules of a table. */
    GRID,
    /** The symbols in the squares of a chart. */
    SYMBOL,
    /** Squares of a chart that stand for no stitch. */
    NO_STITCH,
    /** What the eye should find first: the frame of a repeat, the edge at which a row turns. */
    HIGHLIGHT
}
