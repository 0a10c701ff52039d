package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static turnheel.engine.shaping.ExpectedCounts.count;

import java.util.List;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Part;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.hands.Hands;

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
        assertEquals(sock.toeUp ? TOE_UP : TOE_UP.reversed(), parts.stream().map(PartRounds::part).toList());
        parts.forEach(sock::knit);
        assertEquals(0, sock.needle.loops().size(), "the sock is finished with loops on the needle");
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
            case FOOT -> {
                inTheRound(part.rounds());
                assertNumbered(count(size, Catalogue.FOOT_ROUNDS), part.rounds());
            }
            case HEEL -> heel(part.rounds());
            case LEG -> {
                inTheRound(part.rounds());
                assertNumbered(count(size, Catalogue.LEG_ROUNDS), part.rounds());
            }
            case CUFF -> {
                inTheRound(part.rounds());
                assertNumbered(count(size, Catalogue.CUFF_ROUNDS), part.rounds());
            }
            case GAUGE, BODY, FIT, YARN -> throw new AssertionError(part.part() + " has rounds");
        }
        assertEquals(after(part.part()), needle.loops().size(), () -> "on the needle after the " + part.part());
        assertEquals(0, needle.open(), () -> "yarn-overs left open by the " + part.part());
    }

    private void inTheRound(List<Round> rounds) {
        for (Round round : rounds) {
            needle.round(round.steps());
            assertCounts(round, needle);
        }
    }

    private void toe(List<Round> rounds) {
        inTheRound(rounds);
        assertEquals(ExpectedCounts.ofToe(design, size), rounds.stream().map(Round::stitches).toList());
        assertNumbered(count(size, Catalogue.TOE_ROUNDS), rounds);
    }

    private void heel(List<Round> rows) {
        Hands heel = Hands.holding(count(size, Catalogue.HEEL_STITCHES));
        for (Round row : rows) {
            heel.row(row.steps());
            assertCounts(row, heel);
        }
        assertNumbered(count(size, Catalogue.HEEL_ROWS), rows);
        assertEquals(0, heel.loops().stream().filter(loop -> loop.wraps() > 0).count(), "wraps that were never worked");
        assertEquals(0, heel.partedAt(), "the heel ends where it began, all loops before the hands");
    }

    private static void assertCounts(Round round, Hands hands) {
        assertEquals(round.stitches(), hands.loops().size(), () -> "loops after " + round);
        assertEquals(round.openYarnOvers(), hands.open(), () -> "open yarn-overs after " + round);
    }

    private static void assertNumbered(int rounds, List<Round> all) {
        int number = 0;
        for (Round round : all) {
            if (round.number() != 0) {
                number++;
                assertEquals(number, round.number());
            }
        }
        assertEquals(rounds, number, "numbered rounds");
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
            case FOOT, HEEL, LEG -> count(size, Catalogue.FOOT_STITCHES);
            case CUFF -> count(size, Catalogue.LEG_STITCHES);
            case GAUGE, BODY, FIT, YARN -> throw new AssertionError(part + " is not knitted");
        };
    }

    private int cuffSide(Part part) {
        return switch (part) {
            case TOE, FOOT, HEEL -> count(size, Catalogue.FOOT_STITCHES);
            case LEG -> count(size, Catalogue.LEG_STITCHES);
            case CUFF -> 0;
            case GAUGE, BODY, FIT, YARN -> throw new AssertionError(part + " is not knitted");
        };
    }
}
