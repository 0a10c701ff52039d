package turnheel.exchange.imprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

import org.junit.jupiter.api.Test;

import turnheel.engine.design.CastOn;
import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Materials;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.Size;
import turnheel.engine.design.Snap;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Stranding;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.design.Yarn;
import turnheel.engine.design.YarnLine;
import turnheel.engine.term.Key;
import turnheel.exchange.Designs;

class ContentHashTest {

    private static final Design DESIGN = Designs.toeUp();
    private static final Materials TWO = Materials.UNDECIDED.withYarns(List.of(
            new YarnLine(Yarn.of("Lamp Sock", 200, 50), "slate", OptionalInt.empty()),
            YarnLine.of(Yarn.of("Lamp Sock", 200, 50))));

    @Test
    void isTheSha256OfTheCanonicalText() {
        Size size = new Size("any", "M \"big\"", Map.of(new Key("body.footLength"), Quantity.parse("9 1/2 in"),
                new Key("body.footCircumference"), Quantity.parse("22 cm")),
                Map.of(new Key("foot.stitches"), Quantity.parse("64")));
        Design design = new Design("Two\nlines", Direction.TOE_UP, Designs.gauge("32/10 cm"), Designs.gauge("44/10 cm"),
                new RoundToe(4, Increase.YARN_OVER), new ShortRowHeel(TurnMethod.WRAPPED),
                new StraightLeg(SockLength.CREW), new RibCuff(2, 2), List.of(size));
        assertEquals("""
                turnheel-design/6
                title "Two\\u000alines"
                direction TOE_UP
                gauge.stitches 32/10 cm
                gauge.rounds 44/10 cm
                toe RoundToe[lines=4, increase=YARN_OVER, castOn=UNWORKED, lean=RIGHT]
                heel ShortRowHeel[turn=WRAPPED]
                leg StraightLeg[length=CREW, count=AS_FOOT]
                cuff RibCuff[knit=2, purl=2, mayAdjust=false]
                materials "Materials[yarns=[], colours={}, notions=[], needle=Optional.empty, swatch=Optional.empty, \
                margin=10 %]"
                lengths Lengths[foot=BOTH, leg=BOTH, cuff=ROUNDS, snap=NONE]
                size "M \\u0022big\\u0022"
                  input body.footCircumference 22 cm
                  input body.footLength 9.5 in
                  override foot.stitches 64
                """, DesignText.of(design));
        // computed with sha256sum from the text above
        assertEquals("665ff7af398eacb52b6f275f96a362fcd981d87afe258ed12f6cf7d92c044dcb", ContentHash.of(design));
    }

    @Test
    void doesNotDependOnTheOrderOfInputsNorOnInnerIds() {
        Size first = DESIGN.sizes().getFirst();
        Map<Key, Quantity> turned = new LinkedHashMap<>();
        first.inputs().entrySet().stream().sorted(Map.Entry.<Key, Quantity>comparingByKey().reversed())
                .forEach(entry -> turned.put(entry.getKey(), entry.getValue()));
        Design other = Designs.with(DESIGN, DESIGN.title(),
                List.of(new Size("another id", first.label(), turned, Map.of())));
        assertEquals(ContentHash.of(Designs.with(DESIGN, DESIGN.title(), List.of(first))), ContentHash.of(other));
    }

    @Test
    void everyDecisionOfADesignerChangesIt() {
        Size first = DESIGN.sizes().getFirst();
        List<Design> designs = List.of(DESIGN,
                Designs.titled("Another"),
                new Design(DESIGN.title(), Direction.CUFF_DOWN, DESIGN.stitchGauge(), DESIGN.roundGauge(), DESIGN.toe(),
                        DESIGN.heel(), DESIGN.leg(), DESIGN.cuff(), DESIGN.sizes()),
                new Design(DESIGN.title(), DESIGN.direction(), Designs.gauge("8/25 mm"), DESIGN.roundGauge(),
                        DESIGN.toe(), DESIGN.heel(), DESIGN.leg(), DESIGN.cuff(), DESIGN.sizes()),
                new Design(DESIGN.title(), DESIGN.direction(), DESIGN.stitchGauge(), Designs.gauge("43/10 cm"),
                        DESIGN.toe(), DESIGN.heel(), DESIGN.leg(), DESIGN.cuff(), DESIGN.sizes()),
                Designs.with(DESIGN, new RoundToe(5, Increase.YARN_OVER), DESIGN.leg(), DESIGN.cuff()),
                Designs.with(DESIGN, new RoundToe(4, Increase.LIFTED), DESIGN.leg(), DESIGN.cuff()),
                Designs.with(DESIGN, new RoundToe(4, Increase.YARN_OVER, CastOn.HALF_WORKED, Lean.RIGHT), DESIGN.leg(),
                        DESIGN.cuff()),
                Designs.with(DESIGN, new RoundToe(4, Increase.YARN_OVER, CastOn.UNWORKED, Lean.LEFT), DESIGN.leg(),
                        DESIGN.cuff()),
                Designs.with(DESIGN, new WedgeToe(Increase.LIFTED), DESIGN.leg(), DESIGN.cuff()),
                Designs.with(DESIGN, DESIGN.toe(), new StraightLeg(SockLength.KNEE), DESIGN.cuff()),
                Designs.with(DESIGN, DESIGN.toe(), DESIGN.leg(), new RibCuff(2, 1)),
                Designs.with(DESIGN, DESIGN.toe(), DESIGN.leg(), new RibCuff(1, 2)),
                Designs.with(DESIGN, DESIGN.toe(), DESIGN.leg(), new RibCuff(2, 2, true)),
                Designs.with(DESIGN, DESIGN.toe(), new StraightLeg(SockLength.CREW, LegCount.FROM_ANKLE),
                        DESIGN.cuff()),
                Designs.starAndFlap(), Designs.flapLast(), Designs.panel(), patterned(8), patterned(10),
                DESIGN.withMaterials(Materials.of(Yarn.of("Lamp Sock", 200, 50))),
                DESIGN.withMaterials(Materials.of(Yarn.of("Lamp Sock", 210, 50))),
                DESIGN.withMaterials(Materials.of(Yarn.of("Lamp Sock", 200, 50)).withBalls(2)),
                DESIGN.withMaterials(TWO),
                DESIGN.withMaterials(TWO.withColours(Map.of(ColourPlace.HEEL, 2))),
                DESIGN.withMaterials(TWO.withColours(Map.of(ColourPlace.TOE, 2))),
                DESIGN.withMaterials(TWO.withColours(Map.of(ColourPlace.TOE, 1))),
                DESIGN.withMaterials(Materials.UNDECIDED.withNotions(List.of("scissors"))),
                DESIGN.withMaterials(Materials.UNDECIDED.withNeedle(Optional.of(Length.ofMm(2.5)))),
                DESIGN.withMaterials(Materials.UNDECIDED.with(Swatch.weighed(40, 50, 5))),
                DESIGN.withMaterials(Materials.UNDECIDED.with(flat(false))),
                DESIGN.withMaterials(Materials.UNDECIDED.with(flat(true))),
                patterned(Stranding.withFloatsTo(4)), patterned(Stranding.withFloatsTo(5)),
                patterned(new Stranding(OptionalInt.empty())), patterned("K2", "p2"), patterned("K2, p2", "K4"),
                patterned("K4", "K2, p2"),
                DESIGN.withLengths(new Lengths(LengthMode.TO_FIT, LengthMode.BOTH, LengthMode.ROUNDS, Snap.NONE)),
                DESIGN.withLengths(new Lengths(LengthMode.BOTH, LengthMode.MEASURE, LengthMode.ROUNDS, Snap.NONE)),
                DESIGN.withLengths(new Lengths(LengthMode.BOTH, LengthMode.BOTH, LengthMode.BOTH, Snap.NONE)),
                DESIGN.withLengths(new Lengths(LengthMode.BOTH, LengthMode.BOTH, LengthMode.ROUNDS, Snap.FOOT)),
                DESIGN.withOwnRows(List.of(new OwnRow(new Key("own.half"), "", "foot.stitches/2"))),
                DESIGN.withOwnRows(List.of(new OwnRow(new Key("own.half"), "Half", "foot.stitches/2"))),
                DESIGN.withOwnRows(List.of(new OwnRow(new Key("own.half"), "", "foot.stitches/2 "))),
                DESIGN.withOwnRows(List.of(new OwnRow(new Key("own.part"), "", "foot.stitches/2"))),
                Designs.with(DESIGN, DESIGN.title(), DESIGN.sizes().subList(0, 4)),
                Designs.with(DESIGN, DESIGN.title(), DESIGN.sizes().reversed()),
                only(first),
                only(new Size(first.id(), "Y", first.inputs(), Map.of())),
                only(Designs.with(first, Map.of("fit.easeAround", "-9 %"), Map.of())),
                only(Designs.with(first, Map.of(), Map.of("foot.rounds", "50"))),
                only(Designs.with(first, Map.of(), Map.of("leg.rounds", "50"))));
        Set<String> hashes = new HashSet<>();
        designs.forEach(design -> assertTrue(hashes.add(ContentHash.of(design)), () -> DesignText.of(design)));
    }

    /** The same colours, however they were given. */
    @Test
    void doesNotTellTheOrderOfColours() {
        Map<ColourPlace, Integer> one = new LinkedHashMap<>();
        one.put(ColourPlace.HEEL, 2);
        one.put(ColourPlace.CUFF, 2);
        Map<ColourPlace, Integer> other = new LinkedHashMap<>();
        other.put(ColourPlace.CUFF, 2);
        other.put(ColourPlace.HEEL, 2);
        assertEquals(ContentHash.of(DESIGN.withMaterials(TWO.withColours(one))),
                ContentHash.of(DESIGN.withMaterials(TWO.withColours(other))));
    }

    private static Swatch flat(boolean washed) {
        return new Swatch(40, 50, OptionalDouble.of(5), Optional.empty(), Swatch.Worked.FLAT, washed);
    }

    private static Design patterned(Stranding stranding) {
        Design plain = patterned(8);
        return Designs.of(plain.title(), plain.direction(), plain.toe(), plain.heel(), plain.leg(), plain.cuff(),
                List.of(plain.stitchPatterns().getFirst().with(stranding)));
    }

    private static Design patterned(String... rows) {
        Design plain = patterned(rows.length);
        return Designs.of(plain.title(), plain.direction(), plain.toe(), plain.heel(), plain.leg(), plain.cuff(),
                List.of(plain.stitchPatterns().getFirst().withInstructions(List.of(rows))));
    }

    private static Design patterned(int rows) {
        return Designs.of(DESIGN.title(), DESIGN.direction(), DESIGN.toe(), DESIGN.heel(), DESIGN.leg(), DESIGN.cuff(),
                List.of(new StitchPattern(Zone.ALL, 4, 0, rows, Fit.WHOLE_REPEATS, 0)));
    }

    private static Design only(Size size) {
        return Designs.with(DESIGN, DESIGN.title(), List.of(size));
    }

    @Test
    void aTitleCannotPassForAnotherLine() {
        String text = DesignText.of(Designs.titled("x\"\ndirection CUFF_DOWN"));
        assertTrue(text.lines().noneMatch("direction CUFF_DOWN"::equals), text);
    }

    @Test
    void theNameOfAYarnCannotPassForAnotherLineEither() {
        String text = DesignText.of(DESIGN.withMaterials(Materials.of(Yarn.of("x\ndirection CUFF_DOWN", 200, 50))));
        assertTrue(text.lines().noneMatch("direction CUFF_DOWN"::equals), text);
    }

    @Test
    void theFormulaOfAnOwnRowCannotPassForAnotherLineEither() {
        String text = DesignText.of(DESIGN.withOwnRows(
                List.of(new OwnRow(new Key("own.half"), "x\"", "1\ndirection CUFF_DOWN"))));
        assertTrue(text.lines().noneMatch("direction CUFF_DOWN"::equals), text);
    }
}
