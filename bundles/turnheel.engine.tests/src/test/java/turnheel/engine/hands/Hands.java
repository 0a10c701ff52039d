package turnheel.engine.hands;

import java.util.List;

import turnheel.engine.hands.Loop.More;
import turnheel.engine.hands.Loop.Origin;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/**
 * Two hands and the loops between them. In the round the left needle is emptied every time; flat, a row may turn early, and
 * then nothing may be worked across the gap until it is closed.
 */
public final class Hands {

    private final Needles needles;
    private boolean turned;
    /** Whether the row has just begun after a turn. */
    private boolean atRowStart;
    /** Whether the strand before the next loop was already lifted to make a stitch. */
    private boolean strandUsed;
    /** Loops of a provisional cast-on that nothing has taken up yet. */
    private int castOnEdge;
    private boolean edgeFreed;

    private Hands(int loops) {
        needles = new Needles(loops);
    }

    /** A needle with so many plain loops. */
    public static Hands holding(int loops) {
        return new Hands(loops);
    }

    /** The loops, in the order in which the next round, or a right-side row over all of them, meets them. */
    public List<Loop> loops() {
        return needles.loops();
    }

    public int open() {
        return (int) loops().stream().filter(Loop::open).count();
    }

    /** Loops that still ask for more than to be worked: wrapped, twin, double or open. */
    public int unfinished() {
        return (int) loops().stream().filter(loop -> !loop.isPlain()).count();
    }

    /** Whether a row turned somewhere and nothing was worked across the gap since. */
    public boolean hasGaps() {
        return needles.hasGaps();
    }

    /** Where the needles part, counted in loops from the first of {@link #loops}. */
    public int partedAt() {
        return needles.wrongSide() ? needles.toWork() : needles.worked();
    }

    /** Takes so many held loops back, to be worked after all others. */
    public void join(int held) {
        if (needles.wrongSide() || needles.worked() > 0) {
            throw new Misknit("held loops are joined on the right side, before the round begins");
        }
        needles.join(held);
    }

    /** One round: uses up every loop of the round before. */
    public void round(List<Step> steps) {
        allAround(steps, false);
    }

    /** The end of a round whose beginning the cast-on has worked already. */
    public void restOfRound(List<Step> steps) {
        int left = steps.stream().mapToInt(Step::takes).sum();
        if (needles.toWork() < left) {
            throw new Misknit("%d loops are to be worked, but only %d are there", left, needles.toWork());
        }
        needles.passOver(needles.toWork() - left);
        begin(false);
        steps.forEach(this::work);
        needles.beginAgain();
    }

    /** A right-side row over all loops that does not turn: the round goes on where it ends. */
    public void rowIntoRound(List<Step> steps) {
        allAround(steps, turned);
    }

    private void allAround(List<Step> steps, boolean afterTurn) {
        begin(afterTurn);
        if (needles.wrongSide()) {
            throw new Misknit("a round begins on the wrong side");
        }
        if (needles.worked() > 0) {
            throw new Misknit("a round begins after %d loops", needles.worked());
        }
        steps.forEach(this::work);
        if (turned) {
            throw new Misknit("a round does not turn");
        }
        if (needles.toWork() > 0) {
            throw new Misknit("%d loops are left over at the end of the round, after %d", needles.toWork(),
                    needles.worked());
        }
        needles.beginAgain();
    }

    /** One flat row: ends where it turns. */
    public void row(List<Step> steps) {
        begin(turned);
        steps.forEach(this::work);
        if (!turned) {
            throw new Misknit("the row does not turn");
        }
    }

    private void begin(boolean afterTurn) {
        atRowStart = afterTurn;
        strandUsed = false;
        turned = false;
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
                    if (turned) {
                        throw new Misknit("%s after the turn", stitch);
                    }
                    work(stitch);
                    atRowStart = false;
                }
            }
        }
    }

    private void work(Stitch stitch) {
        switch (stitch) {
            case KNIT, PURL -> {
                takePlain(stitch);
                needles.put(Loop.PLAIN);
            }
            case SLIP -> needles.put(takePlain(stitch));
            case KNIT_THROUGH_BACK -> {
                Loop loop = take(stitch);
                if (!loop.open() || loop.more() != More.NOTHING) {
                    throw new Misknit("%s, but there is no yarn-over to close", stitch);
                }
                needles.put(Loop.PLAIN);
            }
            case YARN_OVER -> needles.put(atRowStart ? Loop.OPEN_AT_TURN : Loop.OPEN);
            case MAKE_ONE_LEFT, MAKE_ONE_RIGHT -> makeOne(stitch);
            case LIFTED_LEFT, LIFTED_RIGHT -> needles.put(Loop.ADDED);
            case FRONT_AND_BACK -> {
                takePlain(stitch);
                needles.put(Loop.PLAIN);
                needles.put(Loop.ADDED);
            }
            case KNIT_TWO_TOGETHER, PURL_TWO_TOGETHER, KNIT_THREE_TOGETHER, PURL_THREE_TOGETHER ->
                join(stitch, Origin.JOINED_RIGHT);
            case SLIP_SLIP_KNIT -> join(stitch, Origin.JOINED_LEFT);
            case SLIP_SLIP_KNIT_WITH_WRAPS -> joinWithWraps(stitch, Origin.JOINED_LEFT);
            case PURL_TWO_TOGETHER_WITH_WRAPS -> joinWithWraps(stitch, Origin.JOINED_RIGHT);
            case PICK_UP_AND_KNIT -> needles.put(Loop.ADDED);
            case CAST_ON, PROVISIONAL_CAST_ON -> castOn(stitch);
            case FREED_LOOP -> freeLoop();
            case KNIT_WITH_EDGE -> {
                takePlain(stitch);
                takeEdge(stitch);
                needles.put(Loop.PLAIN);
            }
            case BIND_OFF, DRAW_CLOSED, SEW_DOWN -> takePlain(stitch);
            case GRAFT -> graft();
            case WRAP_AND_TURN -> {
                needles.putBack(take(stitch).wrapped());
                turn(false);
            }
            case TWIN_AND_TURN -> {
                needles.putBack(take(stitch).twinned());
                turn(false);
            }
            case TURN -> turn(needles.toWork() > 0);
            case KNIT_WITH_WRAPS, PURL_WITH_WRAPS -> {
                Loop loop = take(stitch);
                if (!loop.isOnlyWrapped()) {
                    throw new Misknit("%s, but the loop has no wraps", stitch);
                }
                needles.put(Loop.PLAIN);
            }
            case KNIT_TWIN, PURL_TWIN -> asOne(stitch, More.TWIN);
            case DOUBLE_STITCH -> doubleStitch(stitch);
            case KNIT_DOUBLE, PURL_DOUBLE -> asOne(stitch, More.DOUBLE);
        }
    }

    private void makeOne(Stitch stitch) {
        if (strandUsed) {
            throw new Misknit("%s, but the strand was lifted already", stitch);
        }
        needles.put(Loop.ADDED);
        strandUsed = true;
    }

    private void castOn(Stitch stitch) {
        if (needles.toWork() > 0) {
            throw new Misknit("%s onto a needle with %d loops", stitch, needles.toWork());
        }
        needles.put(Loop.PLAIN);
        if (stitch == Stitch.PROVISIONAL_CAST_ON) {
            castOnEdge++;
        }
    }

    /** Between so many stitches lies one loop less. */
    private void freeLoop() {
        if (!edgeFreed) {
            castOnEdge--;
            edgeFreed = true;
        }
        takeEdge(Stitch.FREED_LOOP);
        needles.put(Loop.PLAIN);
    }

    private void takeEdge(Stitch stitch) {
        if (castOnEdge < 1) {
            throw new Misknit("%s, but no loop of a provisional cast-on is left", stitch);
        }
        castOnEdge--;
    }

    private void doubleStitch(Stitch stitch) {
        if (!atRowStart) {
            throw new Misknit("%s is made right after a turn", stitch);
        }
        takePlain(stitch);
        if (needles.gapBehind()) {
            needles.closeGapBehind();
        }
        needles.put(Loop.DOUBLED);
    }

    private void asOne(Stitch stitch, More more) {
        if (take(stitch).more() != more) {
            throw new Misknit("%s, but the loop is no %s", stitch, more);
        }
        needles.put(Loop.PLAIN);
    }

    /** Works several loops as one. Across a gap this closes it; a yarn-over made at a turn is closed by a neighbour. */
    private void join(Stitch stitch, Origin origin) {
        int plain = 0;
        for (int i = 0; i < stitch.takes(); i++) {
            Loop loop = takeAcrossGap(stitch, i);
            if (loop.isPlain()) {
                plain++;
            } else if (loop.more() != More.OVER_AT_TURN) {
                throw new Misknit("%s into a loop that is %s", stitch, loop);
            }
        }
        if (plain == 0) {
            throw new Misknit("%s works yarn-overs together without a stitch", stitch);
        }
        needles.put(Loop.joined(origin));
    }

    /** The first loop of a decrease across the edge of short rows is wrapped, and its wraps are lifted with it. */
    private void joinWithWraps(Stitch stitch, Origin origin) {
        for (int i = 0; i < stitch.takes(); i++) {
            Loop loop = takeAcrossGap(stitch, i);
            if (i == 0 ? !loop.isOnlyWrapped() : !loop.isPlain()) {
                throw new Misknit("%s into a loop that is %s", stitch, loop);
            }
        }
        needles.put(Loop.joined(origin));
    }

    private Loop takeAcrossGap(Stitch stitch, int taken) {
        if (taken > 0 && needles.gapAhead()) {
            needles.closeGapAhead();
        }
        return take(stitch);
    }

    /** Takes one loop from each end: the two needles lie side by side. */
    private void graft() {
        takePlain(Stitch.GRAFT);
        if (needles.toWork() == 0) {
            throw new Misknit("a loop has no partner to be grafted to");
        }
        needles.takeFromFarEnd();
    }

    private void turn(boolean leavesGap) {
        needles.turn(leavesGap);
        turned = true;
    }

    /** The next loop, which must ask for nothing more: a wrap or yarn-over passed over stays as a bar or a hole. */
    private Loop takePlain(Stitch stitch) {
        Loop loop = take(stitch);
        if (loop.open()) {
            throw new Misknit("%s into an open yarn-over leaves a hole", stitch);
        }
        if (loop.wraps() > 0) {
            throw new Misknit("%s passes over a wrapped loop", stitch);
        }
        if (loop.more() != More.NOTHING) {
            throw new Misknit("%s into one leg of a %s", stitch, loop.more());
        }
        return loop;
    }

    private Loop take(Stitch stitch) {
        if (needles.toWork() == 0) {
            throw new Misknit("%s, but the left needle is empty after %d loops", stitch, needles.worked());
        }
        if (needles.gapAhead()) {
            throw new Misknit("%s leaves a gap before %d loops", stitch, needles.toWork());
        }
        strandUsed = false;
        return needles.take();
    }
}
