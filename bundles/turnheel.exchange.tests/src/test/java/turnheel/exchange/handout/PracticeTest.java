package turnheel.exchange.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Materials;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.knitting.Knitted;
import turnheel.engine.knitting.Manuscript;
import turnheel.engine.knitting.Traced;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.Renderings;
import turnheel.exchange.document.Block;

class PracticeTest {

    static Stream<Draft> ofEveryKind() {
        return Socks.ofEveryKind();
    }

    @ParameterizedTest
    @MethodSource("ofEveryKind")
    void theWrittenPracticeSockKnitsAndShowsTheCountsOfItsStages(Draft draft) {
        Practice practice = Practice.of(draft.design()).orElseThrow();
        String text = Renderings.plain(Manuscripts.write(practice.graded(), HouseStyles.usual()));
        Knitted knitted = Manuscript.read(text).knit();
        assertEquals(List.of(), knitted.queries(), text);
        List<Integer> seen = knitted.traces().getFirst().stream().map(Traced::stitches).toList();
        List<Stage> stages = practice.stages();
        int at = 0;
        for (Stage stage : stages) {
            int found = seen.subList(at, seen.size()).indexOf(stage.round().stitches());
            assertTrue(found >= 0, () -> stage + " is not seen in " + seen + " of\n" + text);
            at += found;
        }
        assertTrue(stages.size() >= 6, stages.toString());
    }

    @Test
    void stopsWhereATeacherStops() {
        assertEquals(List.of(Stage.Kind.CAST_ON, Stage.Kind.TOE, Stage.Kind.FOOT, Stage.Kind.CUP_OUT,
                Stage.Kind.CUP_BACK, Stage.Kind.LEG, Stage.Kind.CUFF), stages(Designs.toeUp64()));
        assertEquals(List.of(Stage.Kind.CAST_ON, Stage.Kind.CUFF, Stage.Kind.LEG, Stage.Kind.FLAP, Stage.Kind.TURN,
                Stage.Kind.PICK_UP, Stage.Kind.GUSSET, Stage.Kind.FOOT, Stage.Kind.TOE_TIP),
                stages(Designs.cuffDown64().with(Designs.FLAP_HEEL)));
        assertEquals(List.of(Stage.Kind.CAST_ON, Stage.Kind.TOE, Stage.Kind.FOOT, Stage.Kind.GUSSET, Stage.Kind.TURN,
                Stage.Kind.FLAP, Stage.Kind.LEG, Stage.Kind.CUFF), stages(Designs.toeUp64().with(Designs.FLAP_HEEL)));
        assertEquals(List.of(Stage.Kind.CAST_ON, Stage.Kind.TOE, Stage.Kind.FOOT, Stage.Kind.LEG, Stage.Kind.CUFF,
                Stage.Kind.PICK_UP, Stage.Kind.CAP),
                stages(Designs.toeUp64().with(Designs.ONE_HEEL_OF_EACH.getLast())));
    }

    private static List<Stage.Kind> stages(Draft draft) {
        return Practice.of(draft.design()).orElseThrow().stages().stream().map(Stage::kind).toList();
    }

    /**
     * 180 mm foot, 0.95 of it around less 5 %: 162.45 mm at 19 stitches are 30.9, and a round toe on 4 lines takes 32.
     */
    @Test
    void isSmallAndThick() {
        Practice practice = Practice.of(Designs.toeUp64().design()).orElseThrow();
        GradedSize size = practice.graded().sizes().getFirst();
        assertEquals(32, size.value(Catalogue.FOOT_STITCHES));
        // as much higher than wide as at 32 stitches and 44 rounds: 19 x 44 / 32 is 26.1
        assertEquals(26, size.value(Catalogue.GAUGE_ROUNDS));
    }

    @Test
    void leavesOutWhatIsNoTechnique() {
        Design design = Designs.toeUpInSixSizes().with(Designs.EVERY_STITCH_PATTERN.getFirst()).design();
        Design practice = Practice.of(design).orElseThrow().graded().design();
        assertEquals(List.of(), practice.stitchPatterns());
        assertEquals(Materials.UNDECIDED, practice.materials());
        assertEquals(1, practice.sizes().size());
        assertEquals(Map.of(), practice.sizes().getFirst().overrides());
        assertEquals(design.toe(), practice.toe());
        assertEquals(design.cuff(), practice.cuff());
    }

    @Test
    void theTableNamesEveryStageWithItsCount() {
        Practice practice = Practice.of(Designs.toeUp64().with(Designs.FLAP_HEEL).design()).orElseThrow();
        Block.Table table = practice.document().blocks().stream().filter(Block.Table.class::isInstance)
                .map(Block.Table.class::cast).findFirst().orElseThrow();
        List<String> counts = new ArrayList<>();
        table.rows().forEach(row -> counts.add(((Block.Cell.Figure) row.cells().get(3)).text()));
        assertEquals(practice.stages().stream().map(stage -> Integer.toString(stage.round().stitches())).toList(),
                counts);
        Gauge gauge = practice.graded().design().stitchGauge();
        assertTrue(gauge.per100mm() >= 18 && gauge.per100mm() <= 20);
    }
}
