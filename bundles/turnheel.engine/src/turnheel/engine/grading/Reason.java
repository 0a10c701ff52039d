package turnheel.engine.grading;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import turnheel.engine.design.Quantity;
import turnheel.engine.stitch.Stitch;
import turnheel.engine.term.Key;
import turnheel.engine.term.Term;

/** Why a number is what it is. */
public sealed interface Reason {

    /** The keys that this number was made from, in the order of its rule. */
    default List<Key> basis() {
        return switch (this) {
            case Given given -> List.of();
            case Derived derived -> List.copyOf(derived.basisValues().keySet());
            case Chosen chosen -> chosen.keys();
            case Fitted fitted -> fitted.keys();
            case Counted counted -> counted.keys();
            case Overridden overridden -> List.of();
        };
    }

    /** Somebody wrote it down, as {@code quantity}. */
    record Given(Quantity quantity) implements Reason {
    }

    /**
     * A rule gave it.
     *
     * @param basisValues the values that the rule read, in its order
     * @param unrounded what the rule rounds, where it rounds last of all
     */
    record Derived(Term rule, Map<Key, Double> basisValues, OptionalDouble unrounded) implements Reason {
        public Derived {
            basisValues = Collections.unmodifiableMap(new LinkedHashMap<>(basisValues));
        }
    }

    /**
     * The count solver picked it.
     *
     * @param ideal the unrounded count that was wished for
     * @param fewest lower end of the window around the ideal
     * @param most upper end of the window
     * @param needs what the parts need of the count
     * @param keys what ideal and needs were made from
     */
    record Chosen(double ideal, double fewest, double most, List<Need> needs, List<Key> keys) implements Reason {
        public Chosen {
            needs = List.copyOf(needs);
            keys = List.copyOf(keys);
        }
    }

    /**
     * Of several values the one that brings the part nearest to its usual depth.
     *
     * @param ideal rounds that the part would have if it could have any number
     * @param reached rounds that this value gives
     * @param keys what the ideal was made from
     */
    record Fitted(double ideal, double reached, List<Key> keys) implements Reason {
        public Fitted {
            keys = List.copyOf(keys);
        }
    }

    /**
     * Counted from the rounds.
     *
     * @param stitches how often each stitch is worked, and how much one of it counts
     * @param keys what the rounds were made from
     */
    record Counted(Map<Stitch, Share> stitches, List<Key> keys) implements Reason {
        public Counted {
            stitches = Collections.unmodifiableMap(new LinkedHashMap<>(stitches));
            keys = List.copyOf(keys);
        }

        /** A kind of stitch among what was counted. */
        public record Share(long times, double each) {
            public double sum() {
                return times * each;
            }
        }

        /** What the stitches come to. */
        public double sum() {
            return stitches.values().stream().mapToDouble(Share::sum).sum();
        }
    }

    /**
     * The designer set it for this size.
     *
     * @param instead what the rule or the solver would have given, where it gives anything
     */
    record Overridden(Quantity quantity, Optional<Cell> instead) implements Reason {
    }
}
