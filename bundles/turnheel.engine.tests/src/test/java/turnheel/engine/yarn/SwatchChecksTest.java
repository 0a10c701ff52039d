package turnheel.engine.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Length;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Swatch;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** Gauge and swatch: 3 % of what the swatch shows is what a ruler can tell. */
class SwatchChecksTest {

    /** 32 stitches and 44 rounds over 10 cm. */
    private static final Draft SOCK = Designs.toeUp64();

    @ParameterizedTest(name = "{0} stitches over {1}")
    @CsvSource(textBlock = """
            # 1 stitch off, and 3 % of 33 are 0.99
            33,  100 mm,  33
            # 1 off, and 3 % of 31 are 0.93
            310, 1000 mm, 31
            # 8.4 an inch are 33.07 over 10 cm
            42,  5 in,    33.1
            """)
    void asksWhereTheStitchesDiffer(int stitches, String width, String shown) {
        // 44 rounds over 10 cm
        assertEquals(List.of(query(Catalogue.GAUGE_STITCHES, shown, "32")),
                asked(SOCK, measured(stitches, width, 44, "100 mm")));
    }

    @ParameterizedTest(name = "{0} over {1}, {2} over {3}")
    @CsvSource(textBlock = """
            # 0.9 of 32.9, 1 of 45
            329, 1000 mm, 45, 100 mm
            32,  100 mm,  44, 100 mm
            # 8 an inch are 31.5
            40,  5 in,    44, 10 cm
            """)
    void doesNotAskWhereARulerCannotTell(int stitches, String width, int rounds, String height) {
        assertEquals(List.of(), asked(SOCK, measured(stitches, width, rounds, height)));
    }

    @Test
    void asksAboutRoundsByThemselves() {
        assertEquals(List.of(query(Catalogue.GAUGE_ROUNDS, "42", "44")),
                asked(SOCK, measured(32, "100 mm", 42, "100 mm")));
    }

    /** A size on another needle has another gauge, and nobody said that this swatch is of that needle. */
    @Test
    void doesNotJudgeASizeWithAGaugeOfItsOwn() {
        Draft own = SOCK.with("gauge.stitches = 36/10 cm; gauge.needle = 2 mm");
        assertEquals(List.of(), asked(own, measured(32, "100 mm", 44, "100 mm")));
    }

    @Test
    void doesNotAskWhereNothingWasMeasured() {
        assertEquals(List.of(), asked(SOCK, Materials.UNDECIDED.with(Swatch.weighed(20, 20, 2))));
        assertEquals(List.of(), asked(SOCK, Materials.UNDECIDED));
    }

    private static Materials measured(int stitches, String width, int rounds, String height) {
        var size = new Swatch.Measured((Length) Quantity.parse(width), (Length) Quantity.parse(height));
        return Materials.UNDECIDED.with(new Swatch(stitches, rounds, OptionalDouble.empty(), Optional.of(size),
                Swatch.Worked.FLAT, true));
    }

    private static Query query(Parameter gauge, String expected, String found) {
        return new Query(Check.SWATCH_DIFFERS, gauge.key(), List.of(Designs.M), expected, found);
    }

    private static List<Query> asked(Draft draft, Materials materials) {
        return Checks.of(Socks.graded(draft, materials)).stream()
                .filter(query -> query.check() == Check.SWATCH_DIFFERS).toList();
    }
}
