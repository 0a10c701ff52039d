package turnheel.engine.stitch;

/**
 * An operation of the trade, by the loops that it takes from the left needle and leaves on the right one. Source of the
 * counts: published abbreviation lists, as gathered in the reference vocabulary.
 */
public enum Stitch {
    KNIT(1, 1), PURL(1, 1), SLIP(1, 1),
    /** Knitted twisted; on a yarn-over of the round before it closes the hole. */
    KNIT_THROUGH_BACK(1, 1), PURL_THROUGH_BACK(1, 1),
    /** Adds a loop that stays open until it is worked in the next round. */
    YARN_OVER(0, 1),
    /** A yarn-over that lies the other way round on the needle, so that working it through the front twists it. */
    BACKWARD_YARN_OVER(0, 1),
    /** From the strand between two stitches; the text does not tell the lean. */
    MAKE_ONE(0, 1), MAKE_ONE_LEFT(0, 1), MAKE_ONE_RIGHT(0, 1), MAKE_ONE_PURL(0, 1), LIFTED_LEFT(0, 1), LIFTED_RIGHT(0, 1),
    FRONT_AND_BACK(1, 2), PURL_FRONT_AND_BACK(1, 2),
    /** Leans right. */
    KNIT_TWO_TOGETHER(2, 1),
    /** Leans left. */
    SLIP_SLIP_KNIT(2, 1), SLIP_KNIT_PASS(2, 1), KNIT_TWO_TOGETHER_BACK(2, 1),
    PURL_TWO_TOGETHER(2, 1), SLIP_SLIP_PURL(2, 1), KNIT_THREE_TOGETHER(3, 1), PURL_THREE_TOGETHER(3, 1),
    /** Leans left. */
    SLIP_SLIP_SLIP_KNIT(3, 1), SLIP_KNIT_TWO_PASS(3, 1),
    /** Two slipped together, one knitted, both passed over: the middle one lies on top. */
    SLIP_TWO_KNIT_PASS(3, 1),
    PICK_UP_AND_KNIT(0, 1),
    /** A loop that a provisional cast-on held, knitted when the cast-on comes out. */
    FREED_LOOP(0, 1), CAST_ON(0, 1), PROVISIONAL_CAST_ON(0, 1), BIND_OFF(1, 0),
    /** A live stitch sewn to the wrong side, so that a hem is closed. */
    SEW_DOWN(1, 0),
    /** A stitch knitted together with the loop of the cast-on behind it, so that a hem is closed. */
    KNIT_WITH_EDGE(1, 1),
    /** Joins one stitch of each of two needles so that no seam shows. */
    GRAFT(2, 0), DRAW_CLOSED(1, 0), TURN(0, 0), WRAP_AND_TURN(0, 0), KNIT_WITH_WRAPS(1, 1), PURL_WITH_WRAPS(1, 1),
    /** A wrapped stitch joined with its neighbour; the wraps are lifted onto the needle with it. Leans left. */
    SLIP_SLIP_KNIT_WITH_WRAPS(2, 1), PURL_TWO_TOGETHER_WITH_WRAPS(2, 1),
    TWIN_AND_TURN(0, 0), KNIT_TWIN(1, 1), PURL_TWIN(1, 1),
    /** The first stitch after a turn, slipped and pulled so that both its legs lie on the needle. */
    DOUBLE_STITCH(1, 1), KNIT_DOUBLE(1, 1), PURL_DOUBLE(1, 1);

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
