package turnheel.engine.knitting;

import java.util.Optional;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Line.Goal;
import turnheel.engine.instruction.Line.HowOften;
import turnheel.engine.instruction.Line.Target;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;

/** What a piece of a sentence says. */
sealed interface Said {

    /** To do something within a round. */
    record Do(Instruction instruction) implements Said {
    }

    /** To do what another round tells. */
    record As(Target target) implements Said {
    }

    /**
     * To work a round of a stitch pattern over some stitches.
     *
     * @param number which round; empty: the next one, as set
     */
    record Over(String pattern, Optional<Integer> number, Until stitches) implements Said {
    }

    /** To work rounds again. */
    record Again(Target target, HowOften howOften, Optional<Target> ending) implements Said {
    }

    /** To work rounds without shaping. */
    record Plain(Optional<Sized<Integer>> rounds, Optional<Goal> goal, boolean asSet, Fabric fabric) implements Said {
    }

    /** To work rounds again for so many rounds, or up to a length. */
    record AgainFor(Target target, Optional<Sized<Integer>> rounds, Optional<Goal> goal) implements Said {
    }
}
