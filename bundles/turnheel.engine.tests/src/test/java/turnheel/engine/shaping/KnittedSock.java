package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static turnheel.engine.shaping.ExpectedCounts.count;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.hands.Hands;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/**
 * One size, knitted from the first loop to the last by hands that know only the steps. After every round the needle
 * must hold what the round and the graded counts say.
 */
final class KnittedSock {

    private static final List<Part> TOE_UP = List.of(Part.TOE, Part.FOOT, Part.HEEL, Part.LEG, Part.CUFF);

    private final Design design;
    private final GradedSize size;
    private final boolean toeUp;
    private Hands needle = Hands.holding(0);

    private KnittedSock(Design design, GradedSize size) {
        this.design = design;
        this.size = size;
        this.toeUp = design.direction() == Direction.TOE_UP;
    }

    /** Knits every part on one needle; fails where the work or a count goes wrong. */
    static void knit(Graded graded, GradedSize size) {
        KnittedSock sock = new KnittedSock(graded.design(), size);
        List<PartRounds> parts = Rounds.of(graded, size);
        assertEquals(sock.order(), parts.stream().map(PartRounds::part).toList());
        parts.forEach(sock::knit);
        assertEquals(0, sock.needle.loops().size(), "the sock is finished with loops on the needle");
    }

    private List<Part> order() {
        List<Part> order = new ArrayList<>(toeUp ? TOE_UP : TOE_UP.reversed());
        if (design.heel() instanceof AfterthoughtHeel) {
            order.remove(Part.HEEL);
            order.add(Part.HEEL);
        }
        return order;
    }

    /** Knits one part whose neighbours could not be shaped. */
    static void knitAlone(Graded graded, GradedSize size, PartRounds part) {
        KnittedSock sock = new KnittedSock(graded.design(), size);
        sock.needle = Hands.holding(sock.before(part.part()));
        sock.knit(part);
    }

    private void knit(PartRounds part) {
        assertEquals(before(part.part()), needle.loops().size(), () -> "on the needle before the " + part.part());
        switch (part.part()) {
            case TOE -> toe(part.rounds());
            case HEEL -> heel(part.rounds());
            case FOOT, LEG, CUFF -> part.rounds().forEach(this::work);
            case GAUGE, BODY, FIT, YARN, OWN -> throw new AssertionError(part.part() + " has rounds");
        }
        assertEquals(ExpectedCounts.of(part.part(), design, size), part.rounds().stream().map(Round::stitches).toList(),
                () -> "stitches after the rounds of the " + part.part());
        assertNumbered(numbered(part.part()), part.rounds());
        assertEquals(after(part.part()), needle.loops().size(), () -> "on the needle after the " + part.part());
        assertEquals(0, needle.unfinished(), () -> "yarn-overs, wraps, twins or doubles left by the " + part.part());
        assertFalse(needle.hasGaps(), () -> "gaps left by the " + part.part());
        assertEquals(0, needle.partedAt(), () -> "the hands stop amid the loops of the " + part.part());
    }

    private int numbered(Part part) {
        return switch (part) {
            case TOE -> count(size, Catalogue.TOE_ROUNDS);
            case FOOT -> count(size, Catalogue.FOOT_ROUNDS);
            case HEEL -> design.heel() instanceof FlapHeel
                    ? count(size, Catalogue.HEEL_FLAP_ROWS) + count(size, Catalogue.HEEL_TURN_ROWS)
                    : count(size, Catalogue.HEEL_ROWS);
            case LEG -> count(size, Catalogue.LEG_ROUNDS);
            case CUFF -> ExpectedCounts.numberedRoundsOfCuff(design, size);
            case GAUGE, BODY, FIT, YARN, OWN -> throw new AssertionError(part + " is not knitted");
        };
    }

    private void work(Round round) {
        boolean flat = round.kind() == RoundKind.ROW || round.kind() == RoundKind.TURN;
        if (!flat) {
            needle.round(round.steps());
        } else if (turns(round)) {
            needle.row(round.steps());
        } else {
            needle.rowIntoRound(round.steps());
        }
        assertEquals(round.stitches(), needle.loops().size(), () -> "loops after " + round);
        assertEquals(round.openYarnOvers(), needle.open(), () -> "open yarn-overs after " + round);
    }

    /** The last row of some cups ends on the right side where the round goes on. */
    private static boolean turns(Round row) {
        return row.steps().getLast() instanceof Step.Work(Stitch stitch, int once)
                && Set.of(Stitch.TURN, Stitch.WRAP_AND_TURN, Stitch.TWIN_AND_TURN).contains(stitch);
    }

    private void toe(List<Round> rounds) {
        if (design.toe() instanceof ShortRowToe && !toeUp) {
            flat(rounds, count(size, Catalogue.TOE_STITCHES), RoundKind.GRAFT);
        } else {
            rounds.forEach(round -> {
                if (round.kind() == RoundKind.SET_UP) {
                    setUp(round);
                } else {
                    work(round);
                }
            });
        }
    }

    /** All stitches of the cast-on, or the half that it left to be worked. */
    private void setUp(Round round) {
        int castOn = needle.loops().size();
        int left = castOn() == CastOn.HALF_WORKED ? castOn / 2 : castOn;
        assertEquals(List.of(new Step.Work(Stitch.KNIT, left)), round.steps());
        needle.restOfRound(round.steps());
        assertEquals(castOn, needle.loops().size(), () -> "loops after " + round);
        assertEquals(castOn, round.stitches());
    }

    private CastOn castOn() {
        return switch (design.toe()) {
            case RoundToe toe -> toe.castOn();
            case WedgeToe toe -> toe.castOn();
            case StarToe toe -> toe.castOn();
            case AsymmetricToe toe -> toe.castOn();
            case ShortRowToe toe -> throw new AssertionError("a provisional cast-on has no set-up round");
        };
    }

    private void heel(List<Round> rows) {
        switch (design.heel()) {
            case ShortRowHeel heel -> flat(rows, count(size, Catalogue.HEEL_STITCHES), RoundKind.BIND_OFF);
            case FlapHeel heel when toeUp -> flat(rows, count(size, Catalogue.HEEL_STITCHES)
                    + 2 * count(size, Catalogue.HEEL_GUSSET_INCREASES), RoundKind.BIND_OFF);
            case FlapHeel heel -> flat(rows, count(size, Catalogue.HEEL_STITCHES), RoundKind.PICK_UP);
            case AfterthoughtHeel heel -> rows.forEach(this::work);
        }
    }

    /** Works on some of the loops while the others are held: until the round of a kind takes them back, or to the end. */
    private void flat(List<Round> rounds, int worked, RoundKind takesBack) {
        int held = needle.loops().size() - worked;
        assertTrue(held >= 0, "more loops are worked than there are");
        needle = Hands.holding(worked);
        for (Round round : rounds) {
            if (round.kind() == takesBack) {
                needle.join(held);
                held = 0;
            }
            work(round);
        }
        needle.join(held);
    }

    private static void assertNumbered(int rounds, List<Round> all) {
        List<Integer> numbers = all.stream().map(Round::number).filter(number -> number != 0).toList();
        assertEquals(IntStream.rangeClosed(1, rounds).boxed().toList(), numbers, "numbered rounds");
    }

    private int before(Part part) {
        return toeUp ? toeSide(part) : cuffSide(part);
    }

    private int after(Part part) {
        return toeUp ? cuffSide(part) : toeSide(part);
    }

    private int toeSide(Part part) {
        return switch (part) {
            case TOE -> 0;
            case FOOT -> count(size, Catalogue.FOOT_STITCHES);
            case HEEL -> atGusset();
            case LEG -> ExpectedCounts.belowLeg(design, size);
            case CUFF -> count(size, legTop());
            case GAUGE, BODY, FIT, YARN, OWN -> throw new AssertionError(part + " is not knitted");
        };
    }

    private int cuffSide(Part part) {
        return switch (part) {
            case TOE -> count(size, Catalogue.FOOT_STITCHES);
            case FOOT -> design.heel() instanceof FlapHeel ? atGusset() : count(size, Catalogue.FOOT_STITCHES);
            case HEEL -> design.heel() instanceof AfterthoughtHeel ? 0 : ExpectedCounts.belowLeg(design, size);
            case LEG -> count(size, legTop());
            case CUFF -> 0;
            case GAUGE, BODY, FIT, YARN, OWN -> throw new AssertionError(part + " is not knitted");
        };
    }

    /** Where foot and heel meet, at the widest place of a gusset; an afterthought heel begins and ends with nothing. */
    private int atGusset() {
        return switch (design.heel()) {
            case ShortRowHeel heel -> count(size, Catalogue.FOOT_STITCHES);
            case FlapHeel heel -> count(size, toeUp ? Catalogue.HEEL_WIDEST : Catalogue.HEEL_AFTER_PICK_UP);
            case AfterthoughtHeel heel -> 0;
        };
    }

    private Parameter legTop() {
        return switch (design.leg()) {
            case StraightLeg leg -> Catalogue.LEG_STITCHES;
            case CalfLeg leg -> Catalogue.LEG_TOP;
        };
    }
}
