package turnheel.exchange.handout;

import java.util.Optional;

import turnheel.engine.stitch.Stitch;

/** How a stitch that shapes, or that marks a turn, is told from its plain neighbours by the eye. */
enum Look {
    YARN_OVER, TWISTED, STRAND, LIFTED, FRONT_AND_BACK, LEANS_RIGHT, LEANS_LEFT, CENTRED, PICKED_UP, FREED_LOOP,
    WRAP, TWIN, DOUBLE, PURL, SLIPPED, JOINED;

    /** What is seen of a stitch; empty where there is nothing to tell, or nothing is left on the needle. */
    static Optional<Look> of(Stitch stitch) {
        return switch (stitch) {
            case KNIT, CAST_ON, PROVISIONAL_CAST_ON, BIND_OFF, SEW_DOWN, GRAFT, DRAW_CLOSED, TURN -> Optional.empty();
            case PURL, MAKE_ONE_PURL, PURL_FRONT_AND_BACK -> Optional.of(PURL);
            case SLIP -> Optional.of(SLIPPED);
            case KNIT_THROUGH_BACK, PURL_THROUGH_BACK -> Optional.of(TWISTED);
            case YARN_OVER, BACKWARD_YARN_OVER -> Optional.of(YARN_OVER);
            case MAKE_ONE, MAKE_ONE_LEFT, MAKE_ONE_RIGHT -> Optional.of(STRAND);
            case LIFTED_LEFT, LIFTED_RIGHT -> Optional.of(LIFTED);
            case FRONT_AND_BACK -> Optional.of(FRONT_AND_BACK);
            case KNIT_TWO_TOGETHER, KNIT_THREE_TOGETHER -> Optional.of(LEANS_RIGHT);
            case SLIP_SLIP_KNIT, SLIP_KNIT_PASS, KNIT_TWO_TOGETHER_BACK, SLIP_SLIP_SLIP_KNIT, SLIP_KNIT_TWO_PASS ->
                Optional.of(LEANS_LEFT);
            case PURL_TWO_TOGETHER, SLIP_SLIP_PURL, PURL_THREE_TOGETHER, SLIP_SLIP_KNIT_WITH_WRAPS,
                    PURL_TWO_TOGETHER_WITH_WRAPS, KNIT_WITH_EDGE -> Optional.of(JOINED);
            case SLIP_TWO_KNIT_PASS -> Optional.of(CENTRED);
            case PICK_UP_AND_KNIT -> Optional.of(PICKED_UP);
            case FREED_LOOP -> Optional.of(FREED_LOOP);
            case WRAP_AND_TURN, KNIT_WITH_WRAPS, PURL_WITH_WRAPS -> Optional.of(WRAP);
            case TWIN_AND_TURN, KNIT_TWIN, PURL_TWIN -> Optional.of(TWIN);
            case DOUBLE_STITCH, KNIT_DOUBLE, PURL_DOUBLE -> Optional.of(DOUBLE);
        };
    }

    private String key() {
        return "look." + name();
    }

    String word() {
        return Words.text(key());
    }

    String meaning() {
        return Words.text(key() + ".meaning");
    }
}
