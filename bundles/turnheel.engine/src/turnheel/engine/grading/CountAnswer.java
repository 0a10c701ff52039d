package turnheel.engine.grading;

import java.util.List;

/** What the count solver found. Having no answer is an answer: it is shown, not thrown. */
sealed interface CountAnswer {

    /** The count of every size, in the order of the sizes. */
    List<Integer> perSize();

    /** The best counts, all needs met. */
    record Counts(List<Integer> perSize) implements CountAnswer {
        public Counts {
            perSize = List.copyOf(perSize);
        }
    }

    /**
     * No counts meet all needs and grow with the foot.
     *
     * @param perSize the nearest count of each size alone, so that the rest of the pattern can still be seen
     * @param clashing labels of the shortest run of neighbouring sizes that has no counts
     */
    record Unsolvable(List<Integer> perSize, List<String> clashing) implements CountAnswer {
        public Unsolvable {
            perSize = List.copyOf(perSize);
            clashing = List.copyOf(clashing);
        }
    }
}
