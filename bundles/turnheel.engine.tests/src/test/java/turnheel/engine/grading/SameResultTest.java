package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.writing.RoundText;

/** The same design gives the same result, whenever and wherever. */
class SameResultTest {

    @Repeatable
    void twice(@ForAll("unusual") Draft draft) {
        Graded once = draft.graded();
        Graded again = new Draft(draft.direction(), draft.stitches(), draft.rounds(), draft.toe(), draft.heel(), draft.leg(),
                draft.cuff(), draft.patterns(), draft.lengths(), draft.sizes()).graded();
        assertEquals(once.sizes(), again.sizes());
        assertEquals(once.queries(), again.queries());
        assertEquals(Checks.of(once), Checks.of(again));
        assertEquals(everyWord(once), everyWord(again));
    }

    /** Readers in Turkey, Egypt, India and Germany write i, digits and decimals each in their own way. */
    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG", "hi-IN-u-nu-deva", "de-DE", "th-TH-u-nu-thai"})
    void underEveryLocale(String locale) {
        Draft draft = Designs.toeUpInSixSizes().with("foot.stitches = 63; cuff.stitches = 61; leg.stitches = 1000");
        List<String> here = everyWord(draft.graded());
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(locale));
            assertEquals(here, everyWord(draft.graded()));
        } finally {
            Locale.setDefault(usual);
        }
    }

    private static List<String> everyWord(Graded graded) {
        List<String> words = new ArrayList<>();
        for (Query query : Checks.of(graded)) {
            words.add(query + " " + Sentences.of(query));
        }
        for (GradedSize size : graded.sizes()) {
            size.cells().keySet().forEach(key -> words.addAll(Why.of(graded, key, size.label()).lines()));
            Rounds.of(graded, size).forEach(part -> part.rounds().forEach(round -> words.add(RoundText.of(round))));
        }
        return words;
    }

    @Provide
    Arbitrary<Draft> unusual() {
        return RandomDesigns.unusual();
    }
}
