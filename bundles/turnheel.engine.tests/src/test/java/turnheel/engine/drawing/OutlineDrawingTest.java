package turnheel.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.Grader;

class OutlineDrawingTest {

    private static final double TENTH = 0.05;

    private static Draft threeSizes() {
        return Designs.withoutSizes().withSize("S", "body.footLength = 220 mm; body.footCircumference = 205 mm")
                .withSize("M", "body.footLength = 240 mm; body.footCircumference = 222 mm")
                .withSize("L", "body.footLength = 260 mm; body.footCircumference = 240 mm");
    }

    static List<Draft> oneOfEach() {
        return Pictures.oneOfEach();
    }

    /**
     * By hand: 27 rounds of toe, 52 of foot and 22 of heel are 101 at 4.4 a cm: 229.5 mm. Heel 22, leg 51, cuff 17: 90
     * rounds are 204.5 mm.
     */
    @Test
    void theFabricIsAsLongAndHighAsItsRounds() {
        Bounds sock = Pictures.fabric(OutlineDrawing.of(Designs.toeUp64().graded(), "M")).getFirst().bounds();
        assertEquals(229.5, sock.width(), TENTH);
        assertEquals(204.5, sock.height(), TENTH);
    }

    /** 64 stitches at 32 over 10 cm are 200 mm around. */
    @Test
    void measurementsStandInBothUnits() {
        List<String> texts = Pictures.texts(OutlineDrawing.of(Designs.toeUp64().graded(), "M"));
        assertTrue(texts.contains("Foot length 23 cm (9 in)"), texts::toString);
        assertTrue(texts.contains("Leg, half around 10 cm (3 7/8 in)"), texts::toString);
        int foot = texts.indexOf("Foot, half around");
        assertEquals(List.of("10 cm", "3 7/8 in"), texts.subList(foot + 1, foot + 3));
        int heel = texts.indexOf("Heel height");
        assertEquals(List.of("5 cm", "2 in"), texts.subList(heel + 1, heel + 3));
        int cuff = texts.indexOf("Cuff");
        assertEquals(List.of("3.9 cm", "1 1/2 in"), texts.subList(cuff + 1, cuff + 3));
        int leg = texts.indexOf("Leg height");
        assertEquals(List.of("20.5 cm", "8 in"), texts.subList(leg + 1, leg + 3));
    }

    @Test
    void aWideningLegIsMeasuredTwice() {
        List<String> texts = Pictures.texts(OutlineDrawing.of(
                Designs.toeUp64().with(new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT)).graded(), "M"));
        assertTrue(texts.contains("Leg, half around"), texts::toString);
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("Top of leg, half around ")), texts::toString);
    }

    /** By hand: 80 stitches around the calf and 72 below the knee at 32 over 10 cm are 125 and 112.5 mm flat. */
    @Test
    void aCalfThatNarrowsAgainIsWidestBetween() {
        Picture picture = OutlineDrawing.of(Designs.toeUp64().with(new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT))
                .with("leg.calfStitches = 80; leg.topStitches = 72").graded(), "M");
        List<String> texts = Pictures.texts(picture);
        int calf = texts.indexOf("Calf, half around");
        assertEquals(List.of("12.5 cm", "4 7/8 in"), texts.subList(calf + 1, calf + 3));
        assertTrue(texts.contains("Top of leg, half around 11.3 cm (4 3/8 in)"), texts::toString);
        assertNothingOverlaps(picture);
    }

    @Test
    void allSizesStandOnOneFloorAtOneHeel() {
        List<Bounds> socks = OutlineDrawing.nested(threeSizes().graded()).shapes().stream()
                .flatMap(shape -> shape instanceof Shape.Group(var name, var shapes) && name.startsWith("Size ")
                        ? Stream.of(withoutPen(shapes.getLast())) : Stream.of()).toList();
        assertEquals(3, socks.size());
        socks.forEach(sock -> assertEquals(socks.getFirst().left(), sock.left(), 1e-9));
        socks.forEach(sock -> assertEquals(socks.getFirst().bottom(), sock.bottom(), 1e-9));
        assertTrue(socks.get(0).width() > socks.get(1).width() && socks.get(1).width() > socks.get(2).width());
    }

    private static Bounds withoutPen(Shape shape) {
        Shape.Path path = (Shape.Path) shape;
        return new Shape.Path(path.start(), path.segments(), path.closed(), Paint.filled(Ink.OUTLINE)).bounds();
    }

    @Test
    void theTableHasAColumnForEachSizeAndALetterForEachLine() {
        List<String> texts = Pictures.texts(OutlineDrawing.nested(threeSizes().graded()));
        for (String label : List.of("S", "M", "L")) {
            // beside its outline and above its column
            assertTrue(texts.stream().filter(label::equals).count() >= 2, texts::toString);
        }
        for (String letter : List.of("A", "B", "C", "D", "E", "F")) {
            assertEquals(2, texts.stream().filter(letter::equals).count(), letter);
        }
        assertTrue(texts.contains("23 cm"), texts::toString);
    }

    @Test
    void theTableOfManySizesContinuesBelowAndIsNoWiderThanTheDrawing() {
        Draft many = Designs.withoutSizes();
        for (int size = 1; size <= 24; size++) {
            many = many.withSize("Size " + size, "body.footLength = %d mm; body.footCircumference = %d mm"
                    .formatted(150 + 6 * size, 150 + 5 * size));
        }
        Picture picture = OutlineDrawing.nested(many.graded());
        Bounds drawn = Pictures.fabric(picture).getFirst().bounds();
        assertTrue(picture.width() < 1.7 * drawn.width(), () -> picture.width() + " mm for " + drawn.width());
        List<String> texts = Pictures.texts(picture);
        long tables = texts.stream().filter("Foot length"::equals).count();
        assertTrue(tables >= 3, () -> tables + " tables");
        for (int size = 1; size <= 24; size++) {
            String label = "Size " + size;
            assertEquals(2, texts.stream().filter(label::equals).count(), label);
        }
    }

    /** The labels of a low sock stood on the foot, over the outlines of other sizes. */
    @ParameterizedTest
    @EnumSource(SockLength.class)
    void labelsOfSizesStandOffTheSock(SockLength length) {
        Picture picture = OutlineDrawing.nested(threeSizes().with(new StraightLeg(length)).graded());
        Shape.Path sock = Pictures.fabric(picture).getFirst();
        Bounds foot = withoutPen(sock);
        double front = sock.segments().stream().flatMap(segment -> segment.points().stream())
                .filter(point -> point.y() == foot.top()).mapToDouble(Point::x).max().orElseThrow();
        List<Shape.Text> labels = Pictures.shapes(picture)
                .flatMap(shape -> shape instanceof Shape.Text text && List.of("S", "M", "L").contains(text.text())
                        && text.anchor() == Shape.Text.Anchor.START ? Stream.of(text) : Stream.of()).toList();
        assertEquals(3, labels.size());
        double topOfFoot = foot.bottom() - footWidth(threeSizes().with(new StraightLeg(length)).graded());
        for (Shape.Text label : labels) {
            assertTrue(label.bounds().left() > front, label::toString);
            assertTrue(label.bounds().bottom() < topOfFoot, label::toString);
        }
    }

    private static double footWidth(Graded graded) {
        return graded.sizes().getLast().value(Catalogue.FINISHED_CIRCUMFERENCE) / 2;
    }

    @Test
    void aPageThatSetsTheTableItselfGetsTheLettersAlone() {
        Graded graded = threeSizes().graded();
        List<String> texts = Pictures.texts(OutlineDrawing.lettered(graded));
        OutlineFigures figures = OutlineFigures.of(graded);
        assertEquals(List.of("S", "M", "L"), figures.sizes());
        figures.rows().forEach(row -> assertEquals(1, texts.stream().filter(row.letter()::equals).count(), row.letter()));
        assertTrue(texts.stream().noneMatch(text -> text.endsWith(" cm")), texts::toString);
        assertInside(OutlineDrawing.lettered(graded));
    }

    @ParameterizedTest
    @MethodSource("oneOfEach")
    void everyKindIsDrawnAndMeasured(Draft draft) {
        Picture picture = OutlineDrawing.of(draft.graded(), "M");
        assertEquals(1, Pictures.fabric(picture).size());
        assertNothingOverlaps(picture);
        assertInside(picture);
    }

    @Test
    void everyKindLooksDifferent() {
        for (Direction direction : Direction.values()) {
            List<Draft> drafts = Pictures.oneOfEach().stream().filter(draft -> draft.direction() == direction).toList();
            // a sock that is usual in all but one part comes once for every part
            long usual = drafts.stream().distinct().count();
            assertEquals(usual, drafts.stream().distinct().map(draft -> OutlineDrawing.of(draft.graded(), "M").shapes())
                    .distinct().count(), direction.name());
        }
    }

    @Test
    void aLowCuffIsStillAboveTheHeel() {
        Picture picture = OutlineDrawing.of(Designs.toeUp64().with(new StraightLeg(SockLength.NO_SHOW))
                .with(new RolledCuff()).graded(), "M");
        assertNothingOverlaps(picture);
        // the instep lies higher than the back of so low a sock
        assertTrue(Pictures.fabric(picture).getFirst().bounds().height() > 100);
    }

    @Test
    void whatIsMissingIsNamedAndNotMadeUp() {
        Graded graded = Designs.toeUp64().without(Catalogue.FOOT_LENGTH.key()).graded();
        Picture picture = OutlineDrawing.of(graded, "M");
        assertEquals(List.of(), Pictures.fabric(picture));
        assertTrue(picture.description().startsWith("Size M is not drawn"), picture.description());
        assertTrue(picture.description().contains(Catalogue.FINISHED_LENGTH.label()), picture.description());
    }

    @Test
    void aSizeThatCannotBeDrawnLeavesTheOthers() {
        Draft draft = threeSizes().withSize("XL", "body.footCircumference = 260 mm");
        Picture picture = OutlineDrawing.nested(draft.graded());
        assertEquals(1, Pictures.fabric(picture).size());
        assertTrue(picture.description().contains("Size XL is not drawn"), picture.description());
    }

    @Test
    void aLongTitleIsCutInThePictureOnly() {
        Design design = threeSizes().design();
        String title = "Harbour Light ".repeat(30).strip();
        Picture usual = OutlineDrawing.nested(Grader.grade(design));
        Picture cut = OutlineDrawing.nested(Grader.grade(new Design(title, design.direction(), design.stitchGauge(),
                design.roundGauge(), design.toe(), design.heel(), design.leg(), design.cuff(), design.sizes())));
        assertTrue(cut.title().startsWith(title), cut.title());
        assertTrue(Pictures.texts(cut).stream()
                .anyMatch(text -> text.startsWith("Harbour Light Harbour") && text.endsWith("…")));
        assertEquals(usual.width(), cut.width(), 0.25 * usual.width());
    }

    @Provide
    Arbitrary<Draft> usual() {
        return RandomDesigns.usual();
    }

    @Provide
    Arbitrary<Draft> unusual() {
        return RandomDesigns.unusual();
    }

    @Repeatable
    void nothingLiesOutsideOrOverAnotherLabelInUsualDesigns(@ForAll("usual") Draft draft) {
        Graded graded = draft.graded();
        graded.sizes().forEach(size -> {
            Picture picture = OutlineDrawing.of(graded, size.label());
            assertInside(picture);
            assertNothingOverlaps(picture);
        });
        assertInside(OutlineDrawing.nested(graded));
        assertNothingOverlaps(OutlineDrawing.nested(graded));
    }

    @Repeatable
    void nothingLiesOutsideInUnusualDesigns(@ForAll("unusual") Draft draft) {
        Graded graded = draft.graded();
        assertInside(OutlineDrawing.nested(graded));
        graded.sizes().forEach(size -> assertInside(OutlineDrawing.of(graded, size.label())));
    }

    static void assertInside(Picture picture) {
        picture.shapes().stream().map(Shape::bounds).forEach(bounds -> assertTrue(
                bounds.left() >= 0 && bounds.top() >= 0 && bounds.right() <= picture.width()
                && bounds.bottom() <= picture.height(), bounds::toString));
    }

    /** No two labels share any place. */
    static void assertNothingOverlaps(Picture picture) {
        List<Shape.Text> texts = Pictures.shapes(picture)
                .flatMap(shape -> shape instanceof Shape.Text text ? Stream.of(text) : Stream.of()).toList();
        Set<String> overlapping = IntStream.range(0, texts.size()).boxed()
                .flatMap(one -> texts.subList(one + 1, texts.size()).stream()
                        .filter(other -> overlap(texts.get(one), other))
                        .map(other -> texts.get(one).text() + " / " + other.text()))
                .collect(Collectors.toSet());
        assertEquals(Set.of(), overlapping);
    }

    private static boolean overlap(Shape.Text one, Shape.Text other) {
        Bounds a = one.bounds();
        Bounds b = other.bounds();
        // letters without descenders reach their base line only
        return a.left() < b.right() && b.left() < a.right()
                && Math.min(one.at().y(), other.at().y()) > Math.max(a.top(), b.top());
    }
}
