package turnheel.engine.design;

/**
 * Named sock lengths: floor to top of cuff as a share of foot length. Source: domain § 6, <em>common practice</em>.
 * A size's own {@code body.legHeight} comes first.
 */
public enum SockLength {
    NO_SHOW(0.28), ANKLE(0.42), QUARTER(0.60), CREW(0.85), MID_CALF(1.10), KNEE(1.50);

    private final double shareOfFootLength;

    SockLength(double shareOfFootLength) {
        this.shareOfFootLength = shareOfFootLength;
    }

    /** Floor to top of cuff, over foot length. */
    public double shareOfFootLength() {
        return shareOfFootLength;
    }

    /**
     * Whether the cuff of such a sock may follow the heel at once. Where heel and cuff together are higher than the share,
     * the sock is as high as they are: <em>common practice</em>.
     */
    public boolean mayEndAboveHeel() {
        return this == NO_SHOW || this == ANKLE;
    }
}
