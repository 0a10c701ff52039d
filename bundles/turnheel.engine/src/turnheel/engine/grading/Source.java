package turnheel.engine.grading;

/** Where a value comes from. */
public enum Source {
    /** Measured or decided by the designer. */
    INPUT,
    /** The default of an input that the designer left empty. */
    DEFAULT,
    /** Estimated from another measurement. */
    PREDICTED,
    /** Computed by a rule. */
    RULE,
    /** Picked by the count solver. */
    CHOSEN,
    /** Set by the designer in place of a rule's value. */
    OVERRIDE,
    /** A designer's own row. */
    OWN;

    /** The word that files, tables and scripts use; not translated. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
