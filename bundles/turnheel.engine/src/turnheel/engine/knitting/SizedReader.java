package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.antlr.v4.runtime.ParserRuleContext;
import turnheel.engine.instruction.Sized;
import turnheel.engine.knitting.grammar.Instructions.ListContext;
import turnheel.engine.knitting.grammar.Instructions.RangeContext;
import turnheel.engine.knitting.grammar.Instructions.RangesContext;
import turnheel.engine.knitting.grammar.Instructions.SizedContext;
import turnheel.engine.knitting.grammar.Instructions.ValueContext;

/** Values for each size out of their shapes. */
final class SizedReader {

    private final int sizes;
    private final Set<Integer> onlySizes;

    /** @param onlySizes the sizes that the line is for, by their place; empty: all. It may list values for those alone */
    SizedReader(int sizes, Set<Integer> onlySizes) {
        this.sizes = sizes;
        this.onlySizes = new TreeSet<>(onlySizes);
    }

    Sized<Integer> whole(SizedContext sized) {
        List<Optional<Integer>> values = values(sized).stream().map(SizedReader::whole).toList();
        return sized(values, sized);
    }

    /** Whole or not, times a unit. */
    Sized<Double> measured(SizedContext sized, double unit) {
        List<Optional<Double>> values = values(sized).stream()
                .map(value -> number(value).map(number -> number * unit)).toList();
        return sized(values, sized);
    }

    private static List<ValueContext> values(SizedContext sized) {
        List<ValueContext> values = new ArrayList<>(sized.value());
        ListContext list = sized.list();
        if (list != null) {
            values.addAll(list.value());
        }
        return values;
    }

    /** The first and the last number of each range; the two lists are alike where a range is one number. */
    List<Sized<Integer>> ranges(RangesContext ranges) {
        List<Optional<Integer>> from = new ArrayList<>();
        List<Optional<Integer>> to = new ArrayList<>();
        for (RangeContext range : ranges.range()) {
            from.add(whole(range.value(0)));
            to.add(whole(range.value(range.value().size() - 1)));
        }
        return List.of(sized(from, ranges), sized(to, ranges));
    }

    private static Optional<Integer> whole(ValueContext value) {
        Optional<Double> number = number(value);
        if (number.isPresent() && number.get() != Math.rint(number.get())) {
            throw new Unreadable("%s is no count".formatted(number.get()));
        }
        return number.map(Double::intValue);
    }

    private static Optional<Double> number(ValueContext value) {
        return value.NUMBER() == null ? Optional.empty()
                : Optional.of(((ReadToken) value.NUMBER().getSymbol()).number());
    }

    private <T> Sized<T> sized(List<Optional<T>> values, ParserRuleContext context) {
        if (values.size() == 1 || values.size() == sizes) {
            return values.size() == 1 ? new Sized<>(values) : Sized.ofOptionals(values);
        }
        if (values.size() == onlySizes.size()) {
            List<Optional<T>> all = new ArrayList<>(Collections.nCopies(sizes, Optional.<T>empty()));
            int next = 0;
            for (int size : onlySizes) {
                all.set(size, values.get(next));
                next++;
            }
            return new Sized<>(all);
        }
        throw new NotSized(span(context), values.size());
    }

    static Span span(ParserRuleContext context) {
        Word first = ((ReadToken) context.getStart()).first();
        Word last = ((ReadToken) context.getStop()).last();
        return new Span(first.line(), first.from(), last.line() == first.line() ? last.to() : first.to());
    }

    /** The value of a single number. */
    static int one(ValueContext value) {
        return whole(value).orElseThrow(() -> new Unreadable("a dash is no number"));
    }

    /** Whether a token of that kind is among the children. */
    static boolean has(ParserRuleContext context, int token) {
        return !context.getTokens(token).isEmpty();
    }
}
