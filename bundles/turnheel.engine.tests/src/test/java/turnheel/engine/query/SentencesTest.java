package turnheel.engine.query;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.ResourceBundle;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import turnheel.engine.design.Catalogue;

class SentencesTest {

    private static final Pattern ID = Pattern.compile("[a-z]+([A-Z][a-z]+)*\\.[a-z]+(-[a-z]+)*");

    @Test
    void haveOneForEveryCheckAndNoneForAnyOther() {
        assertEquals(Arrays.stream(Check.values()).map(Check::id).collect(Collectors.toSet()),
                ResourceBundle.getBundle("turnheel.engine.query.sentences").keySet());
    }

    @Test
    void belongToIdsOfTheirOwn() {
        assertEquals(Check.values().length, Arrays.stream(Check.values()).map(Check::id).distinct().count());
    }

    @ParameterizedTest
    @EnumSource(Check.class)
    void areWholeWithTheValuesFilledIn(Check check) {
        String sentence = Sentences.of(new Query(check, Catalogue.FOOT_STITCHES.key(), List.of("M"), "56–60", "63"));
        assertTrue(ID.matcher(check.id()).matches(), check.id());
        assertTrue(sentence.endsWith("."), sentence);
        assertFalse(sentence.contains("{") || sentence.contains("}"), sentence);
        assertFalse(sentence.contains("''"), sentence);
        assertTrue(Character.isUpperCase(sentence.charAt(0)), sentence);
    }

    @Test
    void tellLabelExpectedAndFound() {
        assertEquals("Foot stitches is overridden to 63; the parts need a multiple of 4.", Sentences.of(new Query(
                Check.OVERRIDE_BREAKS, Catalogue.FOOT_STITCHES.key(), List.of("M"), "a multiple of 4", "63")));
        assertEquals("The heel is worked on 40.6 % of the foot's stitches; 50–60 % is usual.", Sentences.of(new Query(
                Check.HEEL_SHARE, Catalogue.HEEL_STITCHES.key(), List.of("M"), "50–60", "40.6")));
    }

    @Test
    void takeTheTextOfAUserAsData() {
        assertTrue(Sentences.of(new Query(Check.OVERRIDE_BREAKS, Catalogue.FOOT_STITCHES.key(), List.of("M"), "{0} 'x'",
                "'{1}'"))
                .contains("'{1}'; the parts need {0} 'x'"));
    }
}
