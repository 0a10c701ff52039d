package turnheel.engine.hands;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

import turnheel.engine.hands.Loop.Origin;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/**
 * Two hands and the loops between them. In the round the left needle is emptied every time; flat, a row may turn early.
 */
public final class Hands {

    /** The next loop to work is the first. */
    private Deque<Loop> left = new ArrayDeque<>();
    /** The loop worked last is the last. */
    private Deque<Loop> right = new ArrayDeque<>();
    private boolean wrongSide;
    private boolean turned;
    /** Whether the strand before the next loop was already lifted to make a stitch. */
    private boolean strandUsed;

    /** A needle with so many plain loops. */
    public static Hands holding(int loops) {
        Hands hands = new Hands();
        for (int i = 0; i < loops; i++) {
            hands.left.add(Loop.PLAIN);
        }
        return hands;
    }

    /** The loops, in the order in which the next round, or a right-side row over all of them, meets them. */
    public List<Loop> loops() {
        List<Loop> all = new ArrayList<>();
        if (wrongSide) {
            all.addAll(right);
            all.addAll(left);
            return all.reversed();
        }
        all.addAll(right);
        all.addAll(left);
        return all;
    }

    public int open() {
        return (int) loops().stream().filter(Loop::open).count();
    }

    /** Where the needles part, counted in loops from the first of {@link #loops}. */
    public int partedAt() {
        return wrongSide ? left.size() : right.size();
    }

    /** One round: uses up every loop of the round before. */
    public void round(List<Step> steps) {
        strandUsed = false;
        turned = false;
        steps.forEach(this::work);
        if (turned) {
            throw new Misknit("a round does not turn");
        }
        if (!left.isEmpty()) {
            throw new Misknit("%d loops are left over at the end of the round, after %d", left.size(), right.size());
        }
        left = right;
        right = new ArrayDeque<>();
    }

    /** One flat row: ends where it turns. */
    public void row(List<Step> steps) {
        strandUsed = false;
        turned = false;
        steps.forEach(this::work);
        if (!turned) {
            throw new Misknit("the row does not turn");
        }
    }

    private void work(Step step) {
        switch (step) {
            case Step.Repeat(List<Step> steps, int times) -> {
                for (int i = 0; i < times; i++) {
                    steps.forEach(this::work);
                }
            }
            case Step.Work(Stitch stitch, int count) -> {
                for (int i = 0; i < count; i++) {
                    work(stitch);
                }
            }
        }
    }

    private void work(Stitch stitch) {
        if (turned) {
            throw new Misknit("%s after the turn", stitch);
        }
        switch (stitch) {
            case KNIT, PURL -> {
                if (take(stitch).open()) {
                    throw new Misknit("%s into an open yarn-over leaves a hole", stitch);
                }
                right.add(Loop.PLAIN);
            }
            case KNIT_THROUGH_BACK -> {
                if (!take(stitch).open()) {
                    throw new Misknit("%s, but there is no yarn-over to close", stitch);
                }
                right.add(Loop.PLAIN);
            }
            case YARN_OVER -> right.add(Loop.OPEN);
            case MAKE_ONE_LEFT, MAKE_ONE_RIGHT -> {
                if (strandUsed) {
                    throw new Misknit("%s, but the strand was lifted already", stitch);
                }
                right.add(Loop.ADDED);
                strandUsed = true;
            }
            case LIFTED_LEFT, LIFTED_RIGHT -> right.add(Loop.ADDED);
            case FRONT_AND_BACK -> {
                takePlain(stitch);
                right.add(Loop.PLAIN);
                right.add(Loop.ADDED);
            }
            case KNIT_TWO_TOGETHER -> join(stitch, Origin.JOINED_RIGHT);
            case SLIP_SLIP_KNIT -> join(stitch, Origin.JOINED_LEFT);
            case CAST_ON -> {
                if (!left.isEmpty()) {
                    throw new Misknit("%s onto a needle with %d loops", stitch, left.size());
                }
                right.add(Loop.PLAIN);
            }
            case BIND_OFF, DRAW_CLOSED -> takePlain(stitch);
            case GRAFT -> graft();
            case WRAP_AND_TURN -> {
                left.addFirst(takeAny(stitch).wrapped());
                turn();
            }
            case TURN -> {
                if (!left.isEmpty()) {
                    throw new Misknit("%s without a wrap leaves a gap before %d loops", stitch, left.size());
                }
                turn();
            }
            case KNIT_WITH_WRAPS, PURL_WITH_WRAPS -> {
                Loop loop = takeAny(stitch);
                if (loop.wraps() == 0) {
                    throw new Misknit("%s, but the loop has no wraps", stitch);
                }
                right.add(Loop.PLAIN);
            }
        }
    }

    private void join(Stitch stitch, Origin origin) {
        takePlain(stitch);
        takePlain(stitch);
        right.add(new Loop(false, 0, origin));
    }

    /** Takes one loop from each end: the two needles lie side by side. */
    private void graft() {
        takePlain(Stitch.GRAFT);
        if (left.isEmpty()) {
            throw new Misknit("a loop has no partner to be grafted to");
        }
        left.removeLast();
    }

    private void turn() {
        Deque<Loop> worked = right;
        right = new ArrayDeque<>(new ArrayList<>(left).reversed());
        left = new ArrayDeque<>(new ArrayList<>(worked).reversed());
        wrongSide = !wrongSide;
        turned = true;
    }

    private void takePlain(Stitch stitch) {
        if (take(stitch).open()) {
            throw new Misknit("%s into an open yarn-over", stitch);
        }
    }

    /** The next loop, which must not be wrapped: a wrap that is passed over stays as a bar on the right side. */
    private Loop take(Stitch stitch) {
        Loop loop = takeAny(stitch);
        if (loop.wraps() > 0) {
            throw new Misknit("%s passes over a wrapped loop", stitch);
        }
        return loop;
    }

    private Loop takeAny(Stitch stitch) {
        if (left.isEmpty()) {
            throw new Misknit("%s, but the left needle is empty after %d loops", stitch, right.size());
        }
        strandUsed = false;
        return left.removeFirst();
    }
}
