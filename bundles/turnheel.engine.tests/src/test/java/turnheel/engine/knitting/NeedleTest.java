package turnheel.engine.knitting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.query.Query;

/** What lies on the needle after a text, by hand. */
class NeedleTest {

    private static Knitted knit(String text) {
        return Manuscript.read(text).knit();
    }

    private static List<String> ids(Knitted knitted) {
        return knitted.queries().stream().map(Query::check).map(check -> check.id()).toList();
    }

    @ParameterizedTest(name = "{1} over {0}: {2}, {3} open")
    @CsvSource(delimiter = '|', textBlock = """
            # loops | round | loops after | yarn-overs among them
            4 | K to end                                          | 4  | 0
            4 | P                                                 | 4  | 0
            4 | *Yo, k2; rep from * to end                        | 6  | 2
            4 | K2tog, ssk                                        | 2  | 0
            2 | Kfb twice                                         | 4  | 0
            2 | Pfb, kfb                                          | 4  | 0
            2 | M1l, k1, lli, k1, m1p                             | 5  | 0
            6 | K3tog, p3tog                                      | 2  | 0
            9 | Sssk, s2kp, sk2p                                  | 3  | 0
            9 | Cdd 3 times                                       | 3  | 0
            4 | Skp, k2tog tbl                                    | 2  | 0
            4 | P2tog, ssp                                        | 2  | 0
            3 | Sl1 wyif, sl 1 purlwise, k1 tbl                   | 3  | 0
            6 | [K1, m1] 3 times, k3                              | 9  | 0
            8 | *K2tog, k2; rep from * once more                  | 6  | 0
            9 | K2, *k2tog, k1; rep from * to last st, k1         | 7  | 0
            8 | [[k1, p1] twice, k2tog, k2] once                  | 7  | 0
            4 | K2, pick up and knit 3 along the flap, k2         | 7  | 0
            4 | K 2, cast on 3 sts, k to end                      | 7  | 0
            8 | Graft 4 sts to 4 sts                              | 0  | 0
            8 | Bind off all sts                                  | 0  | 0
            8 | Draw the yarn through the last 8 sts              | 0  | 0
            8 | Bind off 3 sts, k to end                          | 5  | 0
            """)
    void countsWhatIsWorked(int loops, String round, int after, int open) {
        Knitted knitted = knit("Toe\nCast on %d sts.\nRnd 1: %s.\n".formatted(loops, round));
        assertEquals(List.of(), ids(knitted));
        Traced last = knitted.traces().getFirst().getLast();
        assertEquals(after, last.stitches());
        assertEquals(open, last.openYarnOvers());
    }

    @ParameterizedTest(name = "{1} over {0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # loops | round | query
            4 | K3                                                | text.round-not-used-up
            4 | K5                                                | text.round-not-used-up
            3 | K2, k2tog                                         | text.round-not-used-up
            5 | *K2, p2; rep from * to end                        | text.repeat-misfit
            5 | K2tog to end                                      | text.repeat-misfit
            4 | K to marker, sm, k to end                         | text.marker-missing
            4 | K2, sm, k2                                        | text.marker-missing
            4 | K to gap, k2tog, k to end                         | text.gap-missing
            4 | K1, k1 with its wraps, k2                         | text.gap-missing
            4 | K1, k the ds, k2                                  | text.gap-missing
            4 | K the 2 held sts, k to end                        | text.held-missing
            5 | Graft 3 sts to 3 sts                              | text.round-not-used-up
            4 | K4, pick up and knit 999999999 along the flap     | text.number-too-large
            """)
    void queriesARoundThatDoesNotWork(int loops, String round, String id) {
        assertEquals(List.of(id), ids(knit("Toe\nCast on %d sts.\nRnd 1: %s.\n".formatted(loops, round))));
    }

    /** A heel of eight of sixteen stitches, turned in every way; the round over all of them finds nothing left open. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # rows, as they are written, parted by slashes | loops on the heel after them
            K to last st, w&t / P to last st, w&t / K to wrapped st, k1 with its wrap, turn / P to wrapped st, p1 with its wrap, turn   | 8
            K to last st, twin st, turn / P to last st, twin st, turn / K to twin, k1 with its twin, turn / P to twin, p1 with its twin, turn | 8
            K to end, turn / Ds, p to end, turn / Ds, k to ds, k the ds / P to ds, p the ds                                             | 8
            K7, turn / Yo, p6, turn / Yo, k6, k2tog, turn / Yo, p to gap, p2tog, turn / K to last 2 sts, k2tog, turn / P to end, turn   | 8
            K5, ssk, turn / Sl1, p2, p2tog, turn / Sl1, k to 1 st before gap, ssk, turn / Sl1, p2, p2tog, turn                            | 4
            K5, ssk, k1, turn / Sl1, p3, p2tog, p1, turn                                                                                | 6
            """)
    void closesWhatTurnsLeave(String rows, int loops) {
        StringBuilder text = new StringBuilder("Heel\nCast on 16 sts; join in the rnd.\nWork flat on the next 8 sts; hold the other 8 sts.\n");
        int row = 1;
        for (String words : rows.split("/")) {
            text.append("Row %d (%s): %s.\n".formatted(row, row % 2 == 1 ? "RS" : "WS", words.strip()));
            row++;
        }
        text.append("Join again in the round.\nRnd 1: K to end. %d sts.\n".formatted(loops + 8));
        assertEquals(List.of(), ids(knit(text.toString())));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # rows; the query of the round that passes over what they leave
            K to last st, w&t / P to end, turn      | text.gap-open
            K to end, turn / Ds, p to end, turn     | text.gap-open
            K6, turn / Sl1, p to end, turn          | text.gap-open
            K6, turn / Yo, p to end, turn           | text.gap-open
            K6 / P to end                           | text.row-not-turned
            """)
    void queriesAHoleOnce(String rows, String id) {
        String[] both = rows.split("/");
        assertEquals(List.of(id), ids(knit("""
                Heel
                Cast on 16 sts; join in the rnd.
                Work flat on the next 8 sts; hold the other 8 sts.
                Row 1: %s.
                Row 2: %s.
                Join again in the round.
                Rnd 1: K to end.
                Rnd 2: K to end.
                """.formatted(both[0].strip(), both[1].strip()))));
    }

    @Test
    void closesYarnOversOnlyWhereTheTextDoes() {
        String closed = "Toe\nCast on 8 sts.\nRnd 1: *Yo, k2; rep from * to end.\nRnd 2: *K1 tbl, k2; rep from * to end.\n";
        assertEquals(List.of(), ids(knit(closed)));
        assertEquals(List.of("text.yarn-over-open"), ids(knit(closed + "Rnd 3: *Yo, k3; rep from * to end.\nRnd 4: K to end.\n")));
        assertEquals(List.of(), ids(knit("Leg\nCast on 8 sts.\nRnd 1: *Yo, k2tog; rep from * to end.\nRnd 2: K to end.\n")));
    }

    @Test
    void worksARoundThatBeginsAnywhere() {
        Knitted knitted = knit("""
                Gusset
                Cast on 12 sts; join in the rnd.
                K3; the rnd now begins here; pm.
                Rnd 1: K4, pm, k to marker, sm. 12 sts.
                Rnd 2: *K1, ssk, k to marker, sm; rep from * to end. 10 sts.
                """);
        assertEquals(List.of(), ids(knitted));
    }

    @Test
    void knitsTenThousandLoopsAndRefusesMore() {
        assertEquals(List.of(), ids(knit("Leg\nCast on 10000 sts.\nK 300 rnds. 10000 sts.\n")));
        assertEquals(List.of("text.number-too-large"), ids(knit("Leg\nCast on 1000000000 sts.\nK 3 rnds.\n")));
    }
}
