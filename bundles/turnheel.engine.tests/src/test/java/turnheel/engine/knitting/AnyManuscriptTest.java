package turnheel.engine.knitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.query.Place;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;

/** Whatever is pasted in ends in queries, each with a place in the text and a sentence. */
class AnyManuscriptTest {

    @Property(seed = Repeatable.SEED, tries = 1000)
    void anyTextIsKnitted(@ForAll String text) {
        knitted(text);
    }

    @Property(seed = Repeatable.SEED, tries = 1500)
    void anyMixOfPiecesIsKnitted(@ForAll("mixes") String text) {
        knitted(text);
    }

    @Property(seed = Repeatable.SEED, tries = 300)
    void aManuscriptWithAnythingInItIsKnitted(@ForAll("damaged") String text) {
        knitted(text);
    }

    @Deep
    void manyMoreDamagedManuscriptsAreKnitted(@ForAll("damaged") String text) {
        knitted(text);
    }

    @Provide
    Arbitrary<String> mixes() {
        return Arbitraries.of("Sizes: S (M, L)\n", "Toe\n", "Cast on ", "8", " (12, 16)", " sts", ". ", "\n", "Rnd 1: ", "Row 2 (WS): ",
                "*", "rep from *", " to end", "k2", "yo", "k1 tbl", "ssk", "k to marker, ", "sm", "pm", ", ", "; ", "(", ")", "[", "]",
                " 3 times", "Rep rnds 1-2 ", "5 more times", "turn", "w&t", "ds", "p to gap", "k3tog", "Size M only: ", "64 (72, 80) sts.",
                "Work the heel flat on the next 4 sts; hold the other 4 sts.", "k the 4 held sts", "graft 4 sts to 4 sts", "bind off all sts",
                "999999999999", "1 1/2", "½", "-", "–", "/", ":", "\u0000", "\uD83E\uDDE6", "\uD83E", "é", "\t", "until 5 sts remain", "# ", "**")
                .list().ofMaxSize(60).map(pieces -> String.join("", pieces));
    }

    @Provide
    Arbitrary<String> damaged() {
        return Arbitraries.of(Corpus.correctFiles()).map(Corpus::correct)
                .flatMap(text -> Arbitraries.integers().between(0, text.length()).flatMap(at -> Arbitraries.integers().between(0, 60)
                        .flatMap(cut -> mixes().map(mix -> text.substring(0, at) + mix
                                + text.substring(Math.min(text.length(), at + cut))))));
    }

    private static void knitted(String text) {
        Manuscript manuscript = Manuscript.read(text);
        List<String> lines = text.lines().toList();
        assertEquals(lines.size(), manuscript.lines().size());
        Knitted knitted = manuscript.knit();
        assertEquals(manuscript.sizes().size(), knitted.traces().size());
        for (Query query : knitted.queries()) {
            Place.Text place = (Place.Text) query.place();
            String line = lines.get(place.line() - 1);
            assertTrue(1 <= place.from() && place.from() <= place.to() && place.to() <= line.length() + 1, query::toString);
            assertTrue(manuscript.sizes().containsAll(query.sizes()), query::toString);
            assertTrue(Sentences.of(query).endsWith("."), query::toString);
        }
    }
}
