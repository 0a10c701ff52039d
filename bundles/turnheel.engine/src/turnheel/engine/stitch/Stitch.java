package turnheel.engine.stitch;

/**
 * An operation of the trade, by the loops that it takes from the left needle and leaves on the right one. Source of the
 * counts: published abbreviation lists, as gathered in the reference vocabulary.
 */
public enum Stitch {
    KNIT(1, 1), PURL(1, 1),
    /** Knitted twisted; on a yarn-over of the round before it closes the hole. */
    KNIT_THROUGH_BACK(1, 1),
    /** Adds a loop that stays open until it is worked in the next round. */
    YARN_OVER(0, 1), MAKE_ONE_LEFT(0, 1), MAKE_ONE_RIGHT(0, 1), LIFTED_LEFT(0, 1), LIFTED_RIGHT(0, 1),
    FRONT_AND_BACK(1, 2),
    /** Leans right. */
    KNIT_TWO_TOGETHER(2, 1),
    /** Leans left. */
    SLIP_SLIP_KNIT(2, 1), CAST_ON(0, 1), BIND_OFF(1, 0),
    /** Joins one stitch of each of two needles so that no seam shows. */
    GRAFT(2, 0), DRAW_CLOSED(1, 0), WRAP_AND_TURN(0, 0), TURN(0, 0), KNIT_WITH_WRAPS(1, 1), PURL_WITH_WRAPS(1, 1);

    private final int takes;
    private final int leaves;

    Stitch(int takes, int leaves) {
        this.takes = takes;
        this.leaves = leaves;
    }

    /** Loops that one of these takes from the left needle. */
    public int takes() {
        return takes;
    }

    /** Loops that one of these leaves on the right needle. */
    public int leaves() {
        return leaves;
    }
}
