package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Design;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.Stranding;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Yarn;
import turnheel.engine.design.YarnLine;
import turnheel.model.DocumentException;
import turnheel.model.Door;
import turnheel.model.PatternFiles;

/** Yarns, colours, notions, needle and swatch on the command line. */
class MaterialsOptionsTest {

    private static final Length THIRTEEN_CENTIMETRES = new Length(13, LengthUnit.CENTIMETRE);

    @TempDir
    private Path folder;

    @Test
    void newTakesEveryMaterial() throws DocumentException {
        Path file = dressed();
        Materials materials = design(file).materials();
        assertEquals(List.of(
                new YarnLine(new Yarn("Tidal Four", 200, 50, OptionalInt.of(1)), "sea slate", OptionalInt.of(2)),
                new YarnLine(Yarn.of("Tidal Four", 200, 50), "gorse", OptionalInt.empty())), materials.yarns());
        assertEquals(Map.of(ColourPlace.HEEL, 2, ColourPlace.LEG_PATTERN, 2), materials.colours());
        assertEquals(List.of("stitch markers", "tapestry needle"), materials.notions());
        assertEquals(Optional.of(Length.ofMm(2.5)), materials.needle());
        assertEquals(Optional.of(new Swatch(42, 58, OptionalDouble.of(7.5),
                Optional.of(new Swatch.Measured(THIRTEEN_CENTIMETRES, THIRTEEN_CENTIMETRES)), Swatch.Worked.FLAT, true)),
                materials.swatch());
        assertEquals(List.of(new StitchPattern(Zone.LEG, 4, 0, 8, Fit.WHOLE_REPEATS, 1).with(Stranding.withFloatsTo(4))),
                design(file).stitchPatterns());
    }

    @Test
    void newTakesTheGaugeOfTheSwatch() throws DocumentException {
        Design design = design(dressed());
        assertEquals(new Gauge(42, THIRTEEN_CENTIMETRES), design.stitchGauge());
        assertEquals(new Gauge(58, THIRTEEN_CENTIMETRES), design.roundGauge());
    }

    private Path dressed() {
        Path file = folder.resolve("dressed.turnheel");
        Run.of("new", file, "--gauge", "swatch", "--yarn", "Tidal Four: 200m/50g, colour sea slate, category 1, 2 balls",
                "--yarn", "Tidal Four: 200m/50g colour gorse", "--colour", "heel: 2", "--colour", "leg-pattern: 2",
                "--notion", "stitch markers", "--notion", "tapestry needle", "--needle", "2.5mm", "--swatch",
                "42x58 over 13x13cm 7.5g flat washed", "--stitch-pattern", "leg: 4x8 stranded 4", "--size", Patterns.M);
        return file;
    }

    /** What set says that it was can be set again. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            yarn    | Tidal Four: 200m/50g, colour sea slate, category 1, 2 balls; Tidal Four: 200m/50g, colour gorse | 1m/1g; 2m/2g
            colour  | heel: 2; leg-pattern: 2 | toe: 1
            notion  | stitch markers; tapestry needle | scissors
            needle  | 2.5 mm | 1/8 in
            swatch  | 42x58 over 13 cm x 13 cm 7.5g flat washed | 40x50 3g
            stitch-pattern | leg: 4+0x8 stranded 4 | leg: 4x8 stranded
            """)
    void setReadsWhatItWrites(String name, String text, String other) throws DocumentException {
        Path file = dressed();
        Design before = design(file);
        Run run = Run.of("set", file, name + "=" + other);
        assertTrue(run.out().contains(text), run.out());
        assertNotEquals(before, design(file));
        Run.of("set", file, name + "=" + text);
        assertEquals(before, design(file));
    }

    @Test
    void setTakesEachMaterialAway() throws DocumentException {
        Path file = dressed();
        Run.of("set", file, "colour=", "yarn=", "notion=", "needle=", "swatch=");
        assertEquals(Materials.UNDECIDED, design(file).materials());
    }

    @Test
    void setGivesASizeANeedleOfItsOwn() throws DocumentException {
        Path file = dressed();
        Run.of("set", file, "gauge.needle=2.75mm", "gauge.needle[M]=2.25mm", "gauge.stitches[M]=36/10cm");
        assertEquals(Optional.of(Length.ofMm(2.75)), design(file).materials().needle());
        assertEquals(Quantity.parse("2.25 mm"), design(file).sizes().getFirst().inputs().get(Catalogue.NEEDLE.key()));
    }

    @Test
    void gradeShowsWhatEachYarnTakes() {
        String table = Run.of("grade", dressed()).out();
        assertTrue(table.contains("yarn.colour1Metres") && table.contains("yarn.colour2Balls"), table);
        assertTrue(table.contains("yarn.floats"), table);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            --yarn   | Slate: 200m; Gorse: 200m/50g | Tidal Four: 200m/50g
            --colour | heel                    | heel: 2
            --colour | heel: two               | heel: 2
            --colour | heal: 1                 | Did you mean heel?
            --colour | heel: 2                 | the heel is worked in yarn 2; the pattern has 0
            --colour | heel: 1; heel: 2        | heel has two colours
            --needle | 2.5                     | is not a quantity
            --needle | 25                      | is not a length
            --needle | 40mm                    | between 1 and 30 mm
            --swatch | 30x40                   | 42x58 over 13x13cm
            --swatch | 30x40 over 10cm         | 42x58 over 13x13cm
            --swatch | 30x40 over 0x10cm       | above 0
            --swatch | 30x40 over 1x1mm        | must lie between 4 and 200
            --gauge  | swatch                  | no swatch was measured
            --stitch-pattern | leg: 4 stranded 0 | 1 to 200 stitches
            """)
    void newRefusesWhatNobodyCanMean(String option, String value, String says) {
        Path file = folder.resolve("no.turnheel");
        Run.of("new", file, "--size", Patterns.M, option, value).refused(option, says);
    }

    @Test
    void aYarnInUseStays() throws DocumentException {
        Path file = dressed();
        Design before = design(file);
        Run.of("set", file, "yarn=Tidal Four: 200m/50g").refused("yarn", "the heel is worked in yarn 2; the pattern has 1");
        assertEquals(before, design(file));
    }

    private static Design design(Path file) throws DocumentException {
        return Door.design(PatternFiles.load(file));
    }
}
