package turnheel.engine.writing;

import static turnheel.engine.stitch.Stitch.FREED_LOOP;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_DOUBLE;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.PURL;
import static turnheel.engine.stitch.Stitch.PURL_DOUBLE;
import static turnheel.engine.stitch.Stitch.TURN;
import static turnheel.engine.writing.Doing.counted;
import static turnheel.engine.writing.Doing.toEnd;
import static turnheel.engine.writing.Doing.work;

import java.util.Optional;

import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Part;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.Toe;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Until.Mark;

/** Toes in both directions: domain § 3. */
final class ToeWriting {

    private final Counts counts;
    private final Names names;
    private final EachSize foot;

    ToeWriting(Counts counts, Names names) {
        this.counts = counts;
        this.names = names;
        this.foot = counts.of(Catalogue.FOOT_STITCHES);
    }

    Passage toeUp(Toe toe) {
        Passage passage = new Passage(foot.times(0));
        switch (toe) {
            case RoundToe round -> {
                castOn(passage, round.castOn(), counts.of(Catalogue.TOE_CAST_ON), counts.of(Catalogue.TOE_POINTS));
                round(round).widen(passage);
            }
            case WedgeToe wedge -> {
                castOn(passage, wedge.castOn(), counts.of(Catalogue.TOE_TIP), counts.all(2));
                wedge(wedge.increase()).widen(passage);
            }
            case StarToe star -> {
                EachSize sections = counts.of(Catalogue.TOE_POINTS);
                castOn(passage, star.castOn(), sections, sections);
                star(star).widen(passage);
                counts.spread(passage, Part.TOE, names);
            }
            case AsymmetricToe asymmetric -> {
                castOn(passage, asymmetric.castOn(), counts.of(Catalogue.TOE_TIP), counts.all(2));
                asymmetric(asymmetric.increase()).widen(passage);
            }
            case ShortRowToe shortRow -> shortRowToeUp(passage, shortRow.turn());
        }
        return passage;
    }

    /** Toe-up, the stitches that are cast on for a round; empty where a toe begins flat. */
    Optional<EachSize> castOn(Toe toe) {
        return switch (toe) {
            case RoundToe round -> Optional.of(counts.of(Catalogue.TOE_CAST_ON));
            case WedgeToe wedge -> Optional.of(counts.of(Catalogue.TOE_TIP));
            case StarToe star -> Optional.of(counts.of(Catalogue.TOE_POINTS));
            case AsymmetricToe asymmetric -> Optional.of(counts.of(Catalogue.TOE_TIP));
            case ShortRowToe shortRow -> Optional.empty();
        };
    }

    private void castOn(Passage passage, CastOn castOn, EachSize stitches, EachSize sections) {
        Doing closed = counted(stitches, count -> new Instruction.CastOn(Instruction.CastOnManner.CLOSED, count));
        switch (castOn) {
            case UNWORKED -> {
                passage.begin(stitches, closed, markers(stitches, sections));
                passage.named(names.setUp(), 0, toEnd(KNIT));
            }
            case HALF_WORKED -> {
                passage.begin(stitches, closed);
                passage.between(work(KNIT, stitches.half()), Doing.startHere(), markers(stitches, sections));
            }
        }
    }

    /** A marker after each of so many equal sections. */
    static Doing markers(EachSize stitches, EachSize sections) {
        return counted(stitches.with(sections, (all, parts) -> all / parts), Instruction.MarkersAfterEvery::new);
    }

    /**
     * From the cuff down.
     *
     * @param toInstep from the start of the round to the half that is the instep; below 0 where that lies before the
     *     start
     */
    Passage cuffDown(Toe toe, EachSize toInstep) {
        Passage passage = new Passage(foot);
        switch (toe) {
            case RoundToe round -> {
                passage.between(markers(foot, counts.of(Catalogue.TOE_POINTS)));
                round(round).narrow(passage);
                RoundTaperWriting.close(passage);
            }
            case WedgeToe wedge -> {
                toSide(passage, toInstep);
                passage.between(markers(foot, counts.all(2)));
                wedge(wedge.increase()).narrow(passage);
                WedgeWriting.closeTip(passage);
            }
            case StarToe star -> {
                counts.spread(passage, Part.TOE, names);
                passage.between(markers(passage.stitches(), counts.of(Catalogue.TOE_POINTS)));
                star(star).narrow(passage);
                RoundTaperWriting.draw(passage);
            }
            case AsymmetricToe asymmetric -> {
                toSide(passage, toInstep);
                passage.between(markers(foot, counts.all(2)));
                asymmetric(asymmetric.increase()).narrow(passage);
                WedgeWriting.closeTip(passage);
            }
            case ShortRowToe shortRow -> {
                toSide(passage, toInstep);
                shortRowCuffDown(passage, shortRow.turn());
            }
        }
        return passage;
    }

    /** Moves the start of the round to the side of the foot. */
    static void toSide(Passage passage, EachSize toInstep) {
        passage.only(toInstep.atLeast(1)).between(work(KNIT, toInstep), Doing.startHere());
        passage.only(toInstep.where(stitches -> stitches < 0)).between(Doing.toLast(KNIT, toInstep.times(-1)),
                Doing.startHere());
    }

    private RoundTaperWriting round(RoundToe toe) {
        return new RoundTaperWriting(new SectionsWriting(toe.increase(), toe.lean(), counts.of(Catalogue.TOE_POINTS)),
                counts.of(Catalogue.TOE_EVERY_ROUND), counts.of(Catalogue.TOE_ALTERNATE),
                counts.of(Catalogue.TOE_PLAIN_BETWEEN), names);
    }

    private WedgeWriting wedge(Increase increase) {
        return new WedgeWriting(increase, counts.of(Catalogue.TOE_EVERY_ROUND), counts.of(Catalogue.TOE_ALTERNATE),
                names);
    }

    private StarToeWriting star(StarToe toe) {
        EachSize sections = counts.of(Catalogue.TOE_POINTS);
        return new StarToeWriting(new SectionsWriting(toe.increase(), toe.lean(), sections),
                counts.of(Catalogue.TOE_PLAIN_MOST),
                counts.of(Catalogue.TOE_SECTIONS_FROM).with(sections, (all, parts) -> all / parts), names);
    }

    private AsymmetricToeWriting asymmetric(Increase increase) {
        return new AsymmetricToeWriting(increase, counts.of(Catalogue.TOE_EVERY_ROUND),
                counts.of(Catalogue.TOE_ALTERNATE), counts.of(Catalogue.TOE_SECOND_LINE_AFTER), names);
    }

    /** The cast-on holds one loop fewer than it has stitches; the missing ones are picked up at the corner. */
    private void shortRowToeUp(Passage passage, TurnMethod turn) {
        EachSize stitches = counts.of(Catalogue.TOE_STITCHES);
        passage.begin(stitches,
                counted(stitches, count -> new Instruction.CastOn(Instruction.CastOnManner.PROVISIONAL, count)));
        new ShortRowWriting(turn, counts.of(Catalogue.TOE_EACH_SIDE)).rows(passage);
        EachSize other = foot.minus(stitches);
        EachSize freed = other.least(stitches.minus(1));
        Doing takeOut = Doing.of(new Instruction.TakeOut(Instruction.Thread.PROVISIONAL_CAST_ON));
        Doing free = work(FREED_LOOP, freed);
        Doing corner = counted(other.minus(freed), count -> new Instruction.PickUp(count, Instruction.Edge.CORNER));
        Doing join = Doing.of(new Instruction.JoinInRound());
        switch (turn) {
            case WRAPPED, TWIN -> passage.between(other, work(KNIT, stitches), takeOut, free, corner, join);
            case YARN_OVER -> passage.between(other.minus(1), work(KNIT, stitches.minus(1)),
                    work(KNIT_TWO_TOGETHER), takeOut, free, corner, join);
            case GERMAN -> {
                passage.between(other, takeOut, free, corner, join);
                passage.named(names.next(), 0, work(KNIT_DOUBLE), toEnd(KNIT));
            }
        }
    }

    private void shortRowCuffDown(Passage passage, TurnMethod turn) {
        EachSize stitches = counts.of(Catalogue.TOE_STITCHES);
        EachSize held = foot.minus(stitches);
        passage.between(counted(stitches, count -> new Instruction.WorkOnlyOn(count,
                held.told(foot.where(all -> true)).or(Optional::empty))));
        passage.count(held.times(-1));
        new ShortRowWriting(turn, counts.of(Catalogue.TOE_EACH_SIDE)).rows(passage);
        switch (turn) {
            case WRAPPED, TWIN -> { }
            case YARN_OVER -> passage.between(counts.all(-1), work(KNIT, stitches.minus(1)), work(KNIT_TWO_TOGETHER));
            // the double stitch of the last turn lies at the far end of the right side
            case GERMAN -> passage.between(work(TURN), Doing.toTurned(PURL, Mark.DOUBLE), work(PURL_DOUBLE));
        }
        passage.count(held);
        RoundTaperWriting.graft(passage);
    }
}
