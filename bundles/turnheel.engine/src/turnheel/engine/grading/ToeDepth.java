package turnheel.engine.grading;

/** How deep toes usually are, as shares of the finished length. All <em>common practice</em>. */
public final class ToeDepth {

    /** What a toe is aimed at. */
    public static final double AIM = 0.23;
    /** Shallower ones are unusual. */
    public static final double SHALLOWEST = 0.18;
    /** Deeper ones are unusual. */
    public static final double DEEPEST = 0.30;

    private ToeDepth() {
    }
}
