package turnheel.engine.writing;

import static turnheel.engine.writing.Phrase.filled;
import static turnheel.engine.writing.Phrase.words;

import java.util.List;
import java.util.Optional;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.stitch.Stitch;
import turnheel.engine.wording.Vocabulary;

/** What is done within a round, in words. */
final class InstructionText {

    private final Vocabulary vocabulary;

    InstructionText(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** All of them in a row: stitches parted by commas, whole clauses by semicolons. */
    List<Piece> of(List<Instruction> instructions) {
        Phrase row = new Phrase();
        for (int i = 0; i < instructions.size(); i++) {
            if (i > 0) {
                boolean clause = isClause(instructions.get(i - 1)) || isClause(instructions.get(i));
                row.add(vocabulary.phrase(clause ? "separator.clause" : "separator"));
            }
            row.add(of(instructions.get(i)));
        }
        return row.pieces();
    }

    private static boolean isClause(Instruction instruction) {
        return switch (instruction) {
            case Instruction.CastOn castOn -> true;
            case Instruction.JoinInRound join -> true;
            case Instruction.TakeOut takeOut -> true;
            case Instruction.MarkersAfterEvery markers -> true;
            case Instruction.Hold hold -> true;
            case Instruction.HoldPart hold -> true;
            case Instruction.Over over -> false;
            case Instruction.WorkOnlyOn only -> true;
            case Instruction.StartHere start -> true;
            case Instruction.RepeatTo repeat -> false;
            case Instruction.RepeatMore repeat -> false;
            case Instruction.WasteYarn wasteYarn -> true;
            case Instruction.Work work -> work.stitch() == Stitch.GRAFT || work.stitch() == Stitch.DRAW_CLOSED;
            case Instruction.WorkTo workTo -> workTo.stitch() == Stitch.BIND_OFF || workTo.stitch() == Stitch.SEW_DOWN;
            case Instruction.CloseTo closeTo -> false;
            case Instruction.Times times -> false;
            case Instruction.Marker marker -> false;
            case Instruction.PickUp pickUp -> false;
            case Instruction.WorkHeld workHeld -> false;
        };
    }

    private List<Piece> of(Instruction instruction) {
        return switch (instruction) {
            case Instruction.Work(Stitch stitch, Sized<Integer> count) -> numbered("stitch." + stitch, count);
            case Instruction.WorkTo(Stitch stitch, Until until) ->
                filled(vocabulary.phrase("to." + stitch), until(until));
            case Instruction.CloseTo(Stitch stitch, Until until) ->
                filled(vocabulary.phrase("close." + stitch), until(until));
            case Instruction.Times(List<Instruction> body, Sized<Integer> times) when isOne(times) -> of(body);
            case Instruction.Times(List<Instruction> body, Sized<Integer> times) ->
                filled(vocabulary.phrase("repeat.times"), of(body), number(times));
            case Instruction.RepeatTo(List<Instruction> body, Until until) ->
                filled(vocabulary.phrase("repeat.to"), of(body), until(until));
            case Instruction.RepeatMore(List<Instruction> body, Sized<Integer> more) ->
                filled(counted(vocabulary, "repeat.moreTimes", more), of(body), number(more));
            case Instruction.Marker(Instruction.MarkerAction action) -> words(vocabulary.phrase("marker." + action));
            case Instruction.MarkersAfterEvery(Sized<Integer> stitches) -> numbered("markersAfterEvery", stitches);
            case Instruction.CastOn(Instruction.CastOnManner manner, Sized<Integer> stitches) ->
                filled(vocabulary.phrase(castOn(manner, stitches)), number(stitches),
                        number(stitches.map(all -> all / 2)));
            case Instruction.JoinInRound join -> words(vocabulary.phrase("join"));
            case Instruction.PickUp(Sized<Integer> stitches, Instruction.Edge edge) ->
                numbered("pickUp." + edge, stitches);
            case Instruction.TakeOut(Instruction.Thread thread) -> words(vocabulary.phrase("takeOut." + thread));
            case Instruction.Hold(Sized<Integer> stitches) -> numbered("hold", stitches);
            case Instruction.HoldPart(Instruction.HoldWhich which, Sized<Integer> stitches) ->
                numbered("hold." + which, stitches);
            case Instruction.Over(List<Instruction> body, Until stitches) ->
                filled(vocabulary.phrase("over"), of(body), until(stitches));
            case Instruction.WorkOnlyOn(Sized<Integer> stitches, Optional<Sized<Integer>> others) -> others
                    .map(held -> filled(vocabulary.phrase("workOnlyOn.others"), number(stitches), number(held)))
                    .orElseGet(() -> numbered("workOnlyOn", stitches));
            case Instruction.WorkHeld(Stitch stitch, Sized<Integer> stitches) ->
                numbered("workHeld." + stitch, stitches);
            case Instruction.StartHere start -> words(vocabulary.phrase("startHere"));
            case Instruction.WasteYarn(Sized<Integer> stitches) -> numbered("wasteYarn", stitches);
        };
    }

    /** An odd count has no halves to tell of. */
    private static String castOn(Instruction.CastOnManner manner, Sized<Integer> stitches) {
        boolean even = stitches.values().stream().allMatch(count -> count.filter(all -> all % 2 != 0).isEmpty());
        return "castOn." + manner + (manner == Instruction.CastOnManner.CLOSED && even ? ".halves" : "");
    }

    private List<Piece> until(Until until) {
        return switch (until) {
            case Until.End end -> words(vocabulary.phrase("until.END"));
            case Until.Next(Sized<Integer> stitches) -> numbered("until.NEXT", stitches);
            case Until.Held held -> words(vocabulary.phrase("until.HELD"));
            case Until.Last(Sized<Integer> stitches) -> numbered("until.LAST", stitches);
            case Until.Marker(Sized<Integer> stitches) -> before("until.MARKER", stitches);
            case Until.Gap(Sized<Integer> stitches) -> before("until.GAP", stitches);
            case Until.TurnedStitch(Until.Mark mark, Sized<Integer> stitches) -> before("until." + mark, stitches);
        };
    }

    private List<Piece> before(String place, Sized<Integer> stitches) {
        return stitches.equals(Sized.all(0)) ? words(vocabulary.phrase(place)) : numbered(place + ".before", stitches);
    }

    private List<Piece> numbered(String key, Sized<Integer> number) {
        return filled(counted(vocabulary, key, number), number(number));
    }

    private static List<Piece> number(Sized<Integer> number) {
        return List.of(Piece.Values.of(number));
    }

    /** The phrase for a number: that of one thing where it is one in every size. */
    static String counted(Vocabulary vocabulary, String key, Sized<Integer> number) {
        return isOne(number) ? vocabulary.phraseOfOne(key) : vocabulary.phrase(key);
    }

    private static boolean isOne(Sized<Integer> number) {
        return number.equals(Sized.all(1));
    }
}
