package turnheel.engine.instruction;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A sentence of a written pattern that tells a knitter to do something.
 *
 * <p>Labels are as they are printed and belong to their section: numbered rounds and rows, or names such as {@code Inc
 * rnd}.
 */
public sealed interface Line {

    /** The sizes that it is for, by their place in the pattern's order; empty: all. */
    Set<Integer> onlySizes();

    /** The stitches that the text states after it, if it states any. */
    Optional<Sized<Integer>> stated();

    /** Whether something is worked in the round or flat. */
    enum Fabric {
        ROUND, ROW
    }

    /** Which side faces in a flat row. */
    enum Side {
        RIGHT, WRONG
    }

    /**
     * How a round is called.
     *
     * @param from its number in its section, for each size; empty where it has a name instead
     * @param to the last number where one line covers several rounds; the same as {@code from} else
     * @param name a name that the text refers to, as in {@code Inc rnd}; empty where it has none
     * @param side the side of a flat row, where the text tells
     */
    record Label(Fabric fabric, Optional<Sized<Integer>> from, Optional<Sized<Integer>> to, Optional<String> name,
            Optional<Side> side) {
    }

    /** What is worked, once or for each of the rounds that its label covers; without a label, between two rounds. */
    record Worked(Optional<Label> label, List<Instruction> instructions, Optional<Sized<Integer>> stated,
            Set<Integer> onlySizes) implements Line {
        public Worked {
            instructions = List.copyOf(instructions);
            onlySizes = Set.copyOf(onlySizes);
        }
    }

    /**
     * Earlier rounds are worked again.
     *
     * @param ending the round of the last time after which the work stops; empty: the last one of the target
     */
    record RepeatRounds(Target target, HowOften howOften, Optional<Target> ending, Optional<Sized<Integer>> stated,
            Set<Integer> onlySizes) implements Line {
        public RepeatRounds {
            onlySizes = Set.copyOf(onlySizes);
        }

        /** To the end of the target every time. */
        public RepeatRounds(Target target, HowOften howOften, Optional<Sized<Integer>> stated, Set<Integer> onlySizes) {
            this(target, howOften, Optional.empty(), stated, onlySizes);
        }
    }

    /** Which rounds are worked again. */
    sealed interface Target {
        /** By number, as in {@code rep rnds 3-4}. */
        record Numbered(Fabric fabric, Sized<Integer> from, Sized<Integer> to) implements Target {
        }

        /** By name, in this order, as in {@code rep inc rnd and closing rnd}. */
        record Named(List<String> names) implements Target {
            public Named {
                names = List.copyOf(names);
            }
        }

        /** The rounds just worked, as in {@code rep the last 2 rnds}. */
        record LastRounds(Fabric fabric, Sized<Integer> rounds) implements Target {
        }
    }

    /** How often rounds are worked again. */
    sealed interface HowOften {
        /** So many times more than before. */
        record More(Sized<Integer> times) implements HowOften {
        }

        /** So many times with the first. */
        record InAll(Sized<Integer> times) implements HowOften {
        }

        /** So many times more, each after {@code nth} − 1 plain rounds, as in {@code every 4th rnd 6 more times}. */
        record Every(Sized<Integer> nth, Sized<Integer> times) implements HowOften {
        }

        /** Until so many stitches are on the needle. */
        record UntilRemain(Sized<Integer> stitches) implements HowOften {
        }

        /** Until no gap and no stitch that a turn marked is left. */
        record UntilAllWorked() implements HowOften {
        }
    }

    /**
     * Rounds without shaping: {@code k 20 rnds}, or {@code work even until foot measures 18 cm}.
     *
     * @param rounds how many; empty when only a length is told
     * @param goal the length told, if any
     * @param repeatable which numbered rounds it repeats, as in {@code rep rnds 1-2 for 18 rnds}; empty: plain, or as
     *     set
     * @param asSet whether the stitches are worked as they were before, as in {@code work 20 rnds even as set}
     * @param fabric whether it is worked in rounds or in flat rows
     */
    record Even(Optional<Sized<Integer>> rounds, Optional<Goal> goal, Optional<Target> repeatable, boolean asSet,
            Optional<Sized<Integer>> stated, Set<Integer> onlySizes, Fabric fabric) implements Line {
        public Even {
            onlySizes = Set.copyOf(onlySizes);
        }

        /** In the round. */
        public Even(Optional<Sized<Integer>> rounds, Optional<Goal> goal, Optional<Target> repeatable, boolean asSet,
                Optional<Sized<Integer>> stated, Set<Integer> onlySizes) {
            this(rounds, goal, repeatable, asSet, stated, onlySizes, Fabric.ROUND);
        }
    }

    /** The length at which rounds without shaping end. */
    sealed interface Goal {
        /** Measured in mm on what is knitted so far, from the place that the text names. */
        record Measures(MeasuredPart part, Sized<Double> lengthMm) implements Goal {
        }

        /** So many mm less than the foot of the person who will wear it. */
        record LessThanFoot(Sized<Double> lessMm) implements Goal {
        }
    }

    /** What is measured. */
    enum MeasuredPart {
        /** From the tip of the toe. */
        FOOT,
        FOOT_FROM_HEEL,
        /** From the opening that is left for a heel. */
        FOOT_FROM_OPENING,
        /** From the heel. */
        LEG,
        LEG_FROM_CUFF, CUFF,
        /** From its beginning. */
        PIECE
    }

    /** A heading: labels before it are not meant by what follows. */
    record Section(String title) implements Line {
        @Override
        public Set<Integer> onlySizes() {
            return Set.of();
        }

        @Override
        public Optional<Sized<Integer>> stated() {
            return Optional.empty();
        }
    }

    /** The number of rounds that a label covers in a size; empty where the size has none of them. */
    static OptionalInt rounds(Label label, int size) {
        Optional<Integer> from = label.from().flatMap(number -> number.get(size));
        Optional<Integer> to = label.to().flatMap(number -> number.get(size));
        if (label.from().isEmpty()) {
            return OptionalInt.of(1);
        }
        return from.isPresent() && to.isPresent() ? OptionalInt.of(to.get() - from.get() + 1) : OptionalInt.empty();
    }
}
