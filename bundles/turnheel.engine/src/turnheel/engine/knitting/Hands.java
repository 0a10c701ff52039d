package turnheel.engine.knitting;

import turnheel.engine.query.Check;
import turnheel.engine.stitch.Stitch;

/**
 * Does stitches on a needle. What a pattern may ask for and leaves a hole is done and noted; what cannot be done is a
 * {@link Misfit}.
 */
final class Hands {

    private final Needle needle;
    /** Whether yarn-overs of this section are closed one round later, by working them through the back. */
    private boolean closesYarnOvers;

    Hands(Needle needle) {
        this.needle = needle;
    }

    void closeYarnOvers(boolean close) {
        closesYarnOvers = close;
    }

    /** Works a stitch so often. */
    void work(Stitch stitch, int times) {
        switch (stitch) {
            case KNIT, PURL -> plain(times);
            case SLIP -> slip(times);
            case KNIT_THROUGH_BACK, PURL_THROUGH_BACK -> throughBack(times);
            case YARN_OVER -> needle.addLoops(
                    needle.justTurned() ? Loop.OPEN_AT_TURN : closesYarnOvers ? Loop.OPEN : Loop.LACE, times);
            // worked through the front it is twisted, so that any stitch closes it
            case BACKWARD_YARN_OVER -> needle.addLoops(needle.justTurned() ? Loop.OPEN_AT_TURN : Loop.LACE, times);
            case MAKE_ONE, MAKE_ONE_LEFT, MAKE_ONE_RIGHT, MAKE_ONE_PURL, LIFTED_LEFT, LIFTED_RIGHT, CAST_ON ->
                needle.addLoops(Loop.REGULAR, times);
            case PROVISIONAL_CAST_ON -> needle.addLoops(Loop.REGULAR, times);
            case FRONT_AND_BACK, PURL_FRONT_AND_BACK -> {
                for (int i = 0; i < times; i++) {
                    plain(1);
                    needle.addLoops(Loop.REGULAR, 1);
                }
            }
            case KNIT_TWO_TOGETHER, SLIP_SLIP_KNIT, SLIP_KNIT_PASS, KNIT_TWO_TOGETHER_BACK, PURL_TWO_TOGETHER,
                    SLIP_SLIP_PURL, KNIT_THREE_TOGETHER, PURL_THREE_TOGETHER, SLIP_SLIP_SLIP_KNIT, SLIP_KNIT_TWO_PASS, SLIP_TWO_KNIT_PASS,
                    SLIP_SLIP_KNIT_WITH_WRAPS, PURL_TWO_TOGETHER_WITH_WRAPS -> {
                for (int i = 0; i < times; i++) {
                    join(stitch.takes());
                }
            }
            case PICK_UP_AND_KNIT -> pickUp(times);
            case FREED_LOOP -> {
                needle.takeEdge(times, true);
                needle.addLoops(Loop.REGULAR, times);
            }
            case KNIT_WITH_EDGE -> {
                needle.takeEdge(times, false);
                plain(times);
            }
            case BIND_OFF, DRAW_CLOSED, SEW_DOWN -> take(times, false);
            case GRAFT -> graft(times);
            case TURN -> times(times, () -> needle.turn(true));
            case WRAP_AND_TURN -> times(times, () -> markAndTurn(Loop.WRAPPED));
            case TWIN_AND_TURN -> times(times, () -> markAndTurn(Loop.TWIN));
            case KNIT_WITH_WRAPS, PURL_WITH_WRAPS -> asOne(Loop.WRAPPED, times);
            case KNIT_TWIN, PURL_TWIN -> asOne(Loop.TWIN, times);
            case KNIT_DOUBLE, PURL_DOUBLE -> asOne(Loop.DOUBLE, times);
            case DOUBLE_STITCH -> times(times, this::doubleStitch);
        }
    }

    private static void times(int times, Runnable once) {
        for (int i = 0; i < times; i++) {
            once.run();
        }
    }

    /** Works so many loops one to one. */
    private void plain(int times) {
        take(times, true);
    }

    private void take(int times, boolean leave) {
        for (int toWork = times; toWork > 0;) {
            Loop kind = nextKind(toWork);
            if (!kind.isLoop()) {
                return;
            }
            noteHole(kind);
            int worked = needle.left().pop(toWork);
            if (leave) {
                needle.right().push(Loop.REGULAR, worked);
            }
            toWork -= worked;
        }
    }

    private void noteHole(Loop kind) {
        switch (kind) {
            case OPEN -> needle.noteHole(Check.TEXT_YARN_OVER);
            case WRAPPED, TWIN, DOUBLE, OPEN_AT_TURN -> needle.noteHole(Check.TEXT_GAP);
            case REGULAR, RESTING, LACE, MARKER, GAP, START -> { }
        }
    }

    /** The next loop, past markers; a gap on the way stays a hole. */
    private Loop nextKind(int needed) {
        Loop next = pass();
        if (next == Loop.GAP) {
            needle.noteHole(Check.TEXT_GAP);
            needle.left().pop(0);
            return nextKind(needed);
        }
        if (next == Loop.MARKER) {
            needle.misfit(Check.TEXT_ROUND, needle.loops(), needle.right().loops() + needed);
            return next;
        }
        needle.working(1);
        return next;
    }

    /** Passes markers; the kind of the loop or gap after them, {@link Loop#MARKER} where none is left. */
    private Loop pass() {
        Runs left = needle.left();
        while (left.size() > 0) {
            Loop kind = left.kind(0);
            if (kind != Loop.MARKER && kind != Loop.START) {
                return kind;
            }
            if (left.loops() == 0) {
                return Loop.MARKER;
            }
            left.pop(0);
            needle.right().push(kind, 0);
        }
        return Loop.MARKER;
    }

    private void slip(int times) {
        for (int toSlip = times; toSlip > 0;) {
            Loop kind = nextKind(toSlip);
            if (!kind.isLoop()) {
                return;
            }
            int slipped = needle.left().pop(toSlip);
            needle.right().push(kind == Loop.RESTING ? Loop.REGULAR : kind, slipped);
            toSlip -= slipped;
        }
    }

    private void throughBack(int times) {
        for (int toWork = times; toWork > 0;) {
            Loop kind = nextKind(toWork);
            if (!kind.isLoop()) {
                return;
            }
            if (closesYarnOvers && !kind.isOpen()) {
                needle.misfit(Check.TEXT_CLOSING, "", "");
            }
            if (kind != Loop.OPEN) {
                noteHole(kind);
            }
            int worked = needle.left().pop(toWork);
            needle.right().push(Loop.REGULAR, worked);
            toWork -= worked;
        }
    }

    /** Works several loops as one; across a gap this closes it, and a yarn-over is closed by its neighbour. */
    private void join(int loops) {
        int openLoops = 0;
        boolean marker = false;
        for (int i = 0; i < loops; i++) {
            Runs left = needle.left();
            while (left.size() > 0 && left.loops() > 0 && !left.kind(0).isLoop()) {
                marker |= left.kind(0) == Loop.MARKER && i > 0;
                if (i == 0 || left.kind(0) == Loop.START) {
                    needle.right().push(left.kind(0), 0);
                }
                left.pop(0);
            }
            Loop kind = nextKind(loops - i);
            if (!kind.isLoop()) {
                break;
            }
            if (kind.isOpen()) {
                openLoops++;
            }
            left.pop(1);
        }
        if (openLoops == loops) {
            needle.noteHole(Check.TEXT_YARN_OVER);
        }
        needle.right().push(Loop.REGULAR, 1);
        if (marker) {
            needle.right().push(Loop.MARKER, 0);
        }
    }

    private void pickUp(int times) {
        needle.closeGapBehind();
        if (needle.left().startsWith(Loop.GAP)) {
            needle.left().pop(0);
        }
        needle.addLoops(Loop.REGULAR, times);
    }

    /** Takes loops from both ends: the two needles lie side by side. */
    private void graft(int pairs) {
        if (needle.left().loops() < 2L * pairs) {
            new Holding(needle).takeAllHeld();
        }
        if (needle.left().loops() < 2L * pairs) {
            needle.misfit(Check.TEXT_ROUND, needle.left().loops(), 2 * pairs);
        }
        take(pairs, false);
        Runs left = needle.left();
        for (int toTake = pairs; toTake > 0 && left.loops() > 0;) {
            toTake -= left.popFar(toTake);
            needle.working(1);
        }
    }

    private void markAndTurn(Loop mark) {
        Loop next = pass();
        if (!next.isLoop()) {
            needle.misfit(Check.TEXT_ROUND, needle.loops(), needle.right().loops() + 1);
        } else {
            needle.left().pop(1);
            needle.left().push(mark, 1);
        }
        needle.turn(false);
    }

    private void asOne(Loop mark, int times) {
        for (int toWork = times; toWork > 0;) {
            Loop kind = nextKind(toWork);
            if (!kind.isLoop()) {
                return;
            }
            if (kind != mark) {
                needle.misfit(Check.TEXT_GAP_MISSING, "", "");
            }
            int worked = needle.left().pop(toWork);
            needle.right().push(Loop.REGULAR, worked);
            toWork -= worked;
        }
    }

    /** Works so many loops one to one and closes on the way what turns have left. */
    void close(int times) {
        for (int toWork = times; toWork > 0;) {
            Loop next = pass();
            if (next == Loop.GAP) {
                needle.left().pop(0);
                continue;
            }
            Loop kind = nextKind(toWork);
            if (!kind.isLoop()) {
                return;
            }
            int worked = needle.left().pop(toWork);
            // the yarn-over of a turn is worked with its neighbour
            needle.right().push(Loop.REGULAR, kind == Loop.OPEN_AT_TURN ? 0 : worked);
            toWork -= worked;
        }
    }

    private void doubleStitch() {
        if (!needle.justTurned()) {
            needle.misfit(Check.TEXT_GAP_MISSING, "", "");
        }
        Loop kind = nextKind(1);
        if (!kind.isLoop()) {
            return;
        }
        noteHole(kind);
        needle.left().pop(1);
        needle.closeGapBehind();
        needle.right().push(Loop.DOUBLE, 1);
    }
}
