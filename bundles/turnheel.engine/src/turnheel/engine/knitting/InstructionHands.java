package turnheel.engine.knitting;

import java.util.List;
import java.util.Optional;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Instruction.CastOnManner;
import turnheel.engine.instruction.Instruction.MarkerAction;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.query.Check;
import turnheel.engine.stitch.Stitch;

/** Does the pieces of a round on a needle, for one size. */
final class InstructionHands {

    private final Needle needle;
    private final Hands hands;
    private final Places places;
    private final int size;

    InstructionHands(Needle needle, Hands hands, int size) {
        this.needle = needle;
        this.hands = hands;
        this.places = new Places(needle, size);
        this.size = size;
    }

    Places places() {
        return places;
    }

    void work(List<Instruction> instructions) {
        for (Instruction instruction : instructions) {
            work(instruction);
        }
    }

    private void work(Instruction instruction) {
        needle.look(1);
        switch (instruction) {
            case Instruction.Work(var stitch, var count) -> count(count).ifPresent(times -> hands.work(stitch, times));
            case Instruction.WorkTo(var stitch, var until) -> workTo(stitch, until);
            case Instruction.CloseTo(var stitch, var until) -> hands.close(ahead(until));
            case Instruction.Times(var body, var times) -> count(times).ifPresent(often -> repeat(body, often));
            case Instruction.RepeatTo(var body, var until) -> repeatTo(body, until);
            case Instruction.RepeatMore(var body, var more) -> count(more).ifPresent(often -> repeat(body, often + 1));
            case Instruction.Marker(var action) -> marker(action);
            case Instruction.MarkersAfterEvery(var stitches) -> count(stitches).ifPresent(new Markers(needle)::markEvery);
            case Instruction.CastOn(var manner, var stitches) -> count(stitches).ifPresent(loops -> castOn(manner, loops));
            case Instruction.JoinInRound() -> needle.joinInRound();
            case Instruction.PickUp(var stitches, var edge) ->
                count(stitches).ifPresent(times -> hands.work(Stitch.PICK_UP_AND_KNIT, times));
            // the loops that it frees are told where they are worked
            case Instruction.TakeOut takeOut -> { }
            case Instruction.Hold(var stitches) -> count(stitches).ifPresent(new Holding(needle)::hold);
            case Instruction.HoldPart(var which, var stitches) -> count(stitches).ifPresent(loops -> {
                switch (which) {
                    case WORKED -> new Holding(needle).holdWorked(loops);
                    case LAST -> new Holding(needle).holdLast(loops);
                }
            });
            case Instruction.Over(var body, var stitches) -> over(body, ahead(stitches));
            case Instruction.WorkOnlyOn(var stitches, var others) -> count(stitches).ifPresent(loops -> {
                new Holding(needle).workOnlyOn(loops);
                others.flatMap(sized -> sized.get(size)).ifPresent(new Holding(needle)::checkHeld);
            });
            case Instruction.WorkHeld(var stitch, var stitches) -> count(stitches).ifPresent(loops -> {
                new Holding(needle).takeHeld(loops);
                hands.work(stitch, loops);
            });
            case Instruction.StartHere() -> needle.startHere();
            case Instruction.WasteYarn(var stitches) ->
                count(stitches).ifPresent(times -> hands.work(Stitch.KNIT, times));
        }
    }

    /** Empty where the size does not have the step. */
    private Optional<Integer> count(Sized<Integer> sized) {
        Optional<Integer> count = sized.get(size);
        if (count.isPresent() && count.get() > Effort.MOST_LOOPS) {
            throw new Misfit(Check.TEXT_TOO_LARGE, Effort.MOST_LOOPS, count.get());
        }
        return count;
    }

    private int ahead(Until until) {
        int ahead = places.ahead(until);
        if (until instanceof Until.Held) {
            new Holding(needle).takeHeld(ahead);
        }
        return ahead;
    }

    private void workTo(Stitch stitch, Until until) {
        int ahead = ahead(until);
        int each = Math.max(1, stitch.takes());
        if (ahead % each != 0) {
            needle.misfit(Check.TEXT_REPEAT, each, ahead % each);
        }
        if (ahead > 0) {
            hands.work(stitch, ahead / each);
        }
    }

    private void repeat(List<Instruction> body, int times) {
        for (int i = 0; i < times; i++) {
            work(body);
        }
    }

    /** Until so many loops are left as lie beyond the place now; what a repeat takes must come out even there. */
    private void repeatTo(List<Instruction> body, Until until) {
        int stop = needle.left().loops() - ahead(until);
        int before;
        do {
            before = needle.left().loops();
            try {
                work(body);
            } catch (Misfit misfit) {
                if (misfit.check() == Check.TEXT_ROUND && !needle.isFlat()) {
                    throw new Misfit(Check.TEXT_REPEAT, "more than " + (before - stop), Integer.toString(before - stop));
                }
                throw misfit;
            }
            if (needle.left().loops() < stop) {
                needle.misfit(Check.TEXT_REPEAT, before - needle.left().loops(), before - stop);
            }
        } while (needle.left().loops() > stop && needle.left().loops() < before);
        if (needle.left().loops() > stop) {
            needle.misfit(Check.TEXT_ROUND, needle.loops(), needle.right().loops());
        }
    }

    private void over(List<Instruction> body, int loops) {
        Runs beyond = new Holding(needle).workOver(loops);
        work(body);
        new Holding(needle).goOnWith(beyond);
    }

    private void marker(MarkerAction action) {
        switch (action) {
            case PLACE -> new Markers(needle).placeMarker();
            case SLIP -> new Markers(needle).slipMarker();
            case REMOVE -> new Markers(needle).removeMarker();
            case REMOVE_ALL -> new Markers(needle).removeMarkers();
        }
    }

    private void castOn(CastOnManner manner, int loops) {
        if (needle.isBetweenRows()) {
            needle.castOn(loops);
        } else {
            hands.work(Stitch.CAST_ON, loops);
        }
    }
}
