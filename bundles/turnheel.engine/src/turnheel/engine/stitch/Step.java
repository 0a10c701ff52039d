package turnheel.engine.stitch;

import java.util.List;

/** A piece of a round or row. */
public sealed interface Step {

    /** Loops that it takes from the left needle. */
    int takes();

    /** Loops that it leaves on the right needle. */
    int leaves();

    /** Yarn-overs among the loops that it leaves, open until the next round. */
    int openYarnOvers();

    /**
     * One stitch, {@code count} times.
     *
     * @throws IllegalArgumentException when count is below 1
     */
    record Work(Stitch stitch, int count) implements Step {
        public Work {
            if (count < 1) {
                throw new IllegalArgumentException("%s must be worked at least once, not %d times".formatted(stitch, count));
            }
        }

        @Override
        public int takes() {
            return stitch.takes() * count;
        }

        @Override
        public int leaves() {
            return stitch.leaves() * count;
        }

        @Override
        public int openYarnOvers() {
            return stitch == Stitch.YARN_OVER ? count : 0;
        }
    }

    /**
     * Several steps, {@code times} over.
     *
     * @throws IllegalArgumentException when times is below 1
     */
    record Repeat(List<Step> steps, int times) implements Step {
        public Repeat {
            steps = List.copyOf(steps);
            if (times < 1) {
                throw new IllegalArgumentException("a repeat is worked at least once, not %d times".formatted(times));
            }
        }

        @Override
        public int takes() {
            return times * steps.stream().mapToInt(Step::takes).sum();
        }

        @Override
        public int leaves() {
            return times * steps.stream().mapToInt(Step::leaves).sum();
        }

        @Override
        public int openYarnOvers() {
            return times * steps.stream().mapToInt(Step::openYarnOvers).sum();
        }
    }
}
