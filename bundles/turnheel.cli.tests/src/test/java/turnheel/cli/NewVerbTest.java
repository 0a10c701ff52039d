package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Materials;
import turnheel.engine.design.PickUp;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.Size;
import turnheel.engine.design.Snap;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.design.Yarn;
import turnheel.engine.design.YarnLine;
import turnheel.engine.term.Key;
import turnheel.model.DocumentException;
import turnheel.model.Door;
import turnheel.model.PatternFiles;

class NewVerbTest {

    private static final Length TEN_CM = new Length(10, LengthUnit.CENTIMETRE);

    @TempDir
    private Path folder;

    private static Design design(Path file) throws DocumentException {
        return Door.design(PatternFiles.load(file));
    }

    @Test
    void needsNothingButSizes() throws DocumentException {
        Path file = folder.resolve("my.turnheel");
        Run run = Run.of("new", file, "--sizes", "women").clean();
        assertEquals(file + ": a new pattern in 5 sizes: XS, S, M, L, XL.\n", run.out());

        Design design = design(file);
        assertEquals("my", design.title());
        assertEquals(Direction.TOE_UP, design.direction());
        assertEquals(new Gauge(32, TEN_CM), design.stitchGauge());
        assertEquals(new Gauge(44, TEN_CM), design.roundGauge());
        assertEquals(new RoundToe(4, Increase.YARN_OVER), design.toe());
        assertEquals(new ShortRowHeel(TurnMethod.WRAPPED), design.heel());
        assertEquals(new StraightLeg(SockLength.CREW), design.leg());
        assertEquals(new RibCuff(2, 2), design.cuff());
        // the survey's median, as the table of sizes gives it
        assertEquals(Quantity.parse("246 mm"), design.size("M").inputs().get(new Key("body.footLength")));
    }

    @Test
    void takesEveryOption() throws DocumentException {
        Path file = folder.resolve("all.turnheel");
        Run.of("new", file, "--title", "Skarsund – 2×2", "--direction", "cuff-down", "--gauge", "8x11/1in",
                "--toe", "wedge", "--increase", "lifted", "--heel", "short-row", "--turn", "wrapped", "--leg", "straight", "--length",
                "mid-calf", "--cuff", "rib-3x1", "--cuff-height", "1 3/4in", "--size", Patterns.M).clean();

        Design design = design(file);
        Length inch = new Length(1, LengthUnit.INCH);
        assertEquals("Skarsund – 2×2", design.title());
        assertEquals(Direction.CUFF_DOWN, design.direction());
        assertEquals(new Gauge(8, inch), design.stitchGauge());
        assertEquals(new Gauge(11, inch), design.roundGauge());
        assertEquals(new WedgeToe(Increase.LIFTED), design.toe());
        assertEquals(new StraightLeg(SockLength.MID_CALF), design.leg());
        assertEquals(new RibCuff(3, 1), design.cuff());
        assertEquals(Quantity.parse("1.75 in"), design.size("M").overrides().get(new Key("cuff.height")));
    }

    @Test
    void takesTheChoicesOfFlapAndSpiral() throws DocumentException {
        Path file = folder.resolve("choices.turnheel");
        Run.of("new", file, "--cast-on", "half-worked", "--lean", "left", "--heel", "flap-gusset", "--flap-fabric",
                "slipped-in-turn", "--flap-edge", "garter", "--pick-up", "0.75 stitches/row", "--size", Patterns.M)
                .clean();
        assertEquals(new RoundToe(4, Increase.YARN_OVER, CastOn.HALF_WORKED, Lean.LEFT), design(file).toe());
        assertEquals(new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody(), FlapFabric.SLIPPED_IN_TURN,
                FlapEdge.GARTER, new PickUp.StitchesPerRow(0.75)), design(file).heel());
        Run.of("set", file, "heel=afterthought", "cap=round", "lean=right").clean();
        assertEquals(new AfterthoughtHeel(AfterthoughtHeel.Cap.ROUND), design(file).heel());
        assertEquals(new RoundToe(4, Increase.YARN_OVER, CastOn.HALF_WORKED, Lean.RIGHT), design(file).toe());
    }

    @Test
    void takesEveryKindAndChoice() throws DocumentException {
        Path file = folder.resolve("kinds.turnheel");
        Run.of("new", file, "--direction", "cuff-down", "--toe", "star", "--heel", "flap-gusset", "--heel-turn", "square",
                "--flap", "1.25 rows/stitch", "--leg", "calf", "--length", "knee", "--leg-count", "from-ankle", "--cuff",
                "hem", "--foot-length-mode", "to-fit", "--leg-length-mode", "measure", "--cuff-length-mode", "both",
                "--snap", "foot", "--stitch-pattern", "instep: 6+1x8 panel 2; leg: 4x2", "--yarn",
                "Tidal Four: 200m/50g category 1 2 balls", "--swatch", "30x40 12.5g", "--size", Patterns.M).clean();
        Design design = design(file);
        assertEquals(new StarToe(Increase.MAKE_ONE), design.toe());
        assertEquals(new FlapHeel(HeelTurn.SQUARE, new FlapLength.RowsPerStitch(1.25)), design.heel());
        assertEquals(new CalfLeg(SockLength.KNEE, LegCount.FROM_ANKLE), design.leg());
        assertEquals(new HemCuff(), design.cuff());
        assertEquals(List.of(new StitchPattern(Zone.INSTEP, 6, 1, 8, Fit.CENTRED_PANEL, 2),
                new StitchPattern(Zone.LEG, 4, 0, 2, Fit.WHOLE_REPEATS, 1)), design.stitchPatterns());
        assertEquals(new Lengths(LengthMode.TO_FIT, LengthMode.MEASURE, LengthMode.BOTH, Snap.FOOT), design.lengths());
        assertEquals(Materials.UNDECIDED.withYarns(List.of(new YarnLine(
                new Yarn("Tidal Four", 200, 50, OptionalInt.of(1)), "", OptionalInt.of(2))))
                .with(Swatch.weighed(30, 40, 12.5)), design.materials());
    }

    @Test
    void refusesALegToFit() {
        Path file = folder.resolve("leg.turnheel");
        Run.of("new", file, "--leg-length-mode", "to-fit", "--size", Patterns.M)
                .refused("leg", "rounds or measure or both");
        assertFalse(Files.exists(file));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            240mm    | 240 mm
            24.5 cm  | 24.5 cm
            9 1/2in  | 9.5 in
            9 1/2 in | 9.5 in
            9.5"     | 9.5 in
            """)
    void readsLengthsInAnyUnitAsTheyWereWritten(String written, String kept) throws DocumentException {
        Path file = folder.resolve("units.turnheel");
        Run.of("new", file, "--size", "38/39: foot-length=%s foot-circumference=225mm".formatted(written)).clean();
        Size size = design(file).size("38/39");
        assertEquals(kept, size.inputs().get(new Key("body.footLength")).toString());
        assertEquals("225 mm", size.inputs().get(new Key("body.footCircumference")).toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"8x12/10cm, 8/10 cm, 12/10 cm", "32 x 44 / 10 cm, 32/10 cm, 44/10 cm",
            "7.5×10/1in, 7.5/1 in, 10/1 in"})
    void readsBothGaugesFromOneText(String written, String stitches, String rounds) throws DocumentException {
        Path file = Patterns.with(folder.resolve("gauge.turnheel"), "--gauge", written);
        assertEquals(stitches, design(file).stitchGauge().toString());
        assertEquals(rounds, design(file).roundGauge().toString());
    }

    @Test
    void leavesAFileThatIsThereUnlessForced() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.turnheel"), "my own words");
        Run.of("new", file, "--size", Patterns.M).refused(file, "--force");
        assertEquals("my own words", Files.readString(file));

        Run.of("new", file, "--size", Patterns.M, "--force").clean();
        assertTrue(Files.readString(file).contains("label=\"M\""));
    }

    @Test
    void leavesTheOldFileWhenAForcedOneIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.turnheel"), "my own words");
        Run.of("new", file, "--size", Patterns.M, "--force", "--toe", "pointed")
                .refused("--toe", "pointed", "round wedge");
        assertEquals("my own words", Files.readString(file));
    }

    @Test
    void makesTheSameFileFromTheSameCommand() throws IOException {
        byte[] first = Files.readAllBytes(Patterns.toeUp(folder));
        Path other = Files.createDirectory(folder.resolve("other"));
        assertArrayEquals(first, Files.readAllBytes(Patterns.toeUp(other)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            --direction   | sideways    | toe-up cuff-down
            --direction   | toeup       | Did you mean toe-up?
            --toe         | wedgee      | Did you mean wedge?
            --toe         | square      | round wedge star short-row asymmetric
            --increase    | yarnover    | Did you mean yarn-over?
            --heel        | flap        | short-row flap-gusset afterthought
            --turn        | none        | wrapped twin german yarn-over
            --leg         | bootcut     | straight calf
            --heel-turn   | square      | no part of this pattern has that choice
            --cast-on     | halfworked  | Did you mean half-worked?
            --lean        | up          | right left
            --flap-fabric | slipped     | no part of this pattern has that choice
            --stitch-pattern | 6+1      | instep: 6+1
            --stitch-pattern | sole: 6+1 | instep
            --yarn        | 200m        | Tidal Four: 200m/50g
            --swatch      | 30x40       | 30x40 12.5g
            --length      | crow        | Did you mean crew?
            --cuff        | lace        | rib-2x2
            --cuff        | rib-2x0     | not 2×0
            --cuff-height | 3           | a length such as 240 mm
            --cuff-height | 40km        | 24.5 cm or 9 1/2 in
            --gauge       | 32          | 32x44/10cm
            --gauge       | 0x44/10cm   | 0
            --gauge       | 32x0/10cm   | 0
            --gauge       | -32x44/10cm | between
            --gauge       | 32x44/0cm   | above 0
            --gauge       | 9999x44/1cm | between
            --gauge       | 32x44/10ells| 32/10 cm
            --sizes       | womem       | women
            """)
    void refusesWhatItDoesNotKnowAndSaysWhatThereIs(String option, String value, String says) {
        Path file = folder.resolve("no.turnheel");
        boolean table = option.equals("--sizes");
        Run run = table ? Run.of("new", file, option, value) : Run.of("new", file, "--size", Patterns.M, option, value);
        run.refused(table ? value : option, says);
        assertFalse(Files.exists(file));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            M                                                      | "M" is not a size
            M: hello                                               | is not a size
            M:                                                     | size M has no foot-length
            M: foot-lenght=240mm foot-circumference=225mm          | Did you mean foot-length?
            M: foot-length=240mm foot-length=241mm                 | twice
            M: foot-length=240 foot-circumference=225mm            | foot-length
            M: foot-length= foot-circumference=225mm               | foot-length
            M: foot-length=4mm foot-circumference=225mm            | between 60 and 400 mm
            M: foot-length=240ell foot-circumference=225mm         | 240ell
            : foot-length=240mm foot-circumference=225mm           | label
            """)
    void refusesASizeThatCannotBeKnitted(String size, String says) {
        Path file = folder.resolve("no.turnheel");
        Run.of("new", file, "--size", size).refused(says);
        assertFalse(Files.exists(file));
    }

    @Test
    void refusesTwoSizesOfOneLabel() {
        Path file = folder.resolve("no.turnheel");
        Run.of("new", file, "--size", Patterns.M, "--size", Patterns.M).refused("two sizes", "\"M\"");
        assertFalse(Files.exists(file));
    }

    @Test
    void refusesToGuessSizes() {
        Path file = folder.resolve("no.turnheel");
        Run.of("new", file).refused("--sizes", "women", "--size");
        Run.of("new", file, "--sizes", "women", "--size", Patterns.M).refused("--sizes", "--size");
        assertFalse(Files.exists(file));
    }

    @Test
    void refusesANameThatIsNotAPatternFile() {
        Path file = folder.resolve("pattern.xlsx");
        Run.of("new", file, "--sizes", "women").refused(file, ".turnheel");
        assertFalse(Files.exists(file));
    }
}
