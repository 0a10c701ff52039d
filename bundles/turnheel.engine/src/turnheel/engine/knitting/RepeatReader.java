package turnheel.engine.knitting;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Line.Goal;
import turnheel.engine.instruction.Line.HowOften;
import turnheel.engine.instruction.Line.MeasuredPart;
import turnheel.engine.instruction.Line.Target;
import turnheel.engine.instruction.Sized;
import turnheel.engine.knitting.ExtentReader.Often;
import turnheel.engine.knitting.grammar.Instructions;
import turnheel.engine.knitting.grammar.Instructions.EndingContext;
import turnheel.engine.knitting.grammar.Instructions.HowOftenContext;
import turnheel.engine.knitting.grammar.Instructions.LengthContext;
import turnheel.engine.knitting.grammar.Instructions.MeasureContext;
import turnheel.engine.knitting.grammar.Instructions.RepeatRoundsContext;
import turnheel.engine.knitting.grammar.Instructions.WhichContext;

/** Rounds that are worked again, and lengths, out of their shapes. */
final class RepeatReader {

    private static final double MM_PER_INCH = 25.4;

    private final SizedReader sized;
    private final ExtentReader extents;

    RepeatReader(SizedReader sized, ExtentReader extents) {
        this.sized = sized;
        this.extents = extents;
    }

    Said said(RepeatRoundsContext repeat) {
        Target target = target(repeat.which());
        Optional<Target> ending = repeat.ending() == null ? Optional.empty() : ending(repeat.ending());
        HowOftenContext howOften = repeat.howOften();
        if (howOften == null) {
            return new Said.Again(target, new HowOften.More(Sized.all(1)), ending);
        }
        if (howOften.measure() != null || howOften.FOR() != null) {
            Optional<Sized<Integer>> rounds = Optional.ofNullable(howOften.sized()).map(sized::whole);
            return new Said.AgainFor(target, rounds, Optional.ofNullable(howOften.measure()).flatMap(this::goal));
        }
        return new Said.Again(target, howOften(howOften, repeat.WORK() != null), ending);
    }

    private HowOften howOften(HowOftenContext howOften, boolean work) {
        if (howOften.ALL_WORKED() != null) {
            return new HowOften.UntilAllWorked();
        }
        if (howOften.UNTIL() != null) {
            return new HowOften.UntilRemain(sized.whole(howOften.sized()));
        }
        if (howOften.EVERY() != null) {
            Sized<Integer> nth = howOften.sized() != null ? sized.whole(howOften.sized())
                    : Sized.all(howOften.OTHER() != null ? 2 : 1);
            Sized<Integer> times = howOften.times() == null ? Sized.all(1) : extents.often(howOften.times()).times();
            return new HowOften.Every(nth, times);
        }
        Often often = extents.often(howOften.times());
        boolean inAll = !often.more() && (work || howOften.times().IN_ALL() != null);
        return inAll ? new HowOften.InAll(often.times()) : new HowOften.More(often.times());
    }

    Target target(WhichContext which) {
        if (!which.NAME().isEmpty()) {
            return new Target.Named(which.NAME().stream().map(RepeatReader::name).toList());
        }
        Fabric fabric = which.ROW() != null ? Fabric.ROW : Fabric.ROUND;
        if (which.LAST() != null || which.THESE() != null) {
            return new Target.LastRounds(fabric, which.sized() == null ? Sized.all(1) : sized.whole(which.sized()));
        }
        List<Sized<Integer>> ranges = sized.ranges(which.ranges());
        return new Target.Numbered(fabric, ranges.getFirst(), ranges.getLast());
    }

    private static String name(TerminalNode node) {
        return ((ReadToken) node.getSymbol()).name();
    }

    /** A side tells nothing that the row itself does not. */
    private static Optional<Target> ending(EndingContext ending) {
        if (ending.NAME() != null) {
            return Optional.of(new Target.Named(List.of(name(ending.NAME()))));
        }
        if (ending.range() == null) {
            return Optional.empty();
        }
        Sized<Integer> number = Sized.all(SizedReader.one(ending.range().value(0)));
        return Optional.of(new Target.Numbered(ending.ROW() != null ? Fabric.ROW : Fabric.ROUND, number, number));
    }

    Optional<Goal> goal(MeasureContext measure) {
        Goal length = length(measure.length());
        boolean less = measure.getTokens(Instructions.LESS).stream()
                .anyMatch(token -> token.getSymbol().getTokenIndex() > measure.length().getStop().getTokenIndex());
        return Optional.of(less && length instanceof Goal.Measures measures ? new Goal.LessThanFoot(measures.lengthMm())
                : length instanceof Goal.Measures measures ? new Goal.Measures(part(measure), measures.lengthMm()) : length);
    }

    /** What is measured, by the words before the verb. */
    private static MeasuredPart part(MeasureContext measure) {
        for (ParseTree child : measure.children) {
            if (child instanceof TerminalNode node && node.getSymbol() instanceof ReadToken token) {
                String word = token.first().text();
                for (MeasuredPart part : MeasuredPart.values()) {
                    if (ReadingWords.ENGLISH.list("part-" + part.name().toLowerCase(Locale.ROOT)).contains(word)) {
                        return part;
                    }
                }
                if (token.getType() == Instructions.MEASURES) {
                    break;
                }
            }
        }
        return MeasuredPart.PIECE;
    }

    Goal length(LengthContext length) {
        return new Goal.Measures(MeasuredPart.PIECE, sized.measured(length.sized(0), unit(length.UNIT(0))));
    }

    static double unit(TerminalNode unit) {
        return switch (((ReadToken) unit.getSymbol()).first().text()) {
            case "cm" -> 10;
            case "mm" -> 1;
            default -> MM_PER_INCH;
        };
    }
}
