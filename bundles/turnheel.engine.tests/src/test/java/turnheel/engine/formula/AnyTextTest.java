package turnheel.engine.formula;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.formula.Reading.Read;
import turnheel.engine.formula.Reading.Unread;

/** Whatever is written has an answer: a term, or a problem with its place. */
class AnyTextTest {

    @Property(seed = Repeatable.SEED, tries = 3000)
    void anyTextIsAnswered(@ForAll String text) {
        answered(text);
    }

    @Property(seed = Repeatable.SEED, tries = 3000)
    void anyMixOfPiecesIsAnswered(@ForAll("mixes") String text) {
        answered(text);
    }

    @Property(seed = Repeatable.SEED, tries = 1000)
    void aFormulaWithAnythingInItIsAnswered(@ForAll("damaged") String text) {
        answered(text);
    }

    @Deep
    void manyMoreMixesOfPiecesAreAnswered(@ForAll("mixes") String text) {
        answered(text);
    }

    @Provide
    Arbitrary<String> mixes() {
        return Arbitraries.of("foot.stitches", "A1", "ROUND(", "if(", "foo(", "(", ")", ";", ",", "+", "-", "*", "/",
                "^", "%", "=", "<>", "<=", ">", "1", "0", "2.5", "1e999", " ", "\n", "\"", "\"x\"", "#", "\uD83E",
                "\uDDE6", "\uD83E\uDDE6", "\u0000", "é").list().ofMaxSize(40).map(pieces -> String.join("", pieces));
    }

    @Provide
    Arbitrary<String> damaged() {
        return RandomFormulas.texts().flatMap(text -> Arbitraries.integers().between(0, text.length())
                .flatMap(at -> mixes().map(mix -> text.substring(0, at) + mix + text.substring(at))));
    }

    static void answered(String text) {
        switch (OwnFormula.read(text)) {
            case Read(var term) -> assertTrue(!Double.isInfinite(term.evaluate(key -> 4)), text);
            case Unread unread -> assertTrue(text.startsWith(unread.piece(), unread.position()), unread::toString);
        }
    }
}
