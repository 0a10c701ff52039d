package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Instruction.CastOnManner;
import turnheel.engine.instruction.Instruction.Edge;
import turnheel.engine.instruction.Instruction.HoldWhich;
import turnheel.engine.instruction.Instruction.MarkerAction;
import turnheel.engine.instruction.Instruction.Thread;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.knitting.ExtentReader.Often;
import turnheel.engine.knitting.Said.Do;
import turnheel.engine.knitting.grammar.Instructions.BindOffContext;
import turnheel.engine.knitting.grammar.Instructions.CastOnContext;
import turnheel.engine.knitting.grammar.Instructions.DrawContext;
import turnheel.engine.knitting.grammar.Instructions.ExtentContext;
import turnheel.engine.knitting.grammar.Instructions.GraftContext;
import turnheel.engine.knitting.grammar.Instructions.GroupContext;
import turnheel.engine.knitting.grammar.Instructions.HoldContext;
import turnheel.engine.knitting.grammar.Instructions.MannerContext;
import turnheel.engine.knitting.grammar.Instructions.MarkerContext;
import turnheel.engine.knitting.grammar.Instructions.PatternRoundContext;
import turnheel.engine.knitting.grammar.Instructions.PickUpContext;
import turnheel.engine.knitting.grammar.Instructions.PieceContext;
import turnheel.engine.knitting.grammar.Instructions.PiecesContext;
import turnheel.engine.knitting.grammar.Instructions.SizedContext;
import turnheel.engine.knitting.grammar.Instructions.StarredContext;
import turnheel.engine.knitting.grammar.Instructions.StitchContext;
import turnheel.engine.stitch.Stitch;

/** What the pieces of a sentence say, out of their shapes. */
final class PieceReader {

    private final SizedReader sized;
    private final ExtentReader extents;
    private final PlainReader plain;
    private final RepeatReader repeats;
    private final Function<Said.Over, Instruction> patterns;

    /** @param patterns what a round of a stitch pattern tells to do */
    PieceReader(SizedReader sized, Function<Said.Over, Instruction> patterns) {
        this.sized = sized;
        this.patterns = patterns;
        this.extents = new ExtentReader(sized);
        this.repeats = new RepeatReader(sized, extents);
        this.plain = new PlainReader(sized, extents);
    }

    List<Said> all(PiecesContext pieces) {
        List<Said> said = new ArrayList<>();
        List<PieceContext> all = pieces.piece();
        for (PieceContext piece : all) {
            List<Said> next = said(piece, all.size() == 1);
            if (piece.hold() != null && piece.hold().NEXT().isEmpty() && !next.isEmpty() && !said.isEmpty()
                    && next.getFirst() instanceof Do(Instruction.Hold(var others))
                    && said.getLast() instanceof Do(Instruction.WorkOnlyOn(var stitches, var none))) {
                said.removeLast();
                next = List.of(new Do(new Instruction.WorkOnlyOn(stitches, Optional.of(others))));
            }
            if (!said.isEmpty() && said.getLast() instanceof Said.Plain(var rounds, var none, var asSet, var fabric)
                    && next.size() == 1 && next.getFirst() instanceof Said.Plain goal && goal.rounds().isEmpty()) {
                // so many rounds, or up to a length
                said.removeLast();
                next = List.of(new Said.Plain(rounds, goal.goal(), asSet, fabric));
            }
            said.addAll(next);
        }
        return said;
    }

    private List<Said> said(PieceContext piece, boolean alone) {
        if (piece.plain() != null) {
            return plain.said(piece.plain(), alone);
        }
        if (piece.repeatRounds() != null) {
            return List.of(repeats.said(piece.repeatRounds()));
        }
        if (piece.asRound() != null) {
            return List.of(new Said.As(repeats.target(piece.asRound().which())));
        }
        if (piece.patternRound() != null) {
            return List.of(over(piece.patternRound()));
        }
        if (piece.measure() != null) {
            return List.of(new Said.Plain(Optional.empty(), repeats.goal(piece.measure()), false,
                    Fabric.ROUND));
        }
        return instructions(piece).stream().<Said>map(Do::new).toList();
    }

    private Said over(PatternRoundContext over) {
        Optional<Integer> number = over.range() == null ? Optional.empty()
                : Optional.of(SizedReader.one(over.range().value(0)));
        String name = over.STITCH_PATTERN() == null ? "" : ((ReadToken) over.STITCH_PATTERN().getSymbol()).name();
        Until until = over.to() != null ? extents.until(over.to())
                : over.sized() != null ? new Until.Next(sized.whole(over.sized())) : new Until.End();
        return new Said.Over(name, number, until);
    }

    private List<Instruction> instructions(PieceContext piece) {
        if (piece.starred() != null) {
            return List.of(starred(piece.starred()));
        }
        if (piece.group() != null) {
            return List.of(group(piece.group()));
        }
        if (piece.stitch() != null) {
            return List.of(stitch(piece.stitch()));
        }
        if (piece.castOn() != null) {
            return List.of(castOn(piece.castOn()));
        }
        if (piece.bindOff() != null) {
            return List.of(bindOff(piece.bindOff()));
        }
        if (piece.graft() != null) {
            return List.of(graft(piece.graft()));
        }
        if (piece.draw() != null) {
            return List.of(draw(piece.draw()));
        }
        if (piece.sewDown() != null) {
            return List.of(allOr(Stitch.SEW_DOWN, piece.sewDown().sized()));
        }
        if (piece.pickUp() != null) {
            PickUpContext pickUp = piece.pickUp();
            Edge edge = !pickUp.OPENING().isEmpty() ? Edge.OPENING : !pickUp.CORNER().isEmpty() ? Edge.CORNER : Edge.FLAP;
            return List.of(new Instruction.PickUp(sized.whole(pickUp.sized()), edge));
        }
        if (piece.marker() != null) {
            return List.of(marker(piece.marker()));
        }
        if (piece.hold() != null) {
            return hold(piece.hold());
        }
        if (piece.startHere() != null) {
            return List.of(new Instruction.StartHere());
        }
        if (piece.join() != null) {
            return List.of(new Instruction.JoinInRound());
        }
        if (piece.takeOut() != null) {
            return List.of(new Instruction.TakeOut(piece.takeOut().TAKE_OUT_WASTE() != null ? Thread.WASTE_YARN
                    : Thread.PROVISIONAL_CAST_ON));
        }
        // what is left says nothing that a needle would notice
        return List.of();
    }

    private List<Instruction> body(PiecesContext pieces) {
        List<Instruction> body = new ArrayList<>();
        for (PieceContext piece : pieces.piece()) {
            for (Said said : said(piece, false)) {
                body.add(switch (said) {
                    case Do(var instruction) -> instruction;
                    case Said.Over over -> patterns.apply(over);
                    case Said.As as -> throw new Unreadable("a round within a round");
                    case Said.Again again -> throw new Unreadable("rounds within a round");
                    case Said.Plain rounds -> throw new Unreadable("rounds within a round");
                    case Said.AgainFor again -> throw new Unreadable("rounds within a round");
                });
            }
        }
        return body;
    }

    private Instruction starred(StarredContext starred) {
        List<Instruction> body = body(starred.pieces());
        ExtentContext extent = starred.extent();
        if (extent == null || extent.times() == null) {
            return new Instruction.RepeatTo(body, extent == null ? new Until.End() : extents.until(extent));
        }
        Often often = extents.often(extent.times());
        // "work *...* 3 times" counts them all; "rep from * 3 times" comes after the first
        return often.more() || starred.REPEAT() != null ? new Instruction.RepeatMore(body, often.times())
                : new Instruction.Times(body, often.times());
    }

    private Instruction group(GroupContext group) {
        List<Instruction> body = body(group.pieces());
        if (group.extent() == null) {
            return group.REPEAT() == null ? new Instruction.Times(body, Sized.all(1))
                    : new Instruction.RepeatTo(body, new Until.End());
        }
        if (group.extent().times() == null) {
            return new Instruction.RepeatTo(body, extents.until(group.extent()));
        }
        Often often = extents.often(group.extent().times());
        return often.more() ? new Instruction.RepeatMore(body, often.times()) : new Instruction.Times(body, often.times());
    }

    private Instruction stitch(StitchContext stitch) {
        if (stitch.TWIN_STITCH() != null) {
            return new Instruction.Work(Stitch.TWIN_AND_TURN, Sized.all(1));
        }
        if (stitch.TURN() != null) {
            return new Instruction.Work(Stitch.TURN, Sized.all(1));
        }
        if (stitch.DOUBLE_STITCH() != null) {
            return new Instruction.Work(Stitch.DOUBLE_STITCH, Sized.all(1));
        }
        Stitch kind = ((ReadToken) stitch.STITCH().getSymbol()).stitch();
        if (stitch.sized() != null) {
            return new Instruction.Work(kind, sized.whole(stitch.sized()));
        }
        if (stitch.extent() == null) {
            return new Instruction.Work(kind, Sized.all(1));
        }
        if (stitch.extent().times() != null) {
            return new Instruction.Work(kind, extents.often(stitch.extent().times()).times());
        }
        return new Instruction.WorkTo(kind, extents.until(stitch.extent()));
    }

    private Instruction castOn(CastOnContext castOn) {
        if (castOn.sized() == null) {
            throw new Unreadable("how many are cast on?");
        }
        CastOnManner manner = CastOnManner.PLAIN;
        for (MannerContext told : castOn.manner()) {
            manner = told.PROVISIONAL() != null ? CastOnManner.PROVISIONAL : told.CLOSED() != null ? CastOnManner.CLOSED
                    : told.STRETCHY() != null ? CastOnManner.STRETCHY : manner;
        }
        return new Instruction.CastOn(manner, sized.whole(castOn.sized()));
    }

    /** All that are there, where no number is told. */
    private Instruction allOr(Stitch stitch, SizedContext count) {
        return count == null ? new Instruction.WorkTo(stitch, new Until.End())
                : new Instruction.Work(stitch, sized.whole(count));
    }

    private Instruction bindOff(BindOffContext bindOff) {
        return allOr(Stitch.BIND_OFF, bindOff.sized());
    }

    private Instruction draw(DrawContext draw) {
        return allOr(Stitch.DRAW_CLOSED, draw.sized());
    }

    private Instruction graft(GraftContext graft) {
        if (graft.sized().isEmpty()) {
            return new Instruction.WorkTo(Stitch.GRAFT, new Until.End());
        }
        Sized<Integer> first = sized.whole(graft.sized(0));
        if (graft.sized().size() > 1) {
            if (!first.equals(sized.whole(graft.sized(1)))) {
                throw new Unreadable("as many are grafted to as many");
            }
            return new Instruction.Work(Stitch.GRAFT, first);
        }
        if (first.values().stream().flatMap(Optional::stream).anyMatch(stitches -> stitches % 2 != 0)) {
            throw new Unreadable("half of them are grafted to half");
        }
        return new Instruction.Work(Stitch.GRAFT, first.map(stitches -> stitches / 2));
    }

    private Instruction marker(MarkerContext marker) {
        if (marker.SLIP_MARKER() != null) {
            return new Instruction.Marker(MarkerAction.SLIP);
        }
        if (marker.REMOVE_MARKER() != null) {
            return new Instruction.Marker(marker.ALL() == null ? MarkerAction.REMOVE : MarkerAction.REMOVE_ALL);
        }
        if (marker.EACH() == null && marker.EVERY() == null) {
            return new Instruction.Marker(MarkerAction.PLACE);
        }
        return new Instruction.MarkersAfterEvery(marker.sized() == null ? Sized.all(1) : sized.whole(marker.sized()));
    }

    private List<Instruction> hold(HoldContext hold) {
        if (hold.FLAT_ON() != null) {
            return List.of(new Instruction.WorkOnlyOn(sized.whole(hold.sized()), Optional.empty()));
        }
        if (hold.sized() == null) {
            // all others, which went on hold when the part to be worked was told
            return List.of();
        }
        Sized<Integer> stitches = sized.whole(hold.sized());
        if (!hold.THESE().isEmpty()) {
            return List.of(new Instruction.HoldPart(HoldWhich.WORKED, stitches));
        }
        return List.of(hold.LAST().isEmpty() ? new Instruction.Hold(stitches)
                : new Instruction.HoldPart(HoldWhich.LAST, stitches));
    }
}
