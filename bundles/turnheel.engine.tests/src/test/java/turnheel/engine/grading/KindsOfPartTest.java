package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.AfterthoughtHeel.Cap;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.Heel;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.design.Leg;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.PickUp;
import turnheel.engine.design.Snap;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Toe;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;
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
        assertCovers(FlapLength.class, Designs.ONE_FLAP_LENGTH_OF_EACH);
        assertCovers(PickUp.class, Designs.ONE_PICK_UP_OF_EACH);
    }

    /** The choices within a kind: every constant of every enumeration is met. */
    @Test
    void hasAFixtureForEveryChoice() {
        assertEquals(Set.of(Increase.values()), chosen(Designs.EVERY_TOE, Increase.class));
        assertEquals(Set.of(TurnMethod.values()), chosen(Designs.EVERY_TOE, TurnMethod.class));
        assertEquals(Set.of(CastOn.values()), chosen(Designs.EVERY_TOE, CastOn.class));
        assertEquals(Set.of(Lean.values()), chosen(Designs.EVERY_TOE, Lean.class));
        assertEquals(Set.of(Lean.values()), chosen(Designs.EVERY_HEEL, Lean.class));
        assertEquals(Set.of(FlapFabric.values()), chosen(Designs.EVERY_HEEL, FlapFabric.class));
        assertEquals(Set.of(FlapEdge.values()), chosen(Designs.EVERY_HEEL, FlapEdge.class));
        assertCovers(PickUp.class, List.copyOf(chosen(Designs.EVERY_HEEL, PickUp.class)));
        assertEquals(Set.of(TurnMethod.values()), chosen(Designs.EVERY_HEEL, TurnMethod.class));
        assertEquals(Set.of(HeelTurn.values()), chosen(Designs.EVERY_HEEL, HeelTurn.class));
        assertEquals(Set.of(Cap.values()), chosen(Designs.EVERY_HEEL, Cap.class));
        assertCovers(FlapLength.class, List.copyOf(chosen(Designs.EVERY_HEEL, FlapLength.class)));
        assertEquals(Set.of(LegCount.values()), chosen(Designs.EVERY_LEG, LegCount.class));
        assertEquals(Set.of(LengthMode.values()), chosen(Designs.EVERY_LENGTHS, LengthMode.class));
        assertEquals(Set.of(Snap.values()), chosen(Designs.EVERY_LENGTHS, Snap.class));
        assertEquals(Set.of(Zone.values()), chosen(Designs.EVERY_STITCH_PATTERN, Zone.class));
        assertEquals(Set.of(Fit.values()), chosen(Designs.EVERY_STITCH_PATTERN, Fit.class));
        assertCovers(Toe.class, Designs.EVERY_TOE);
        assertCovers(Heel.class, Designs.EVERY_HEEL);
        assertCovers(Leg.class, Designs.EVERY_LEG);
        assertCovers(Cuff.class, Designs.EVERY_CUFF);
    }

    /** The values of one type among the components of records. */
    private static <T> Set<T> chosen(List<?> records, Class<T> type) {
        return records.stream().flatMap(fixture -> Stream.of(fixture.getClass().getRecordComponents())
                .filter(component -> component.getType() == type).map(component -> {
                    try {
                        return type.cast(component.getAccessor().invoke(fixture));
                    } catch (ReflectiveOperationException e) {
                        throw new AssertionError(e);
                    }
                })).collect(Collectors.toSet());
    }

    private static void assertCovers(Class<?> kind, List<?> fixtures) {
        assertEquals(Set.of(kind.getPermittedSubclasses()),
                fixtures.stream().map(Object::getClass).collect(Collectors.toSet()));
    }

    /** Every kind with every choice, in both directions. */
    static List<Draft> oneOfEach() {
        List<Draft> drafts = new ArrayList<>();
        for (Direction direction : Direction.values()) {
            Draft base = Designs.toeUp64().with("body.heelCircumference = 310 mm; body.ankleCircumference = 210 mm")
                    .with(direction);
            Designs.EVERY_TOE.forEach(toe -> drafts.add(base.with(toe)));
            Designs.EVERY_HEEL.forEach(heel -> drafts.add(base.with(heel)));
            Designs.EVERY_LEG.forEach(leg -> drafts.add(base.with(leg)));
            Designs.EVERY_CUFF.forEach(cuff -> drafts.add(base.with(cuff)));
            Designs.EVERY_STITCH_PATTERN.forEach(pattern -> drafts.add(base.with(pattern)));
            Designs.EVERY_LENGTHS.forEach(lengths -> drafts.add(base.with(lengths)
                    .with(Designs.EVERY_STITCH_PATTERN.getFirst())));
            Stream.of(SockLength.values()).forEach(length ->
                drafts.add(base.with(new StraightLeg(length, LegCount.AS_FOOT)).with(Designs.FLAP_HEEL)));
            drafts.add(base.with(new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT)).with("body.kneeCircumference = 330 mm"));
        }
        return drafts;
    }

    @ParameterizedTest
    @MethodSource("oneOfEach")
    void everyRowHasAValueAndAReasonAndNothingElseHas(Draft draft) {
        // no rule reads the needle, so it has no default; that of a leg's height is the pattern's
        Graded graded = draft.with("gauge.needle = 2.5 mm").graded();
        GradedSize size = graded.sizes().getFirst();
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
            // a low sock's cuff may follow its heel
            boolean none = part.part() == Part.LEG && Numbers.of(graded, "leg.rounds") == 0;
            assertEquals(none, part.rounds().isEmpty(), part.part()::name);
            part.rounds().forEach(round -> assertFalse(RoundText.of(round).isBlank()));
        }
    }

    @ParameterizedTest
    @MethodSource("oneOfEach")
    void aUsualSockRaisesNoError(Draft draft) {
        assertTrue(Checks.of(draft.graded()).stream().noneMatch(query -> query.severity() == Severity.ERROR));
    }
}
