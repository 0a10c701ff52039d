package turnheel.engine.design;

/** What may be done with a number of a pattern; each key has one role. */
public enum Role {
    /** Measured or decided per size; empty returns to the default. */
    INPUT,
    /** Follows from a rule, and can be overridden per size. */
    RULE,
    /** Follows from others and cannot be set. */
    RESULT,
    /** Follows from a formula of the designer, which is changed as a whole. */
    OWN
}
