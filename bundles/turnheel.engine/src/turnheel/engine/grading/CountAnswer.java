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
     * @param perSize counts near the ideals that meet what can be met, so that the rest of the pattern can be seen
     * @param conflicts what stands in the way; at least one
     */
    record Unsolvable(List<Integer> perSize, List<Conflict> conflicts) implements CountAnswer {
        public Unsolvable {
            perSize = List.copyOf(perSize);
            conflicts = List.copyOf(conflicts);
        }

        /** Labels of the sizes in any of the conflicts. */
        List<String> sizes() {
            return conflicts.stream().flatMap(conflict -> conflict.sizes().stream()).distinct().toList();
        }
    }

    /** Why there are no counts. */
    sealed interface Conflict {

        /** Labels of the sizes that it concerns, in the order of the sizes. */
        List<String> sizes();

        /**
         * No count of any size meets these needs at once.
         *
         * @param needs a smallest such set: none with fewer needs excludes every count
         */
        record Excluding(List<String> sizes, List<Need> needs) implements Conflict {
            public Excluding {
                sizes = List.copyOf(sizes);
                needs = List.copyOf(needs);
            }
        }

        /**
         * One size has no count in its window.
         *
         * @param least lower end of the window
         * @param most upper end of the window
         * @param nearest the nearest count that meets the needs
         */
        record OutOfReach(String size, double least, double most, int nearest) implements Conflict {
            @Override
            public List<String> sizes() {
                return List.of(size);
            }
        }

        /** Neighbouring sizes, each with counts of its own, that have none which grow; no shorter run is without. */
        record Crowded(List<String> sizes) implements Conflict {
            public Crowded {
                sizes = List.copyOf(sizes);
            }
        }
    }
}
