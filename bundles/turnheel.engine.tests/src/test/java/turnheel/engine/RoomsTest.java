package turnheel.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.Design;

/** Rooms and arrows of the engine, as the architecture lays them down. */
class RoomsTest {

    private static final String ENGINE = "turnheel.engine.";

    /** Who may use whom; a room that is not listed here does not exist. */
    private static final Map<String, Set<String>> ARROWS = Map.ofEntries(
            Map.entry("term", Set.of()),
            Map.entry("stitch", Set.of()),
            Map.entry("instruction", Set.of("stitch")),
            Map.entry("formula", Set.of("term")),
            Map.entry("design", Set.of("term")),
            Map.entry("query", Set.of("design", "term")),
            Map.entry("grading", Set.of("formula", "query", "design", "term", "stitch")),
            Map.entry("shaping", Set.of("grading", "design", "stitch")),
            Map.entry("wording", Set.of()),
            // rows that a designer typed are read before they are written
            Map.entry("writing", Set.of("wording", "instruction", "knitting", "yarn", "shaping", "grading", "design",
                    "stitch")),
            Map.entry("knitting", Set.of("instruction", "query", "design", "term", "stitch")),
            Map.entry("drawing", Set.of("knitting", "shaping", "grading", "design", "stitch")),
            Map.entry("yarn", Set.of("shaping", "grading", "design", "term", "stitch")),
            Map.entry("comparing", Set.of("writing", "wording", "grading", "design", "term")),
            Map.entry("checks", Set.of("knitting", "yarn", "grading", "query", "design", "term")));

    /** What the engine may use of the JDK; the annotations leave no trace at run time. */
    private static final List<String> LIBRARY = List.of("java.lang..", "java.math", "java.text", "java.util",
            "java.util.function", "java.util.regex", "java.util.stream", "org.eclipse.jdt.annotation");

    /** What a room that reads texts may use besides: a parser generated for it, in its own cellar. */
    private static final Map<String, List<String>> PARSERS =
            Map.of("formula", List.of(ENGINE + "formula.grammar", "org.antlr.v4.runtime.."),
                    "knitting", List.of(ENGINE + "knitting.grammar", "org.antlr.v4.runtime.."));

    /** The engine alone, as far as people write it: the tests live in packages of the same names. */
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(location -> !location.contains("/grammar/"))
            .importUrl(Design.class.getProtectionDomain().getCodeSource().getLocation());

    static Set<String> rooms() {
        return ARROWS.keySet();
    }

    @Test
    void thereAreNoOtherRooms() {
        assertEquals(ARROWS.keySet().stream().map(room -> ENGINE + room).collect(Collectors.toSet()),
                CLASSES.stream().map(JavaClass::getPackageName).collect(Collectors.toSet()));
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aRoomKnowsOnlyTheRoomsThatFeedIt(String room) {
        List<String> known = new ArrayList<>(LIBRARY);
        known.add(ENGINE + room);
        ARROWS.get(room).forEach(other -> known.add(ENGINE + other));
        known.addAll(PARSERS.getOrDefault(room, List.of()));
        classes().that().resideInAPackage(ENGINE + room).should().onlyDependOnClassesThat()
                .resideInAnyPackage(known.toArray(String[]::new)).check(CLASSES);
    }

    @Test
    void noTwoRoomsLeanOnEachOther() {
        slices().matching(ENGINE + "(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void nothingAsksTheClockTheDiceOrTheMachine() {
        noClasses().should().dependOnClassesThat().haveFullyQualifiedName("java.util.Random")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.util.UUID")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.util.Date")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.util.Calendar")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.util.Timer")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.util.Scanner")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.lang.Thread")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.lang.Process")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.lang.Runtime")
                .orShould().callMethod(System.class, "currentTimeMillis")
                .orShould().callMethod(System.class, "nanoTime")
                .orShould().callMethod(System.class, "getProperty", String.class)
                .orShould().callMethod(System.class, "getProperty", String.class, String.class)
                .orShould().callMethod(System.class, "getenv", String.class)
                .orShould().callMethod(System.class, "getenv")
                .orShould().accessField(System.class, "out")
                .orShould().accessField(System.class, "err")
                .orShould().accessField(System.class, "in")
                .orShould().callMethod(Math.class, "random")
                .orShould().callMethod(Locale.class, "getDefault")
                .orShould().callMethod(String.class, "toLowerCase")
                .orShould().callMethod(String.class, "toUpperCase").check(CLASSES);
    }

    @Test
    void noStaticChanges() {
        // compilers add tables of their own
        fields().that().areStatic().and().doNotHaveModifier(JavaModifier.SYNTHETIC).should().beFinal().check(CLASSES);
    }

    @Test
    void whatIsSeenOutsideDoesNotChange() {
        fields().that().arePublic().should().beFinal().check(CLASSES);
    }

    @Test
    void everyRoomSaysWhatComesInAndWhatGoesOut() {
        JavaPackage engine = CLASSES.getPackage("turnheel.engine");
        for (String room : ARROWS.keySet()) {
            assertTrue(engine.getPackage(room).tryGetPackageInfo().isPresent(), room + " has no package-info");
        }
    }
}
