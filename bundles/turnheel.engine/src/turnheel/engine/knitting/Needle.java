package turnheel.engine.knitting;

import java.util.EnumSet;
import java.util.Set;

import turnheel.engine.query.Check;

/**
 * The loops of a sock in progress: on the left needle those to be worked, on the right those worked, and those on hold. In
 * the round the left needle is emptied every time; flat, a row may turn before its end, and what lies beyond is a gap until
 * it is worked across.
 *
 * <p>Every method does what a knitter is told, or throws a {@link Misfit}; what can be done but leaves a hole is noted in
 * {@link #takeHoles}. A {@link #forgiving} needle does what comes nearest instead, as one goes on after a slip.
 */
final class Needle {

    private final Effort effort;
    private Runs left = new Runs();
    private Runs right = new Runs();
    private Runs held = new Runs();
    private boolean wrongSide;
    private boolean flat;
    /** Whether the work was ever closed to a ring. */
    private boolean ring;
    /** Whether the row ended without the word to turn, which the next row then does. */
    private boolean turnPending;
    /** Whether nothing was worked since the last turn. */
    private boolean justTurned;
    /** Loops on the right needle that were worked in this row or round. */
    private int beforeRow;
    /** Loops of the cast-on edge that nothing has taken up yet. */
    private int edge;
    private boolean edgeFreed;
    private boolean forgiving;
    /** Whether the end of the round was taken for a marker. */
    private boolean markerImplied;
    private final Set<Check> holes = EnumSet.noneOf(Check.class);

    Needle(Effort effort) {
        this.effort = effort;
    }

    /** The same needle, worked at the cost of {@code other}. */
    Needle copy(Effort other) {
        Needle copy = new Needle(other);
        copy.left = left.copy();
        copy.right = right.copy();
        copy.held = held.copy();
        copy.wrongSide = wrongSide;
        copy.flat = flat;
        copy.ring = ring;
        copy.turnPending = turnPending;
        copy.justTurned = justTurned;
        copy.beforeRow = beforeRow;
        copy.edge = edge;
        copy.edgeFreed = edgeFreed;
        return copy;
    }

    Effort effort() {
        return effort;
    }

    /** From now on it makes the best of what cannot be done. */
    void forgiving(boolean forgive) {
        forgiving = forgive;
    }

    boolean isForgiving() {
        return forgiving;
    }

    /** Something cannot be done; a forgiving needle goes on. */
    void misfit(Check check, Object expected, Object found) {
        if (!forgiving) {
            boolean marker = check == Check.TEXT_ROUND && markerImplied;
            throw new Misfit(marker ? Check.TEXT_MARKER : check, marker ? "" : expected.toString(),
                    marker ? "" : found.toString());
        }
    }

    void implyMarker() {
        markerImplied = true;
    }

    Runs left() {
        return left;
    }

    /** Other loops are to be worked now. */
    void left(Runs others) {
        left = others;
    }

    Runs right() {
        return right;
    }

    Runs held() {
        return held;
    }

    /** Loops that are worked at present: those on hold are not. */
    int loops() {
        return left.loops() + right.loops();
    }

    /** Yarn-overs among them. */
    int open() {
        return left.open() + right.open();
    }

    boolean isFlat() {
        return flat;
    }

    boolean wrongSide() {
        return wrongSide;
    }

    boolean justTurned() {
        return justTurned;
    }

    /** What was worked so far leaves these holes; they are told once. */
    Set<Check> takeHoles() {
        Set<Check> noted = EnumSet.noneOf(Check.class);
        noted.addAll(holes);
        holes.clear();
        return noted;
    }

    void noteHole(Check hole) {
        holes.add(hole);
    }

    /** Something is worked: the needle is no longer as the turn left it. */
    void working(int steps) {
        effort.spend(steps);
        justTurned = false;
    }

    /** Runs are looked at. */
    void look(int steps) {
        effort.spend(steps);
    }

    boolean hasMarkers() {
        return has(Loop.MARKER);
    }

    /** Whether a turn left something that is not yet worked across. */
    boolean hasGaps() {
        return has(Loop.GAP) || has(Loop.WRAPPED) || has(Loop.TWIN) || has(Loop.DOUBLE) || has(Loop.OPEN_AT_TURN);
    }

    private boolean has(Loop kind) {
        return left.has(kind) || right.has(kind);
    }

    /** The gap that the last turn left is closed. */
    void closeGapBehind() {
        if (right.startsWith(Loop.GAP)) {
            right.pop(0);
        } else if (right.loops() == 0 && left.endsWith(Loop.GAP)) {
            left.popFar(0);
        }
    }

    /** A new piece begins with so many loops. */
    void castOn(int loops) {
        left.clear();
        right.clear();
        held.clear();
        wrongSide = false;
        flat = false;
        ring = false;
        turnPending = false;
        edge = loops;
        edgeFreed = false;
        addLoops(Loop.REGULAR, loops);
    }

    /** More loops on the right needle. */
    void addLoops(Loop kind, int loops) {
        if ((long) loops() + held.loops() + loops > Effort.MOST_LOOPS) {
            throw new Misfit(Check.TEXT_TOO_LARGE, Effort.MOST_LOOPS, loops() + held.loops() + loops);
        }
        working(1);
        right.push(kind, loops);
    }

    /** Loops of the cast-on edge are taken up; between so many stitches lies one loop less when they are freed. */
    void takeEdge(int loops, boolean freed) {
        int there = freed && !edgeFreed ? edge - 1 : edge;
        if (there < loops) {
            misfit(Check.TEXT_ROUND, Math.max(0, there), loops);
        }
        edge = Math.max(0, there - loops);
        edgeFreed |= freed;
    }

    /** A labelled round begins: over all loops, from here on. */
    void beginRound(boolean takesHeldItself) {
        turnBackIfOwed();
        if (flat || !ring) {
            rightSideNeeded();
            if (!takesHeldItself && held.loops() > 0) {
                left.appendFromTip(held);
            }
            if (left.loops() > 0 && right.loops() > 0) {
                goAround();
            }
            ring = true;
            endFlat();
        }
        if (left.loops() == 0) {
            left.appendFromFar(right);
        } else if (right.loops() > 0) {
            misfit(Check.TEXT_ROUND, loops(), right.loops());
            goAround();
            left.remove(Loop.START);
        }
        beginRow();
    }

    private void rightSideNeeded() {
        if (wrongSide) {
            misfit(Check.TEXT_SIDE, "RS", "WS");
            turn(false);
        }
    }

    /** A row that ended on the wrong side without the word to turn turns now. */
    void turnBackIfOwed() {
        if (turnPending && wrongSide) {
            turn(false);
        }
        turnPending = false;
    }

    /** What lies behind comes after all others; where rounds began before is kept in mind. */
    private void goAround() {
        if (!left.has(Loop.START)) {
            left.pushFar(Loop.START, 0);
        }
        left.appendFromFar(right);
    }

    private void endFlat() {
        flat = false;
        left.become(Loop.RESTING, Loop.REGULAR);
        right.become(Loop.RESTING, Loop.REGULAR);
    }

    /** Whatever is worked next belongs to a new row or round. */
    void beginRow() {
        beforeRow = right.loops();
        markerImplied = false;
    }

    /** A row that ended without the word to turn turns now. */
    void turnIfOwed() {
        if (turnPending) {
            turn(false);
        }
    }

    /** What is worked next is a flat part of the ring. */
    void beginFlatPart() {
        flat = true;
        ring = true;
        beginRow();
    }

    /** A labelled flat row begins. */
    void beginFlatRow() {
        if (turnPending) {
            turnIfOwed();
        } else if (!flat && left.loops() == 0) {
            left.appendFromFar(right);
        }
        beginRow();
    }

    /** What follows is worked beside the last stitch, without a turn before it. */
    void goOnAround() {
        turnPending = false;
    }

    /** A flat row is over: it turned, or has come to the end of its stitches. */
    void endFlatRow(int ahead) {
        flat = true;
        if (justTurned) {
            return;
        }
        if (ahead > 0) {
            misfit(Check.TEXT_ROW, "", ahead);
            turn(true);
            return;
        }
        turnPending = true;
    }

    /** A row tells which side faces; on a new piece that was never turned it is so, otherwise it must be so already. */
    void face(boolean wrong) {
        if (!flat && !ring) {
            wrongSide = wrong;
        } else if (wrongSide != wrong) {
            misfit(Check.TEXT_SIDE, wrongSide ? "WS" : "RS", wrong ? "WS" : "RS");
        }
    }

    /** Whether nothing of a row or round was worked yet. */
    boolean isBetweenRows() {
        return right.loops() == beforeRow;
    }

    /** Whether the work is a flat piece of its own, which has no round to end. */
    boolean isPiece() {
        return flat && !ring;
    }

    /** Whether every loop was worked and none is on hold. */
    boolean isRoundDone() {
        return held.loops() == 0 && !isPiece() && (left.loops() == 0
                || ring && !wrongSide && right.loops() > 0 && isAtStart());
    }

    boolean isAtStart() {
        int place = 0;
        while (place < left.size() && !left.kind(place).isLoop()) {
            if (left.kind(place) == Loop.START) {
                return true;
            }
            place++;
        }
        return false;
    }

    /** The round is over; the next begins where this one did. */
    void endRound() {
        while (left.size() > 0 && !left.kind(0).isLoop()) {
            Loop kind = left.kind(0);
            left.pop(0);
            if (kind != Loop.START) {
                right.push(kind, 0);
            }
        }
        left.appendFromFar(right);
        left.remove(Loop.START);
        endFlat();
        beginRow();
    }

    /** The round begins here from now on. */
    void startHere() {
        left.appendFromFar(right);
        left.remove(Loop.START);
        beginRow();
    }

    /** Turns the work. Where loops of this part are left, the turn leaves a gap unless it marks the next loop. */
    void turn(boolean leavesGap) {
        if (!flat && ring && held.loops() == 0) {
            rest();
        }
        flat = true;
        if (leavesGap && left.loops() > 0 && nextLoop() != Loop.RESTING) {
            left.push(Loop.GAP, 0);
        }
        Runs behind = right;
        right = left;
        left = behind;
        wrongSide = !wrongSide;
        if (ring && held.loops() == 0) {
            left.appendFromFar(right);
        }
        working(1);
        justTurned = true;
        turnPending = false;
        beginRow();
    }

    /** Only what this row has worked belongs to the flat part so far. */
    private void rest() {
        Runs worked = new Runs();
        for (int toMove = right.loops() - beforeRow; toMove > 0;) {
            Loop kind = right.kind(0);
            int moved = right.pop(toMove);
            worked.push(kind, moved);
            toMove -= moved;
        }
        right.become(Loop.REGULAR, Loop.RESTING);
        left.become(Loop.REGULAR, Loop.RESTING);
        for (int place = 0; place < worked.size(); place++) {
            right.push(worked.kind(place), worked.count(place));
        }
        left.pushFar(Loop.START, 0);
    }

    private Loop nextLoop() {
        int place = 0;
        while (!left.kind(place).isLoop()) {
            place++;
        }
        return left.kind(place);
    }

    /** What is on hold comes back, the work is a ring, and the round begins here. */
    void joinInRound() {
        turnBackIfOwed();
        rightSideNeeded();
        left.appendFromTip(held);
        startHere();
        ring = true;
        endFlat();
    }

    /** Whatever of the round is left is worked plainly, and what is on hold comes back. */
    void finishRound() {
        if (flat || left.loops() == 0 && held.loops() == 0) {
            return;
        }
        left.appendFromTip(held);
        while (left.size() > 0) {
            Loop kind = left.kind(0);
            int moved = left.pop(Integer.MAX_VALUE);
            right.push(kind, moved);
        }
        endRound();
    }
}
