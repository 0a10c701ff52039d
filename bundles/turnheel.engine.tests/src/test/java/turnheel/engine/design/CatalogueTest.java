package turnheel.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnheel.engine.term.Key;
import turnheel.engine.term.Term;

class CatalogueTest {

    static List<Parameter> parameters() {
        return Catalogue.all();
    }

    /** The list of architecture.md: what can be overridden is a promise to scripts and files. */
    @Test
    void keepsThePromisedRoles() {
        assertEquals(Set.of("foot.stitches", "foot.instep", "foot.rounds", "toe.points", "toe.castOn",
                "toe.alternateFrom", "toe.tip", "toe.plainBetween", "toe.plainMost", "toe.secondLineAfter", "toe.stitches",
                "toe.centre", "foot.repeats", "heel.stitches", "heel.centre", "heel.gussetIncreases", "heel.flapRows",
                "heel.turnOffset", "heel.corner", "heel.pickUp", "heel.points", "heel.tip", "heel.alternateFrom",
                "heel.plainBetween", "leg.stitches", "leg.calfStitches", "leg.topStitches", "leg.increaseOver",
                "leg.decreaseOver", "leg.rounds", "foot.measure", "leg.measure", "cuff.height", "cuff.stitches",
                "cuff.rounds"), keys(Role.RULE));
        assertEquals(Set.of("gauge.stitches", "gauge.rounds", "gauge.instepStitches", "gauge.legStitches",
                "gauge.flapRows", "gauge.cuffRounds", "gauge.needle", "body.footLength", "body.footCircumference",
                "body.ankleCircumference", "body.heelCircumference", "body.calfCircumference", "body.calfHeight",
                "body.kneeCircumference", "body.legHeight", "fit.easeAround", "fit.easeLength"), keys(Role.INPUT));
    }

    private static Set<String> keys(Role role) {
        return Catalogue.all().stream().filter(parameter -> parameter.role() == role)
                .map(parameter -> parameter.key().name()).collect(Collectors.toSet());
    }

    @Test
    void listsNoKeyTwiceAndEveryPartTogether() {
        Set<Key> keys = new HashSet<>();
        List<Part> parts = Catalogue.all().stream().map(Parameter::part).toList();
        Catalogue.all().forEach(parameter -> assertTrue(keys.add(parameter.key()), parameter.key()::name));
        assertEquals(parts.stream().sorted().toList(), parts);
    }

    @ParameterizedTest
    @MethodSource("parameters")
    void hasWordsForEveryParameter(Parameter parameter) {
        assertTrue(Character.isUpperCase(parameter.label().charAt(0)), parameter.label());
        assertTrue(parameter.description().endsWith("."), parameter.description());
    }

    @Test
    void hasNoWordsForWhatDoesNotExist() {
        Set<String> words = ResourceBundle.getBundle("turnheel.engine.design.catalogue").keySet();
        // the rows of the yarns share their words
        Set<String> needed = Catalogue.all().stream().map(parameter -> parameter.key().name())
                .map(key -> key.replaceFirst("^yarn\\.colour\\d", "yarn.colour"))
                .flatMap(key -> Stream.of(key, key + ".description")).collect(Collectors.toSet());
        assertEquals(needed, words);
    }

    @ParameterizedTest
    @MethodSource("parameters")
    void tellsItsPartByItsKey(Parameter parameter) {
        assertEquals(parameter.part().prefix(), parameter.key().part());
        assertEquals(parameter, Catalogue.parameter(parameter.key()));
        assertEquals(new Term.Reference(parameter.key()), parameter.term());
    }

    @ParameterizedTest(name = "{0} is meant to be {1}")
    @CsvSource(textBlock = """
            foot.stiches,        foot.stitches
            foot.stitchse,       foot.stitches
            foots.titches,       foot.stitches
            body.footlength,     body.footLength
            body.footCircumfrence, body.footCircumference
            toe.caston,          toe.castOn
            heel.center,         heel.centre
            cuff.hieght,         cuff.height
            leg.round,           leg.rounds
            gauge.stitch,        gauge.stitches
            """)
    void suggestsTheKeyThatWasMeant(String mistyped, String meant) {
        assertEquals(new Key(meant), Catalogue.nearestKey(mistyped));
        var refused = assertThrows(IllegalArgumentException.class, () -> Catalogue.parameter(new Key(mistyped)));
        assertTrue(refused.getMessage().contains("\"" + mistyped + "\""), refused::getMessage);
        assertTrue(refused.getMessage().contains(meant), refused::getMessage);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "turnheel", "§§§§§§§§§§§§§§§§§§§§§§§§§"})
    void suggestsSomethingForAnything(String mistyped) {
        assertFalse(Catalogue.nearestKey(mistyped).name().isEmpty());
    }
}
