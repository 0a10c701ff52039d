package turnheel.engine.shaping;

/** What a knitter sees on the needle or directly under it, by which one round is told from another of the same count. */
public enum Sign {
    /** Yarn-overs that no round has closed yet. */
    OPEN_YARN_OVERS,
    /** Increases directly under the needle. */
    INCREASES,
    /** Decreases directly under the needle. */
    DECREASES,
    /** No shaping directly under the needle. */
    PLAIN,
    /** A turn before the end of a row. */
    TURN,
    /** The cast-on edge, or the stitches just picked up. */
    EDGE;

    /** What is seen after a round. */
    static Sign after(Round round) {
        if (round.openYarnOvers() > 0) {
            return OPEN_YARN_OVERS;
        }
        return switch (round.kind()) {
            case INCREASE -> INCREASES;
            case DECREASE, GRAFT, BIND_OFF -> DECREASES;
            case PLAIN, RIB, SET_UP -> PLAIN;
            case ROW, TURN -> TURN;
            case CAST_ON, PICK_UP -> EDGE;
        };
    }
}
