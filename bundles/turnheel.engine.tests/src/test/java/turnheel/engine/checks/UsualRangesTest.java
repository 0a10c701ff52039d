package turnheel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.Catalogue;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;

/** The ends of a usual range belong to it, and what lies just outside is asked about under its own name. */
class UsualRangesTest {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # numbers of the 64 stitch sock, 200 mm around      | queries
            foot.stitches = 64; body.footCircumference = 200 mm | ''
            # 200 / 235.3 is -15.0 to the decimal that is shown, 200 / 250 is exactly -20
            foot.stitches = 64; body.footCircumference = 235.3 mm | ''
            foot.stitches = 64; body.footCircumference = 250 mm   | fit.ease-unusual −20
            foot.stitches = 64; body.footCircumference = 251 mm   | fit.tight 20.3
            # 50 % and 60 %
            foot.stitches = 64; heel.stitches = 32              | ''
            foot.stitches = 60; body.footCircumference = 210 mm; heel.stitches = 36 | ''
            # the whole foot is wide, but it can be turned
            foot.stitches = 64; heel.stitches = 64              | heel.share-unusual 100
            heel.centre = 2                                     | ''
            heel.centre = 30                                    | ''
            foot.instep = 64                                    | foot.split-uneven 64
            foot.instep = 63                                    | foot.split-uneven 62
            # no leg between heel and cuff
            leg.rounds = 0                                      | ''
            foot.rounds = 0                                     | foot.rounds-too-few 0
            leg.stitches = 32                                   | ''
            leg.stitches = 128                                  | ''
            leg.stitches = 8; cuff.stitches = 4 | 'fit.stretch-too-far 3.2, counts.change-too-great 8'
            # a wide toe, but its lines are whole
            foot.stitches = 64; toe.castOn = 64                 | toe.depth-unusual 1
            """)
    void includeTheirEnds(String numbers, String queries) {
        assertEquals(queries, queries(Designs.toeUp64().with(numbers)));
    }

    @ParameterizedTest(name = "27 rounds of a foot of {0} mm: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # 27 rounds at 50 over 10 cm are 54 mm: 18 % of 300 and 30 % of 180
            300 | ''
            301 | toe.depth-unusual 17.9
            180 | ''
            179 | toe.depth-unusual 30.2
            """)
    void includeTheEndsOfAUsualToe(int length, String queries) {
        Draft draft = Designs.toeUp64().withGauge("32/10 cm", "50/10 cm")
                .with("foot.stitches = 64; fit.easeLength = 0 mm; body.footLength = %d mm".formatted(length));
        assertEquals(queries, queries(draft));
    }

    @Test
    void fallingCountsAreAskedAboutBetweenEqualFeetToo() {
        Draft draft = Designs.toeUp64().with("body.footCircumference = 215 mm; foot.stitches = 64").withSize("M long",
                "body.footLength = 250 mm; body.footCircumference = 215 mm; foot.stitches = 60");
        assertEquals("counts.fall 60", queries(draft));
    }

    @Test
    void fallingCountsAreAskedAboutBesideOtherSlips() {
        Draft draft = Designs.toeUp64().with("foot.stitches = 68")
                .withSize("L", "body.footLength = 260 mm; body.footCircumference = 230 mm; foot.stitches = 64")
                .withSize("XL", "body.footCircumference = 245 mm");
        assertEquals("size.measurement-missing, counts.fall 64", queries(draft));
    }

    /** 187.5 mm and 200 mm are 60 and 64 stitches. */
    @Test
    void equalCountsAreAskedAboutFromFourStitchesOn() {
        Draft draft = Designs.withoutSizes();
        String own = "fit.easeAround = 0 %; foot.stitches = 60; body.footLength = 240 mm; body.footCircumference = ";
        assertEquals("counts.equal 60", queries(draft.withSize("M", own + "187.5 mm").withSize("L", own + "200 mm")));
        assertEquals("", queries(draft.withSize("M", own + "188 mm").withSize("L", own + "200 mm")));
    }

    /** Ids and found values, but for what a heel that nobody measured would stretch. */
    private static String queries(Draft draft) {
        Draft measured = draft.sizes().getFirst().inputs().containsKey(Catalogue.HEEL_CIRCUMFERENCE.key()) ? draft
                : draft.with("body.heelCircumference = 80 mm");
        return Checks.of(measured.graded()).stream().map(query -> List.of(query.check().id(), query.found()))
                .map(query -> String.join(" ", query).strip()).collect(Collectors.joining(", "));
    }
}
