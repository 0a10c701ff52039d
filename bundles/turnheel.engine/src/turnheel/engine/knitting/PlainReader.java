package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jdt.annotation.Nullable;
import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Line.Goal;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.knitting.grammar.Instructions;
import turnheel.engine.knitting.grammar.Instructions.AmountContext;
import turnheel.engine.knitting.grammar.Instructions.NounContext;
import turnheel.engine.knitting.grammar.Instructions.PlainContext;
import turnheel.engine.stitch.Stitch;

/** Knit, purl, slip or work, and how much: what the words say together. Made for one line. */
final class PlainReader {

    private final SizedReader sized;
    private final ExtentReader extents;
    private final RepeatReader lengths;

    PlainReader(SizedReader sized, ExtentReader extents) {
        this.sized = sized;
        this.extents = extents;
        this.lengths = new RepeatReader(sized, extents);
    }

    /** What was found in one piece. */
    private static final class Parts {
        private @Nullable Until until;
        private @Nullable Sized<Integer> count;
        private @Nullable NounContext noun;
        private Optional<Goal> goal = Optional.empty();
        /** Whether all of something is meant, every stitch or every round. */
        private boolean whole;
        private boolean pattern;
        private final List<Integer> how = new ArrayList<>();

        boolean has(int token) {
            return how.contains(token);
        }
    }

    /** @param alone whether the sentence says nothing else, so that {@code K.} means all of it */
    List<Said> said(PlainContext plain, boolean alone) {
        Parts parts = new Parts();
        parts.pattern = plain.manner().stream().anyMatch(manner -> manner.PATTERN() != null);
        if (!plain.THROUGH_BACK().isEmpty()) {
            parts.how.add(Instructions.THROUGH_BACK);
        }
        for (AmountContext amount : plain.amount()) {
            collect(amount, parts);
        }
        NounContext noun = parts.noun;
        Fabric fabric = noun != null && noun.ROW() != null ? Fabric.ROW : Fabric.ROUND;
        boolean rounds = noun != null && (noun.ROUND() != null || noun.ROW() != null);
        if (rounds || parts.goal.isPresent()) {
            Sized<Integer> count = parts.count;
            if (rounds && count == null && parts.goal.isEmpty()) {
                throw new Unreadable("how many rounds?");
            }
            return List.of(new Said.Plain(rounds && count != null ? Optional.of(count) : Optional.empty(), parts.goal,
                    parts.pattern, fabric));
        }
        return List.of(new Said.Do(instruction(verb(plain), parts, alone)));
    }

    private void collect(AmountContext amount, Parts parts) {
        for (int token : List.of(Instructions.THROUGH_BACK, Instructions.WITH_WRAPS, Instructions.WITH_TWIN,
                Instructions.WITH_EDGE, Instructions.CLOSING, Instructions.WITH_WASTE, Instructions.EVEN)) {
            if (SizedReader.has(amount, token)) {
                parts.how.add(token);
            }
        }
        parts.pattern |= amount.manner().stream().anyMatch(manner -> manner.PATTERN() != null);
        parts.whole |= !amount.ALL().isEmpty() || !amount.EACH().isEmpty() || !amount.EVERY().isEmpty()
                || !amount.REMAIN().isEmpty();
        if (amount.to() != null) {
            parts.until = once(parts.until, extents.until(amount.to()));
        }
        if (amount.AROUND() != null) {
            parts.until = once(parts.until, new Until.End());
        }
        if (amount.measure() != null) {
            parts.goal = lengths.goal(amount.measure());
        }
        if (amount.sized() != null) {
            parts.count = once(parts.count, sized.whole(amount.sized()));
        } else if (!amount.NEXT().isEmpty() || !amount.LAST().isEmpty()) {
            parts.count = once(parts.count, Sized.all(1));
        }
        if (amount.length() != null) {
            parts.goal = Optional.of(lengths.length(amount.length()));
        }
        NounContext noun = amount.noun();
        if (noun != null && noun.length() != null) {
            parts.goal = Optional.of(lengths.length(noun.length()));
        } else if (noun != null) {
            parts.noun = once(parts.noun, noun);
        }
    }

    private static <T> T once(@Nullable T before, T now) {
        if (before != null) {
            throw new Unreadable("two amounts");
        }
        return now;
    }

    private static Stitch verb(PlainContext plain) {
        return plain.PURL() != null ? Stitch.PURL : plain.SLIP() != null ? Stitch.SLIP : Stitch.KNIT;
    }

    private static Instruction instruction(Stitch verb, Parts parts, boolean alone) {
        NounContext noun = parts.noun;
        Sized<Integer> count = parts.count;
        boolean held = noun != null && noun.HELD() != null;
        if (held) {
            return count == null ? new Instruction.WorkTo(verb, new Until.Held()) : new Instruction.WorkHeld(verb, count);
        }
        if (parts.has(Instructions.WITH_WASTE) && count != null) {
            return new Instruction.WasteYarn(count);
        }
        Stitch stitch = stitch(verb, parts, noun);
        Until until = parts.until;
        if (until != null) {
            if (count != null || noun != null) {
                throw new Unreadable("a number and a place");
            }
            return parts.has(Instructions.CLOSING) ? new Instruction.CloseTo(verb, until)
                    : new Instruction.WorkTo(stitch, until);
        }
        if (count != null) {
            return new Instruction.Work(stitch, count);
        }
        if (noun != null && noun.STITCHES() == null) {
            // the wrapped stitch, the double stitch
            return new Instruction.Work(stitch, Sized.all(1));
        }
        if (parts.whole || alone || parts.pattern) {
            return parts.has(Instructions.CLOSING) ? new Instruction.CloseTo(verb, new Until.End())
                    : new Instruction.WorkTo(stitch, new Until.End());
        }
        throw new Unreadable("how many stitches?");
    }

    private static Stitch stitch(Stitch verb, Parts parts, @Nullable NounContext noun) {
        boolean purl = verb == Stitch.PURL;
        if (noun != null && noun.FREED() != null) {
            return Stitch.FREED_LOOP;
        }
        if (noun != null && noun.DOUBLE_STITCH() != null) {
            return purl ? Stitch.PURL_DOUBLE : Stitch.KNIT_DOUBLE;
        }
        if (parts.has(Instructions.WITH_TWIN) || noun != null && noun.TWIN_STITCH() != null) {
            return purl ? Stitch.PURL_TWIN : Stitch.KNIT_TWIN;
        }
        if (parts.has(Instructions.WITH_WRAPS) || noun != null && noun.WRAPPED() != null) {
            return purl ? Stitch.PURL_WITH_WRAPS : Stitch.KNIT_WITH_WRAPS;
        }
        if (parts.has(Instructions.WITH_EDGE)) {
            return Stitch.KNIT_WITH_EDGE;
        }
        if (parts.has(Instructions.THROUGH_BACK)) {
            return purl ? Stitch.PURL_THROUGH_BACK : Stitch.KNIT_THROUGH_BACK;
        }
        return verb;
    }
}
