package turnheel.engine.hands;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;

/**
 * Two needles and what lies between loops: where a row turns before loops that it leaves, the fabric has a gap there until
 * something is worked across it.
 */
final class Needles {

    /** Stands between the loops on either side of a gap; is none itself. */
    private static final Loop GAP = new Loop(false, -1, Loop.More.NOTHING, Loop.Origin.ONE_FROM_ONE);

    /** The next loop to work is the first. */
    private Deque<Loop> left = new ArrayDeque<>();
    /** The loop worked last is the last. */
    private Deque<Loop> right = new ArrayDeque<>();
    private boolean wrongSide;

    Needles(int loops) {
        left.addAll(Collections.nCopies(loops, Loop.PLAIN));
    }

    /** All loops, in the order in which a right-side row over all of them meets them. */
    List<Loop> loops() {
        List<Loop> all = Stream.concat(right.stream(), left.stream()).filter(loop -> loop != GAP).toList();
        return wrongSide ? all.reversed() : all;
    }

    int toWork() {
        return size(left);
    }

    int worked() {
        return size(right);
    }

    boolean wrongSide() {
        return wrongSide;
    }

    private static int size(Deque<Loop> needle) {
        return (int) needle.stream().filter(loop -> loop != GAP).count();
    }

    /** Whether a gap comes before the next loop. */
    boolean gapAhead() {
        return left.peekFirst() == GAP;
    }

    /** Whether the loop worked last, or the beginning of the row, has a gap behind it. */
    boolean gapBehind() {
        return right.peekLast() == GAP;
    }

    boolean hasGaps() {
        return left.contains(GAP) || right.contains(GAP);
    }

    void closeGapAhead() {
        left.removeFirst();
    }

    void closeGapBehind() {
        right.removeLast();
    }

    Loop take() {
        return left.removeFirst();
    }

    Loop takeFromFarEnd() {
        return left.removeLast();
    }

    void put(Loop loop) {
        right.addLast(loop);
    }

    void putBack(Loop loop) {
        left.addFirst(loop);
    }

    /** Leaves so many loops as they are and goes on after them. */
    void passOver(int loops) {
        for (int i = 0; i < loops; i++) {
            put(take());
        }
    }

    /** More loops to work, after all others. */
    void join(int loops) {
        left.addAll(Collections.nCopies(loops, Loop.PLAIN));
    }

    void turn(boolean leavesGap) {
        if (leavesGap) {
            left.addFirst(GAP);
        }
        Deque<Loop> behind = right;
        right = reversed(left);
        left = reversed(behind);
        wrongSide = !wrongSide;
    }

    private static Deque<Loop> reversed(Deque<Loop> needle) {
        return new ArrayDeque<>(new ArrayList<>(needle).reversed());
    }

    /** The round ends where the next one begins. */
    void beginAgain() {
        left = right;
        right = new ArrayDeque<>();
    }
}
