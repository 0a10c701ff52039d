package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.instruction.Line;

/**
 * The parts of a sock in the order of knitting, and where the round begins. Toe-up it begins at the side of the foot,
 * instep first, and stays there except for a calf, which is shaped beside the centre back. Cuff-down it begins at the
 * centre back
 * and moves to where the heel begins and ends; a toe with two sides needs it at the side again. Domain § 4.
 */
final class SockWriting {

    private final Design design;
    private final Counts counts;
    private final boolean toeUp;
    private final ToeWriting toe;
    private final HeelWriting heel;
    private final FlapWriting flap;
    private final LegWriting leg;
    private final CuffWriting cuff;
    private final StitchPatternNotes notes;
    private final NeedleNotes needles;
    private final List<Chapter> chapters = new ArrayList<>();

    SockWriting(Design design, Counts counts, Names names, StitchPatternNotes notes,
            NeedleNotes needles) {
        this.design = design;
        this.counts = counts;
        this.notes = notes;
        this.needles = needles;
        this.toeUp = design.direction() == Direction.TOE_UP;
        this.toe = new ToeWriting(counts, names);
        this.heel = new HeelWriting(counts, names);
        this.flap = new FlapWriting(counts, names);
        this.leg = new LegWriting(counts, names, toeUp, design.lengths().leg(),
                design.stitchPattern(Zone.LEG).isPresent());
        this.cuff = new CuffWriting(counts, names, design.lengths().cuff());
    }

    /** All chapters that a knitter works through. */
    List<Chapter> chapters() {
        if (toeUp) {
            toeUp();
        } else {
            cuffDown();
        }
        if (design.heel() instanceof AfterthoughtHeel afterthought) {
            add("heading.heel", needles.halves("cap", counts.of(Catalogue.HEEL_PICK_UP)), heel.afterthought(afterthought));
        }
        return List.copyOf(chapters);
    }

    private void add(String heading, Passage passage) {
        add(heading, List.of(), passage);
    }

    private void add(String heading, List<List<Piece>> before, Passage passage) {
        if (!passage.lines().isEmpty()) {
            chapters.add(new Chapter(heading, before, passage.lines()));
        }
    }

    private static List<List<Piece>> both(List<List<Piece>> notes, List<List<Piece>> more) {
        List<List<Piece>> both = new ArrayList<>(notes);
        both.addAll(more);
        return both;
    }

    private List<List<Piece>> footNotes() {
        EachSize instep = counts.of(Catalogue.FOOT_INSTEP);
        return both(notes.foot(), needles.of("foot", instep, counts.of(Catalogue.FOOT_STITCHES).minus(instep)));
    }

    /** @param on the stitches that the heel is worked on */
    private List<List<Piece>> heelNote(EachSize around, EachSize on) {
        return needles.of("heel", on, around.minus(on));
    }

    private void toeUp() {
        Passage toes = toe.toeUp(design.toe());
        add("heading.toe", both(notes.toe(), toe.castOn(design.toe())
                .map(stitches -> needles.halves("castOn", stitches)).orElse(List.of())), toes);
        EachSize after = toeUpHeel(foot(toes.stitches()));
        Passage legs = leg.leg(new Passage(after), design.leg(), toBack());
        add("heading.leg", both(notes.leg(), needles.halves("leg", after)), legs);
        add("heading.cuff", cuff.toeUp(new Passage(legs.stitches()), design.cuff()));
    }

    /** The rounds of the foot that belong to no gusset and leave no opening. */
    private Passage foot(EachSize stitches) {
        Passage foot = new Passage(stitches);
        EachSize others = switch (design.heel()) {
            case ShortRowHeel shortRow -> counts.all(0);
            case FlapHeel gusset -> flap.gussetRounds(toeUp);
            case AfterthoughtHeel afterthought -> counts.all(1);
        };
        EachSize rounds = counts.of(Catalogue.FOOT_ROUNDS).minus(others);
        foot.even(measured(rounds, others), design.stitchPattern(Zone.INSTEP).isPresent());
        return foot;
    }

    /** @param others rounds of the foot that are told apart: toe-up they come after these */
    private Stretch measured(EachSize rounds, EachSize others) {
        LengthMode mode = design.lengths().foot();
        if (mode == LengthMode.TO_FIT) {
            return new Stretch(mode, rounds, Line.MeasuredPart.FOOT, counts.millimetres(Catalogue.FOOT_TO_FIT_LESS));
        }
        if (toeUp) {
            return new Stretch(mode, rounds, Line.MeasuredPart.FOOT,
                    counts.less(counts.millimetres(Catalogue.TOE_DEPTH, Catalogue.FOOT_MEASURE), others));
        }
        return design.heel() instanceof AfterthoughtHeel
                ? new Stretch(mode, rounds, Line.MeasuredPart.FOOT_FROM_OPENING,
                        counts.millimetres(Catalogue.FOOT_MEASURE))
                : new Stretch(mode, rounds, Line.MeasuredPart.FOOT_FROM_HEEL,
                        counts.millimetres(Catalogue.HEEL_DEPTH, Catalogue.FOOT_MEASURE));
    }

    private EachSize toeUpHeel(Passage foot) {
        Passage last = switch (design.heel()) {
            case ShortRowHeel shortRow -> {
                add("heading.foot", footNotes(), foot);
                Passage cup = heel.shortRow(new Passage(foot.stitches()), heel.fromSide(), shortRow.turn());
                add("heading.heel", heelNote(foot.stitches(), counts.of(Catalogue.HEEL_STITCHES)), cup);
                yield cup;
            }
            case FlapHeel gusset -> {
                add("heading.foot", footNotes(), foot);
                Passage widening = flap.widen(new Passage(foot.stitches()));
                add("heading.gusset", widening);
                Passage turning = flap.shortRowTurn(new Passage(widening.stitches()));
                add("heading.heelTurn", heelNote(widening.stitches(), widening.stitches().minus(flap.instep())), turning);
                Passage joining = flap.joiningFlap(new Passage(turning.stitches()), gusset.fabric());
                add("heading.heelFlap", joining);
                yield joining;
            }
            case AfterthoughtHeel afterthought -> {
                heel.opening(foot, heel.fromSide());
                add("heading.foot", footNotes(), foot);
                yield foot;
            }
        };
        return last.stitches();
    }

    /** Toe-up, from the start of the round to the centre back, once the leg has its own count. */
    private EachSize toBack() {
        EachSize around = counts.of(Catalogue.LEG_STITCHES);
        return around.minus(around.half().half());
    }

    private void cuffDown() {
        Passage cuffs = cuff.cuffDown(design.cuff());
        add("heading.cuff", needles.halves("castOn", counts.of(Catalogue.CUFF_STITCHES)), cuffs);
        Passage legs = leg.leg(new Passage(cuffs.stitches()), design.leg(), counts.all(0));
        add("heading.leg", notes.leg(), legs);
        EachSize toInstep = cuffDownHeel(legs.stitches());
        add("heading.toe", notes.toe(), toe.cuffDown(design.toe(), toInstep));
    }

    /** Heel and foot; returns how far it is from the start of the round to the half that is the instep. */
    private EachSize cuffDownHeel(EachSize stitches) {
        EachSize heels = counts.of(Catalogue.HEEL_STITCHES);
        EachSize half = counts.of(Catalogue.FOOT_STITCHES).half();
        EachSize beside = half.minus(heels).half();
        Passage begin = new Passage(stitches);
        heel.toHeelFromBack(begin);
        return switch (design.heel()) {
            case ShortRowHeel shortRow -> {
                heel.shortRow(begin, counts.all(0), shortRow.turn());
                add("heading.heel", heelNote(stitches, heels), begin);
                add("heading.foot", footNotes(), foot(begin.stitches()));
                yield beside;
            }
            case FlapHeel gusset -> {
                flap.flap(begin, gusset);
                add("heading.heelFlap", heelNote(stitches, heels), begin);
                Passage turning = flap.turn(new Passage(begin.stitches()), gusset.turn());
                add("heading.heelTurn", turning);
                Passage narrowing = flap.gusset(new Passage(turning.stitches()));
                EachSize instep = counts.of(Catalogue.LEG_STITCHES).minus(heels);
                add("heading.gusset", needles.of("gusset", instep, counts.of(Catalogue.HEEL_AFTER_TURN)
                        .plus(counts.of(Catalogue.HEEL_PICK_UP).times(2))), narrowing);
                add("heading.foot", footNotes(), foot(narrowing.stitches()));
                yield half.half();
            }
            case AfterthoughtHeel afterthought -> {
                heel.opening(begin, counts.all(0));
                add("heading.heelOpening", begin);
                add("heading.foot", footNotes(), foot(begin.stitches()));
                yield heels.plus(beside);
            }
        };
    }
}
