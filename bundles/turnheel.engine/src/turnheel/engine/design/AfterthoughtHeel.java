package turnheel.engine.design;

/**
 * A heel worked last, like a toe, into an opening that was held for it.
 *
 * @param lean which way the lines of a round cap lean; those of a wedge lean towards each other
 */
public record AfterthoughtHeel(Cap cap, Lean lean) implements Heel {

    /** Leaning right where it is round. */
    public AfterthoughtHeel(Cap cap) {
        this(cap, Lean.RIGHT);
    }

    /** The toe that the heel is shaped like. */
    public enum Cap {
        WEDGE, ROUND
    }
}
