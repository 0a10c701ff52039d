package turnheel.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;

import turnheel.engine.grading.Graded;
import turnheel.engine.knitting.Knitted;
import turnheel.engine.knitting.Manuscript;
import turnheel.engine.query.Query;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.Renderings;

/** Knits a pattern from what an export wrote, and compares it with the plain text. */
public final class KnitAgain {

    private KnitAgain() {
    }

    /** The same after every round in every size, and nothing else to ask about than the plain text has. */
    public static void assertAlike(Graded graded, HouseStyle style, String exported) {
        Manuscript written = Manuscript.read(Renderings.plain(Manuscripts.write(graded, style)));
        Knitted plain = written.knit();
        Manuscript manuscript = Manuscript.read(exported);
        Knitted read = manuscript.knit();
        assertEquals(written.sizes(), manuscript.sizes());
        assertEquals(asked(plain), asked(read), exported);
        for (int size = 0; size < plain.traces().size(); size++) {
            assertFalse(rounds(plain, size).isEmpty());
            assertEquals(rounds(plain, size), rounds(read, size), exported);
        }
    }

    private static List<String> asked(Knitted knitted) {
        return knitted.queries().stream().map(KnitAgain::asked).toList();
    }

    private static String asked(Query query) {
        return "%s %s, expected %s, found %s".formatted(query.check(), query.sizes(), query.expected(), query.found());
    }

    private static List<List<Integer>> rounds(Knitted knitted, int size) {
        return knitted.traces().get(size).stream().filter(traced -> traced.rounds() > 0)
                .map(traced -> List.of(traced.rounds(), traced.stitches(), traced.openYarnOvers(), traced.onHold()))
                .toList();
    }
}
