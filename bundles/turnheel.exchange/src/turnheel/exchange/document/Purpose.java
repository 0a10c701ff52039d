package turnheel.exchange.document;

/** What a paragraph is for. */
public enum Purpose {
    /** Running text. */
    BODY,
    SIZES, MEASUREMENT, MATERIAL, GAUGE,
    /** What one should know before one starts. */
    NOTE,
    /** What is knitted. */
    INSTRUCTION,
    /** What can hurt. */
    CAUTION
}
