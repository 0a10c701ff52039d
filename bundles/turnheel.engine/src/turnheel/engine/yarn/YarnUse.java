package turnheel.engine.yarn;

import static turnheel.engine.grading.YarnPlan.STITCH_WIDTH;

import turnheel.engine.stitch.Stitch;

/**
 * How much yarn a stitch takes, as a multiple of a plain knit loop.
 *
 * @param plainLoops 0 for what takes no yarn
 * @param source where the figure comes from
 */
record YarnUse(double plainLoops, Source source) {

    /** Where a figure comes from. No published measurement of hand-knit stitches other than plain ones was found. */
    enum Source {
        /** As many as loops are drawn through. */
        COUNTED,
        /** The width of a stitch in plain-knit geometry. */
        GEOMETRY,
        COMMON_PRACTICE
    }

    /** The figure of a stitch. */
    static YarnUse of(Stitch stitch) {
        return switch (stitch) {
            case KNIT, PURL, KNIT_THROUGH_BACK, PURL_THROUGH_BACK, MAKE_ONE, MAKE_ONE_LEFT, MAKE_ONE_RIGHT, MAKE_ONE_PURL,
                    LIFTED_LEFT, LIFTED_RIGHT, PICK_UP_AND_KNIT, FREED_LOOP, KNIT_WITH_EDGE, KNIT_WITH_WRAPS, PURL_WITH_WRAPS,
                    KNIT_TWIN, PURL_TWIN, KNIT_DOUBLE, PURL_DOUBLE -> counted(1);
            // one loop is drawn through several
            case KNIT_TWO_TOGETHER, SLIP_SLIP_KNIT, SLIP_KNIT_PASS, KNIT_TWO_TOGETHER_BACK, PURL_TWO_TOGETHER, SLIP_SLIP_PURL,
                    KNIT_THREE_TOGETHER, PURL_THREE_TOGETHER, SLIP_SLIP_SLIP_KNIT, SLIP_KNIT_TWO_PASS, SLIP_TWO_KNIT_PASS,
                    SLIP_SLIP_KNIT_WITH_WRAPS, PURL_TWO_TOGETHER_WITH_WRAPS -> counted(1);
            case FRONT_AND_BACK, PURL_FRONT_AND_BACK -> counted(2);
            // the needle's way of a knit loop, sewn
            case GRAFT -> counted(1);
            // a loop of its own, drawn through the stitch below
            case TWIN_AND_TURN -> counted(1);
            // the yarn passes behind
            case SLIP -> new YarnUse(STITCH_WIDTH, Source.GEOMETRY);
            // there and back around the slipped stitch
            case WRAP_AND_TURN -> new YarnUse(2 * STITCH_WIDTH, Source.GEOMETRY);
            // the yarn passes along it twice, as the last stitches of a toe are gathered
            case DRAW_CLOSED -> new YarnUse(2 * STITCH_WIDTH, Source.GEOMETRY);
            // a sewn edge takes about three times its width
            case SEW_DOWN -> new YarnUse(3 * STITCH_WIDTH, Source.COMMON_PRACTICE);
            // lies over the needle like a loop without its foot, a little long
            case YARN_OVER, BACKWARD_YARN_OVER -> new YarnUse(0.7, Source.COMMON_PRACTICE);
            // the slipped stitch is pulled up so that both its legs are on the needle
            case DOUBLE_STITCH -> new YarnUse(0.5, Source.COMMON_PRACTICE);
            // a loop on the needle, and three widths of the tail that holds it
            case CAST_ON -> new YarnUse(1 + 3 * STITCH_WIDTH, Source.COMMON_PRACTICE);
            // lies in waste yarn
            case PROVISIONAL_CAST_ON -> counted(0);
            // a loop that must lie loosely over the next
            case BIND_OFF -> new YarnUse(1.25, Source.COMMON_PRACTICE);
            case TURN -> counted(0);
        };
    }

    private static YarnUse counted(int loops) {
        return new YarnUse(loops, Source.COUNTED);
    }
}
