package turnheel.engine.query;

/** How much a query matters. */
public enum Severity {
    /** The pattern cannot be knitted, or a number is wrong. */
    ERROR,
    /** It can be knitted, but a person should decide. */
    WARNING
}
