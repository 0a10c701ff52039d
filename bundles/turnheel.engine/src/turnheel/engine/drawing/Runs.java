package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/** The same knitting, said in one way: charts show what is worked, not how it was written. */
final class Runs {

    private Runs() {
    }

    /** Neighbours of the same stitch said as one; what is repeated once, or is one stitch only, needs no repeat. */
    static List<Step> joined(List<Step> steps) {
        List<Step> joined = new ArrayList<>();
        for (Step step : steps) {
            switch (step) {
                case Step.Work work -> add(joined, work);
                case Step.Repeat(var repeated, var times) -> {
                    List<Step> inner = joined(repeated);
                    if (times == 1) {
                        inner.forEach(one -> add(joined, one));
                    } else if (inner.size() == 1 && inner.getFirst() instanceof Step.Work(var stitch, var count)) {
                        add(joined, new Step.Work(stitch, times * count));
                    } else {
                        joined.add(new Step.Repeat(inner, times));
                    }
                }
            }
        }
        return joined;
    }

    private static void add(List<Step> joined, Step step) {
        if (step instanceof Step.Work(var stitch, var count) && !joined.isEmpty()
                && joined.getLast() instanceof Step.Work(var before, var counted) && stitch == before) {
            joined.set(joined.size() - 1, new Step.Work(stitch, count + counted));
        } else {
            joined.add(step);
        }
    }

    /** Every stitch on its own, in the order of working. */
    static List<Stitch> unrolled(List<Step> steps) {
        List<Stitch> stitches = new ArrayList<>();
        for (Step step : steps) {
            switch (step) {
                case Step.Work(var stitch, var count) -> stitches.addAll(Collections.nCopies(count, stitch));
                case Step.Repeat(var repeated, var times) -> {
                    List<Stitch> once = unrolled(repeated);
                    for (int time = 0; time < times; time++) {
                        stitches.addAll(once);
                    }
                }
            }
        }
        return stitches;
    }
}
