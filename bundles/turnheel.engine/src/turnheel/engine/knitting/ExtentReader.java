package turnheel.engine.knitting;

import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.instruction.Until.Mark;
import turnheel.engine.knitting.grammar.Instructions.ExtentContext;
import turnheel.engine.knitting.grammar.Instructions.MarkContext;
import turnheel.engine.knitting.grammar.Instructions.PlaceContext;
import turnheel.engine.knitting.grammar.Instructions.TimesContext;
import turnheel.engine.knitting.grammar.Instructions.ToContext;

/** How far, or how often, out of its shape. */
final class ExtentReader {

    /** How often something is worked: more times after the first, or all in all. */
    record Often(Sized<Integer> times, boolean more) {
    }

    private final SizedReader sized;

    ExtentReader(SizedReader sized) {
        this.sized = sized;
    }

    /** The place; the end where none is told. */
    Until until(ExtentContext extent) {
        return extent.to() == null ? new Until.End() : until(extent.to());
    }

    Until until(ToContext to) {
        PlaceContext place = to.place();
        if (place.REMAIN() != null) {
            return new Until.Last(sized.whole(place.sized()));
        }
        if (place.LAST() != null) {
            return new Until.Last(place.sized() == null ? Sized.all(1) : sized.whole(place.sized()));
        }
        if (place.BEFORE() != null) {
            Sized<Integer> stitches = place.sized() == null ? Sized.all(0) : sized.whole(place.sized());
            return at(place.mark(), stitches);
        }
        return place.mark() == null ? new Until.End() : at(place.mark(), Sized.all(0));
    }

    private static Until at(MarkContext mark, Sized<Integer> stitches) {
        if (mark.MARKER() != null) {
            return new Until.Marker(stitches);
        }
        if (mark.GAP() != null) {
            return new Until.Gap(stitches);
        }
        if (mark.END() != null) {
            return new Until.Last(stitches);
        }
        Mark kind = mark.WRAPPED() != null ? Mark.WRAPPED : mark.TWIN_STITCH() != null ? Mark.TWIN : Mark.DOUBLE;
        return new Until.TurnedStitch(kind, stitches);
    }

    Often often(TimesContext times) {
        boolean more = !times.MORE().isEmpty();
        if (times.ONCE() != null) {
            return new Often(Sized.all(1), more);
        }
        if (times.TWICE() != null) {
            return new Often(Sized.all(2), more);
        }
        return new Often(sized.whole(times.sized()), more);
    }
}
