package turnheel.engine.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HouseStylesTest {

    private static List<Optional<String>> values(String... values) {
        return Arrays.stream(values).map(value -> value.isEmpty() ? Optional.<String>empty() : Optional.of(
                value)).toList();
    }

    @Test
    void listsValuesWithTheMarksOfTheStyle() {
        assertEquals("56 (64, 72, 80)", HouseStyles.usual().sized(values("56", "64", "72", "80")));
        assertEquals("56 [64, 72, 80]", HouseStyles.shipped("longhand").sized(values("56", "64", "72", "80")));
        HouseStyle slashes = HouseStyles.read("own", Map.of("sized.opening", "/", "sized.separator", "/",
                "sized.closing", "", "sized.dash", "x", "lengths", "cm"));
        assertEquals("56/x/72", slashes.sized(values("56", "", "72")));
    }

    @Test
    void showsADashWhereASizeHasNone() {
        assertEquals("– (–, 20, 24)", HouseStyles.usual().sized(values("", "", "20", "24")));
    }

    @Test
    void printsOneValueWhereAllAgreeUnlessToldOtherwise() {
        assertEquals("8", HouseStyles.usual().sized(values("8", "8")));
        assertEquals("8 (8)", HouseStyles.read("own", Map.of("sized.oneForAll", "no")).sized(values("8", "8")));
        assertEquals("8", HouseStyles.read("own", Map.of("sized.oneForAll", "no")).sized(values("8")));
    }

    @Test
    void replacesPhrases() {
        HouseStyle own = HouseStyles.read("own", Map.of("word.stitch.SLIP_SLIP_KNIT.once", "skp"));
        assertEquals("skp", Vocabulary.of(own).phraseOfOne("stitch.SLIP_SLIP_KNIT"));
        assertEquals("ssk", Vocabulary.of(HouseStyles.usual()).phraseOfOne("stitch.SLIP_SLIP_KNIT"));
    }

    @ParameterizedTest(name = "{0}={1}")
    @CsvSource(textBlock = """
            # what is wrong, what the message names
            decimal,          ;,      decimal
            inch.denominator, 3,      1 2 4 8
            abbreviations,    maybe,  yes no
            lengths,          feet,   cm in both
            english,          AU,     US UK
            percent.decimals, 9,      0 1 2
            needles,          three,  neutral two four
            sized.dash,       ' ',    sized.dash
            colour,           red,    sized.opening
            sized.separator,  /,      lengths=cm
            word.nonsense,    x,      nonsense
            """)
    void refusesWhatDoesNotSuitAKeyAndSaysWhatWould(String key, String value, String named) {
        String message = assertThrows(IllegalArgumentException.class, () -> HouseStyles.read("own", Map.of(key, value)))
                .getMessage();
        assertTrue(message.contains(named), message);
    }

    @Test
    void listsTheStylesThatShip() {
        assertEquals(List.of("studio", "longhand", "clusters"), HouseStyles.SHIPPED);
        String message = assertThrows(IllegalArgumentException.class, () -> HouseStyles.shipped("short")).getMessage();
        assertTrue(message.contains("studio, longhand, clusters"), message);
    }

    @Test
    void everyReplacementTableReplacesPhrasesThatThereAre() {
        for (String table : List.of("words", "uk", "uk-words")) {
            var words = java.util.ResourceBundle.getBundle("turnheel.engine.wording.vocabulary-" + table);
            words.keySet().forEach(key -> assertTrue(Vocabulary.knows(key), table + " has an unknown " + key));
        }
    }

    @Test
    void wholeWordsHoldNoAbbreviation() {
        Vocabulary words = Vocabulary.of(HouseStyles.shipped("longhand"));
        words.beginningWith("").forEach((key, phrase) -> {
            if (!key.startsWith("abbreviation.")) {
                assertFalse(phrase.matches("(?s).*\\b(sts?|rnds?|rep|k\\d?|p\\d?|sl\\d?|tbl|ssk|yo)\\b.*"),
                        key + "=" + phrase);
            }
        });
    }
}
