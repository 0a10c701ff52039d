package turnheel.engine.knitting;

import java.util.function.Predicate;

import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.instruction.Until.Mark;
import turnheel.engine.query.Check;

/** Where a place lies that a text names, counted in loops from the tip of the left needle. Made for one needle and size. */
final class Places {

    private final Needle needle;
    private final int size;

    Places(Needle needle, int size) {
        this.needle = needle;
        this.size = size;
    }

    /** Loops to work up to there; never below 0. */
    int ahead(Until until) {
        int ahead = switch (until) {
            case Until.End end -> toEnd();
            case Until.Next(var stitches) -> count(stitches);
            case Until.Last(var stitches) -> toEnd() - count(stitches);
            case Until.Marker(var stitches) -> toMarker(count(stitches));
            case Until.Gap(var stitches) -> toFirst(kind -> kind == Loop.GAP || kind.isMarked() || kind == Loop.OPEN_AT_TURN)
                    - count(stitches);
            case Until.TurnedStitch(var mark, var stitches) -> toTurned(mark) - count(stitches);
            case Until.Held held -> needle.held().loops();
        };
        if (ahead < 0) {
            needle.misfit(check(until), 0, ahead);
        }
        return Math.max(0, ahead);
    }

    private static Check check(Until until) {
        return switch (until) {
            case Until.End end -> Check.TEXT_ROUND;
            case Until.Next next -> Check.TEXT_ROUND;
            case Until.Last last -> Check.TEXT_ROUND;
            case Until.Held held -> Check.TEXT_HELD;
            case Until.Marker marker -> Check.TEXT_MARKER;
            case Until.Gap gap -> Check.TEXT_GAP_MISSING;
            case Until.TurnedStitch stitch -> Check.TEXT_GAP_MISSING;
        };
    }

    private int count(Sized<Integer> stitches) {
        return stitches.get(size).orElse(0);
    }

    /** To the end of the round; flat, to the end of the part that is worked flat. */
    int toEnd() {
        Runs left = needle.left();
        int loops = 0;
        boolean worked = false;
        for (int place = 0; place < left.size(); place++) {
            Loop kind = left.kind(place);
            boolean resting = kind == Loop.RESTING;
            if (kind == Loop.START && loops > 0 || resting && worked) {
                return loops;
            }
            worked |= kind.isLoop() && !resting;
            loops += left.count(place);
        }
        needle.look(left.size());
        return loops;
    }

    /** A marker right here is not meant by "n sts before marker": it is slipped as one comes to it. */
    private int toMarker(int before) {
        Runs left = needle.left();
        int loops = 0;
        for (int place = 0; place < left.size(); place++) {
            if (left.kind(place) == Loop.MARKER && (loops > 0 || before == 0)) {
                return loops - before;
            }
            loops += left.count(place);
        }
        needle.look(left.size());
        if (!needle.hasMarkers()) {
            needle.misfit(Check.TEXT_MARKER, "", "");
        }
        // the round begins at a place that is known without a marker
        needle.implyMarker();
        return toEnd() - before;
    }

    private int toTurned(Mark mark) {
        Runs left = needle.left();
        int end = toEnd();
        boolean missing = !left.has(Loop.WRAPPED) && !left.has(Loop.TWIN) && !left.has(Loop.DOUBLE);
        if (missing && needle.isForgiving() && end > 0) {
            // the row before may have turned without marking its last stitch
            left.become(end - 1, switch (mark) {
                case WRAPPED -> Loop.WRAPPED;
                case TWIN -> Loop.TWIN;
                case DOUBLE -> Loop.DOUBLE;
            });
        }
        return toFirst(Loop::isMarked);
    }

    private int toFirst(Predicate<Loop> meant) {
        Runs left = needle.left();
        int loops = 0;
        for (int place = 0; place < left.size(); place++) {
            if (meant.test(left.kind(place))) {
                return loops;
            }
            loops += left.count(place);
        }
        needle.misfit(Check.TEXT_GAP_MISSING, "", "");
        return 0;
    }
}
