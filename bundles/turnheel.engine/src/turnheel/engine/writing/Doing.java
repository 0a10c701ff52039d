package turnheel.engine.writing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Function;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.stitch.Stitch;

/** An instruction as it is told to some of the sizes; empty where none of them does it. */
interface Doing extends Function<SortedSet<Integer>, Optional<Instruction>> {

    static Doing of(Instruction instruction) {
        return sizes -> Optional.of(instruction);
    }

    /** An instruction with a count; sizes in which it is 0 do not do it. */
    static Doing counted(EachSize count, Function<Sized<Integer>, Instruction> instruction) {
        return sizes -> count.ifAny().told(sizes).map(instruction);
    }

    static Doing work(Stitch stitch) {
        return work(stitch, 1);
    }

    static Doing work(Stitch stitch, int count) {
        return of(new Instruction.Work(stitch, Sized.all(count)));
    }

    static Doing work(Stitch stitch, EachSize count) {
        return counted(count, stitches -> new Instruction.Work(stitch, stitches));
    }

    static Doing toEnd(Stitch stitch) {
        return of(new Instruction.WorkTo(stitch, new Until.End()));
    }

    static Doing toLast(Stitch stitch, EachSize stitches) {
        return counted(stitches, last -> new Instruction.WorkTo(stitch, new Until.Last(last)));
    }

    /** To so many stitches before the next marker. */
    static Doing toMarker(Stitch stitch, int before) {
        return of(new Instruction.WorkTo(stitch, new Until.Marker(Sized.all(before))));
    }

    /** To so many stitches before the next gap. */
    static Doing toGap(Stitch stitch, int before) {
        return of(new Instruction.WorkTo(stitch, new Until.Gap(Sized.all(before))));
    }

    /** To the next stitch that a turn marked. */
    static Doing toTurned(Stitch stitch, Until.Mark mark) {
        return of(new Instruction.WorkTo(stitch, new Until.TurnedStitch(mark, Sized.all(0))));
    }

    static Doing slipMarker() {
        return of(new Instruction.Marker(Instruction.MarkerAction.SLIP));
    }

    static Doing startHere() {
        return of(new Instruction.StartHere());
    }

    /** From an asterisk on, repeated to the end of the round. */
    static Doing repeated(Doing... body) {
        return repeated(new Until.End(), body);
    }

    /** From an asterisk on, repeated to a place. */
    static Doing repeated(Until until, Doing... body) {
        return sizes -> {
            List<Instruction> done = told(sizes, body);
            return done.isEmpty() ? Optional.empty() : Optional.of(new Instruction.RepeatTo(done, until));
        };
    }

    /** All that some of the sizes do, in this order. */
    static List<Instruction> told(SortedSet<Integer> sizes, Doing... doings) {
        return Arrays.stream(doings).flatMap(doing -> doing.apply(sizes).stream()).toList();
    }
}
