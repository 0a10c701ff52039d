package turnheel.engine.design;

/** A heel worked last, like a toe, into an opening that was held for it. */
public record AfterthoughtHeel(Cap cap) implements Heel {

    /** The toe that the heel is shaped like. */
    public enum Cap {
        WEDGE, ROUND
    }
}
