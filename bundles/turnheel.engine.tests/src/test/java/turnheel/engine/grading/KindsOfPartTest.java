package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Leg;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.Toe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.query.Severity;
import turnheel.engine.shaping.PartRounds;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.writing.RoundText;

/** What holds for every kind of part, over one fixture of each. */
class KindsOfPartTest {

    @Test
    void hasAFixtureForEveryKind() {
        assertCovers(Toe.class, Designs.ONE_TOE_OF_EACH);
        assertCovers(Heel.class, Designs.ONE_HEEL_OF_EACH);
        assertCovers(Leg.class, Designs.ONE_LEG_OF_EACH);
        assertCovers(Cuff.class, Designs.ONE_CUFF_OF_EACH);
        assertEquals(Set.of(Increase.values()), toes().map(KindsOfPartTest::increase).collect(Collectors.toSet()));
    }

    private static void assertCovers(Class<?> kind, List<?> fixtures) {
        assertEquals(Set.of(kind.getPermittedSubclasses()),
                fixtures.stream().map(Object::getClass).collect(Collectors.toSet()));
    }

    /** Every kind with every direction; toes with every increase. */
    static List<Draft> oneOfEach() {
        List<Draft> drafts = new ArrayList<>();
        for (Direction direction : Direction.values()) {
            Draft base = Designs.toeUp64().with("body.heelCircumference = 310 mm; body.ankleCircumference = 210 mm")
                    .with(direction);
            toes().forEach(toe -> drafts.add(base.with(toe)));
            Designs.ONE_HEEL_OF_EACH.forEach(heel -> drafts.add(base.with(heel)));
            Designs.ONE_LEG_OF_EACH.forEach(leg -> drafts.add(base.with(leg)));
            Designs.ONE_CUFF_OF_EACH.forEach(cuff -> drafts.add(base.with(cuff)));
        }
        return drafts;
    }

    private static Stream<Toe> toes() {
        return Designs.ONE_TOE_OF_EACH.stream()
                .flatMap(toe -> Arrays.stream(Increase.values()).map(increase -> with(toe, increase)));
    }

    private static Toe with(Toe toe, Increase increase) {
        return switch (toe) {
            case RoundToe round -> new RoundToe(round.lines(), increase);
            case WedgeToe wedge -> new WedgeToe(increase);
        };
    }

    private static Increase increase(Toe toe) {
        return switch (toe) {
            case RoundToe round -> round.increase();
            case WedgeToe wedge -> wedge.increase();
        };
    }

    @ParameterizedTest
    @MethodSource("oneOfEach")
    void everyRowHasAValueAndAReasonAndNothingElseHas(Draft draft) {
        Graded graded = draft.graded();
        GradedSize size = graded.sizes().getFirst();
        // the leg height of a pattern has a default, so nothing is missing
        assertEquals(graded.parameters().stream().map(Parameter::key).toList(), List.copyOf(size.cells().keySet()));
        for (Cell cell : size.cells().values()) {
            assertFalse(Why.of(graded, cell.key(), size.label()).lines().isEmpty());
        }
    }

    @ParameterizedTest
    @MethodSource("oneOfEach")
    void everyPartHasRoundsThatCanBeWritten(Draft draft) {
        Graded graded = draft.graded();
        for (PartRounds part : Rounds.of(graded, graded.sizes().getFirst())) {
            assertFalse(part.rounds().isEmpty(), part.part()::name);
            part.rounds().forEach(round -> assertFalse(RoundText.of(round).isBlank()));
        }
    }

    @ParameterizedTest
    @MethodSource("oneOfEach")
    void aUsualSockRaisesNoError(Draft draft) {
        assertTrue(Checks.of(draft.graded()).stream().noneMatch(query -> query.severity() == Severity.ERROR));
    }
}
