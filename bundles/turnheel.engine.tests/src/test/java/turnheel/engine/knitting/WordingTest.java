package turnheel.engine.knitting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.instruction.Line;
import turnheel.engine.knitting.ReadLine.Kind;

/** Different words that say the same are read alike. */
class WordingTest {

    private static final String HEAD = """
            Harbour Steps
            Sizes: S (M, L)

            Foot
            Rnd 1: K to end.
            Rnd 2: K to end.
            Inc rnd: M1l, k to end.
            """;

    private static List<Line> read(String text) {
        Manuscript manuscript = Manuscript.read(HEAD + text + "\n");
        assertEquals(List.of(), manuscript.lines().stream().filter(line -> line.kind() == Kind.UNREAD).toList(), text);
        return manuscript.instructions();
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            # as this project writes it | as others may
            K5 (6, 7), ssk.                          | Knit 5 [6, 7] stitches, ssk.
            K5 (6, 7), ssk.                          | k 5/6/7, ssk
            K5 (6, 7), ssk.                          | K5 (6) 7, slip slip knit.
            K5 (6, 7), ssk.                          | K five {6; 7} sts then ssk.
            K5 (–, 7), ssk.                          | K5 (-; 7), ssk.
            *K2, p2; rep from * to end.              | *Knit 2, purl 2; repeat from * around.
            *K2, p2; rep from * to end.              | *K2, p2, rep from * across.
            *K2, p2; rep from * to end.              | *K2, p2. Rep from * to the end of the rnd.
            *K2, p2; rep from * to end.              | *K2, p2*; rep from * to * to end.
            [K2, p2] 3 times.                        | (k2, p2) three times
            [K2, p2] 3 times.                        | [K2, p2] x 3.
            [K2, k2tog] 2 times.                     | [K2, k2tog] twice.
            K to last 2 sts, k2tog.                  | Knit until 2 stitches remain, knit two together.
            K to marker, sm, k to end.               | K to m, slip marker, k to end of round.
            K to 3 sts before marker, k2tog, k1.     | Knit to 3 stitches before the next marker, k2tog, knit 1.
            Rep rnds 1-2 3 (4, 5) more times.        | Repeat rounds 1 and 2, 3 (4, 5) more times.
            Rep rnds 1-2 3 (4, 5) more times.        | Rep Rnds 1 – 2 three [four, five] times more.
            Rep rnd 1 1 more time.                   | Rep rnd 1 once more.
            Rep rnds 1-2 until 60 sts remain.        | Rep rounds 1 & 2 until there are 60 sts.
            Rep inc rnd 4 more times.                | Repeat the inc round 4 more times.
            Bind off all sts.                        | Cast off all stitches.
            Bind off all sts.                        | BO.
            Place a marker.                          | Pm.
            K 20 rnds.                               | Knit 20 rounds.
            Graft 8 sts to 8 sts.                    | Graft the remaining 16 sts together.
            Draw the yarn through the last 8 sts.    | Break yarn and draw through remaining 8 sts, pull tight and fasten off.
            Size M only: K5.                         | For size M only: K5.
            Sizes M and L only: K5.                  | Sizes M, L: K5.
            """)
    void isReadAlike(String one, String other) {
        assertEquals(read(one), read(other));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # what cannot be read is said, whatever stands around it
            Frobnicate the k5.
            K5 or 6 as you like, k2tog.
            K, k2tog.
            Work 2.5 sts in k2tog.
            Rep rnds 1-2 now and then.
            """)
    void isNotGuessed(String text) {
        Manuscript manuscript = Manuscript.read(HEAD + text + "\n");
        assertEquals(Kind.UNREAD, manuscript.lines().getLast().kind());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # what tells nothing to do raises nothing
            This completes the toe.
            Try the sock on before you go on.
            Weave in the ends.
            """)
    void leavesRemarksAlone(String text) {
        Manuscript manuscript = Manuscript.read(HEAD + text + "\n");
        assertEquals(Kind.REMARK, manuscript.lines().getLast().kind());
        assertEquals(List.of(), manuscript.knit().queries().stream().filter(query -> query.check().id().equals("text.unread")).toList());
    }

    @Test
    void takesSignsOfMarkdownOff() {
        Manuscript plain = Manuscript.read("Quay\n\nSizes: S (M)\n\nToe\nCast on 8 (12) sts.\nRnd 1: *K2, m1; rep from * to end.\n");
        Manuscript marked = Manuscript.read(
                "# Quay\n\n**Sizes:** S (M)\n\n## Toe\n- Cast on 8 (12) sts.\n- **Rnd 1:** \\*K2, m1; rep from \\* to end.\n");
        assertEquals(plain.instructions(), marked.instructions());
        assertEquals(plain.sizes(), marked.sizes());
    }
}
