package turnheel.engine.writing;

import static turnheel.engine.stitch.Stitch.BIND_OFF;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_WITH_EDGE;
import static turnheel.engine.stitch.Stitch.PURL;
import static turnheel.engine.stitch.Stitch.SEW_DOWN;
import static turnheel.engine.writing.Doing.counted;
import static turnheel.engine.writing.Doing.repeated;
import static turnheel.engine.writing.Doing.toEnd;
import static turnheel.engine.writing.Doing.work;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Part;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Line;

/** Cuffs in both directions: domain § 8. */
final class CuffWriting {

    private final Counts counts;
    private final Names names;
    private final LengthMode mode;

    CuffWriting(Counts counts, Names names, LengthMode mode) {
        this.counts = counts;
        this.names = names;
        this.mode = mode;
    }

    /** On the stitches of the leg. */
    Passage toeUp(Passage passage, Cuff cuff) {
        counts.spread(passage, Part.CUFF, names);
        fabric(passage, cuff);
        switch (cuff) {
            case RibCuff rib -> passage.gone(toEnd(BIND_OFF));
            case RolledCuff rolled -> passage.gone(toEnd(BIND_OFF));
            case HemCuff hem -> passage.gone(toEnd(SEW_DOWN));
        }
        return passage;
    }

    Passage cuffDown(Cuff cuff) {
        EachSize stitches = counts.of(Catalogue.CUFF_STITCHES);
        Passage passage = new Passage(stitches.times(0));
        Instruction.CastOnManner manner = switch (cuff) {
            case RibCuff rib -> Instruction.CastOnManner.STRETCHY;
            case RolledCuff rolled -> Instruction.CastOnManner.STRETCHY;
            case HemCuff hem -> Instruction.CastOnManner.PROVISIONAL;
        };
        passage.begin(stitches, counted(stitches, count -> new Instruction.CastOn(manner, count)),
                Doing.of(new Instruction.JoinInRound()));
        fabric(passage, cuff);
        if (cuff instanceof HemCuff) {
            passage.named(names.joining(), 0, repeated(work(KNIT_WITH_EDGE)));
        }
        counts.spread(passage, Part.CUFF, names);
        return passage;
    }

    private void fabric(Passage passage, Cuff cuff) {
        EachSize rounds = counts.of(Catalogue.CUFF_ROUNDS);
        switch (cuff) {
            case RibCuff rib -> {
                int first = passage.round(0, repeated(work(KNIT, rib.knit()), work(PURL, rib.purl())));
                if (mode == LengthMode.ROUNDS) {
                    passage.again(Fabric.ROUND, first, first, rounds.minus(1), 0);
                } else {
                    passage.again(measured(rounds.minus(1)), first);
                }
            }
            case RolledCuff rolled -> passage.even(measured(rounds), false);
            // both halves of a hem have to be the same: they are counted
            case HemCuff hem -> {
                passage.even(rounds, false);
                passage.named(names.turning(), 0, toEnd(PURL));
                passage.even(rounds, false);
            }
        }
    }

    private Stretch measured(EachSize rounds) {
        return new Stretch(mode, rounds, Line.MeasuredPart.CUFF, counts.millimetres(Catalogue.CUFF_HEIGHT));
    }
}
