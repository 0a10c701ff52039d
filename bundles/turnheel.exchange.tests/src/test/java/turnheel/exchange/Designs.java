package turnheel.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Heel;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.design.Leg;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Materials;
import turnheel.engine.design.PickUp;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.Size;
import turnheel.engine.design.Snap;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Stranding;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Toe;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.design.Yarn;
import turnheel.engine.design.YarnLine;
import turnheel.engine.term.Key;

/** Designs that every export is tried on. All measurements are invented. */
public final class Designs {

    private static final String FOOT_LENGTH = "body.footLength";
    private static final String FOOT_CIRCUMFERENCE = "body.footCircumference";
    private static final String HEEL_CIRCUMFERENCE = "body.heelCircumference";

    private Designs() {
    }

    /** One of each: what is exported differs by kind of part, direction, unit and source of the values. */
    public static Map<String, Design> all() {
        Map<String, Design> all = new LinkedHashMap<>();
        all.put("toe-up", toeUp());
        all.put("cuff-down", cuffDown());
        all.put("overrides", overrides());
        all.put("missing", missing());
        all.put("six-lines", sixLines());
        all.put("twelve", twelve());
        all.put("star-and-flap", starAndFlap());
        all.put("flap-last", flapLast());
        all.put("afterthought", afterthought());
        all.put("colours", colours());
        all.put("panel", panel());
        all.put("knee", knee());
        return all;
    }

    /** Round toe, metric, five sizes; everything that has a default takes it. */
    public static Design toeUp() {
        return new Design("Quay Steps", Direction.TOE_UP, gauge("32/10 cm"), gauge("44/10 cm"),
                new RoundToe(4, Increase.YARN_OVER), heel(), crew(), new RibCuff(2, 2), List.of(
                        size("XS", "210 mm", "195 mm", "270 mm"), size("S", "225 mm", "207 mm", "287 mm"),
                        size("M", "240 mm", "220 mm", "305 mm"), size("L", "255 mm", "235 mm", "322 mm"),
                        size("XL", "270 mm", "250 mm", "340 mm")));
    }

    /** Wedge toe, written in inches, with a gauge, an ease and a leg height of its own in one size. */
    public static Design cuffDown() {
        Size own = with(size("38/39", "9 1/2 in", "8.75 in", "12 in"), Map.of("gauge.stitches", "7.5/1 in",
                "fit.easeAround", "-8 %", "fit.easeLength", "-0.25 in", "body.legHeight", "8 in"), Map.of());
        return new Design("Breakwater", Direction.CUFF_DOWN, gauge("8/1 in"), gauge("22/2 in"),
                new WedgeToe(Increase.MAKE_ONE), heel(), new StraightLeg(SockLength.ANKLE), new RibCuff(1, 1),
                List.of(size("36/37", "9 in", "8.25 in", "11.5 in"), own, size("40/41", "10 in", "9.2 in", "12.6 in")));
    }

    /** Overrides of a chosen count and of rules, some of which break what the parts need. */
    public static Design overrides() {
        Design plain = toeUp();
        List<Size> sizes = new ArrayList<>(plain.sizes());
        sizes.set(1, with(sizes.get(1), Map.of(), Map.of("foot.stitches", "62", "cuff.height", "1 1/2 in")));
        sizes.set(2, with(sizes.get(2), Map.of(),
                Map.of("foot.instep", "35", "heel.centre", "12", "toe.alternateFrom", "28")));
        sizes.set(3, with(sizes.get(3), Map.of(), Map.of("foot.rounds", "61", "leg.stitches", "76")));
        return with(plain, "Overruled", sizes);
    }

    /** A small child's size, one without the heel's circumference, one without any, one without a length. */
    public static Design missing() {
        return with(toeUp(), "Gaps", List.of(size("child", "150 mm", "150 mm", "205 mm"),
                new Size("heel", "no heel", inputs(Map.of(FOOT_LENGTH, "225 mm", FOOT_CIRCUMFERENCE, "207 mm")),
                        Map.of()),
                new Size("foot", "no foot", inputs(Map.of(FOOT_LENGTH, "240 mm")), Map.of()),
                new Size("length", "no length", inputs(Map.of(FOOT_CIRCUMFERENCE, "235 mm")), Map.of())));
    }

    /** A toe whose plain rounds are computed, in thick yarn. */
    public static Design sixLines() {
        return new Design("Mooring", Direction.CUFF_DOWN, gauge("22/10 cm"), gauge("30.5/10 cm"),
                new RoundToe(6, Increase.LIFTED), heel(), new StraightLeg(SockLength.KNEE), new RibCuff(3, 1),
                List.of(size("1", "235 mm", "220 mm", "305 mm"), size("2", "262 mm", "243 mm", "331 mm")));
    }

    /** Twelve sizes, 9 mm apart. */
    public static Design twelve() {
        List<Size> sizes = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            sizes.add(size("T" + (i + 1), 200 + 9 * i + " mm", 185 + 9 * i + " mm", 252 + 12 * i + " mm"));
        }
        return with(toeUp(), "Twelve Lamps", sizes);
    }

    /** Cuff-down with a star toe, a turned flap, a leg from ankle to calf and a hem. */
    public static Design starAndFlap() {
        return of("Tideline", Direction.CUFF_DOWN, new StarToe(Increase.MAKE_ONE),
                new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody()),
                new CalfLeg(SockLength.KNEE, LegCount.FROM_ANKLE), new HemCuff(), List.of());
    }

    /** Toe-up with a short-row toe, a gusset before its flap, a rolled edge and a stitch pattern of whole repeats. */
    public static Design flapLast() {
        return of("Signal Mast", Direction.TOE_UP, new ShortRowToe(TurnMethod.GERMAN),
                new FlapHeel(HeelTurn.SQUARE, new FlapLength.RowsPerStitch(1)),
                new StraightLeg(SockLength.MID_CALF, LegCount.FROM_ANKLE), new RolledCuff(),
                List.of(new StitchPattern(Zone.LEG, 4, 0, 6, Fit.WHOLE_REPEATS, 0)));
    }

    /** A toe for left and right, a heel that is worked last, a cuff that may change the count, and a yarn. */
    public static Design afterthought() {
        return of("Two Harbours", Direction.CUFF_DOWN, new AsymmetricToe(Increase.LIFTED),
                new AfterthoughtHeel(AfterthoughtHeel.Cap.ROUND), crew(), new RibCuff(3, 2, true), List.of())
                .withMaterials(Materials.of(Yarn.of("Harbour Fingering", 210, 50)).withBalls(2));
    }

    /** Cuff-down with three yarns, two of them stranded on the leg, a heel in the third, and all that is needed for it. */
    public static Design colours() {
        Yarn yarn = new Yarn("Quay Four", 210, 50, OptionalInt.of(1));
        Swatch swatch = new Swatch(42, 57, OptionalDouble.of(7.5), Optional.of(new Swatch.Measured(
                new Length(13, LengthUnit.CENTIMETRE), Length.ofMm(128))), Swatch.Worked.FLAT, true);
        return of("Three Lamps", Direction.CUFF_DOWN, new WedgeToe(Increase.MAKE_ONE),
                new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody()), crew(), new RibCuff(2, 2),
                List.of(new StitchPattern(Zone.LEG, 4, 0, 6, Fit.WHOLE_REPEATS, 0).with(Stranding.withFloatsTo(3)),
                        new StitchPattern(Zone.INSTEP, 6, 1, 8, Fit.CENTRED_PANEL, 2)))
                .withMaterials(Materials.UNDECIDED.withYarns(List.of(new YarnLine(yarn, "slate", OptionalInt.of(2)),
                        new YarnLine(yarn, "gorse", OptionalInt.empty()), YarnLine.of(Yarn.of("", 170, 50))))
                        .withColours(Map.of(ColourPlace.HEEL, 3, ColourPlace.INSTEP_PATTERN, 3))
                        .withNeedle(Optional.of(Length.ofMm(2.25))).with(swatch)
                        .withNotions(List.of("stitch markers", "=tapestry needle")));
    }

    /** Toe-up with a star toe, a panel on the instep, and a heel that is worked last as a wedge. */
    public static Design panel() {
        return of("Rope Locker", Direction.TOE_UP, new StarToe(Increase.YARN_OVER),
                new AfterthoughtHeel(AfterthoughtHeel.Cap.WEDGE), crew(), new RibCuff(2, 2),
                List.of(new StitchPattern(Zone.INSTEP, 6, 1, 8, Fit.CENTRED_PANEL, 2)));
    }

    /** A foot to fit, one stitch pattern from cuff to toe in whole repeats of its rows, a leg that narrows to the knee. */
    public static Design knee() {
        Design design = of("Tall Mast", Direction.CUFF_DOWN, new WedgeToe(Increase.MAKE_ONE),
                new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody()), new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT),
                new RibCuff(2, 2), List.of(new StitchPattern(Zone.ALL, 4, 0, 7, Fit.WHOLE_REPEATS, 0)))
                .withLengths(new Lengths(LengthMode.TO_FIT, LengthMode.MEASURE, LengthMode.BOTH, Snap.FOOT_AND_LEG));
        return with(design, design.title(), design.sizes().stream()
                .map(size -> with(size, Map.of("body.kneeCircumference", "320 mm"), Map.of())).toList());
    }

    /** Five sizes at a common gauge with these parts. */
    public static Design of(String title, Direction direction, Toe toe, Heel heel, Leg leg, Cuff cuff,
            List<StitchPattern> patterns) {
        return new Design(title, direction, gauge("32/10 cm"), gauge("44/10 cm"), toe, heel, leg, cuff, patterns,
                toeUp().sizes());
    }

    /** A toe of every kind. */
    public static List<Toe> toes() {
        return List.of(new RoundToe(4, Increase.YARN_OVER), new WedgeToe(Increase.MAKE_ONE),
                new StarToe(Increase.FRONT_AND_BACK), new ShortRowToe(TurnMethod.TWIN),
                new AsymmetricToe(Increase.LIFTED), new RoundToe(4, Increase.YARN_OVER, CastOn.UNWORKED, Lean.LEFT));
    }

    /** A heel of every kind and make. */
    public static List<Heel> heels() {
        return List.of(heel(), new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody()),
                new FlapHeel(HeelTurn.SQUARE, new FlapLength.RowsPerStitch(0.9)),
                new FlapHeel(HeelTurn.ROUND, new FlapLength.Height(Length.ofMm(60))),
                new FlapHeel(HeelTurn.ROUND, new FlapLength.RowsPerStitch(1), FlapFabric.SLIPPED_IN_TURN,
                        FlapEdge.GARTER, new PickUp.StitchesPerRow(0.75)),
                new FlapHeel(HeelTurn.ROUND, new FlapLength.RowsPerStitch(1.1), FlapFabric.SLIPPED, FlapEdge.SLIPPED,
                        new PickUp.HalfTheRows()),
                new AfterthoughtHeel(AfterthoughtHeel.Cap.WEDGE), new AfterthoughtHeel(AfterthoughtHeel.Cap.ROUND),
                new AfterthoughtHeel(AfterthoughtHeel.Cap.ROUND, Lean.LEFT));
    }

    /** A leg of every kind and make. */
    public static List<Leg> legs() {
        return List.of(crew(), new StraightLeg(SockLength.QUARTER, LegCount.FROM_ANKLE),
                new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT), new CalfLeg(SockLength.KNEE, LegCount.FROM_ANKLE));
    }

    /** A cuff of every kind. */
    public static List<Cuff> cuffs() {
        return List.of(new RibCuff(2, 2), new RibCuff(3, 2, true), new HemCuff(), new RolledCuff());
    }

    /** Every kind of toe with every heel, both ways; legs and cuffs take turns. */
    public static List<Design> combinations(List<Size> sizes) {
        List<Design> combinations = new ArrayList<>();
        int turn = 0;
        for (Direction direction : Direction.values()) {
            for (Toe toe : toes()) {
                for (Heel heel : heels()) {
                    combinations.add(with(of("", direction, toe, heel, legs().get(turn % legs().size()),
                            cuffs().get(turn / legs().size() % cuffs().size()), List.of()), toe + " " + heel, sizes));
                    turn++;
                }
            }
        }
        return combinations;
    }

    /** Two dozen sizes from small child to large adult. */
    public static List<Size> twoDozen() {
        List<Size> sizes = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            sizes.add(size("Size " + (i + 1), 136 + 7 * i + " mm", 140 + 6 * i + " mm", 190 + 8 * i + " mm"));
        }
        return sizes;
    }

    /** A design of one size under any title. */
    public static Design titled(String title) {
        return with(toeUp(), title, toeUp().sizes().subList(0, 1));
    }

    /** The same design with other sizes. */
    public static Design with(Design design, String title, List<Size> sizes) {
        return new Design(title, design.direction(), design.stitchGauge(), design.roundGauge(), design.toe(),
                design.heel(), design.leg(), design.cuff(), design.stitchPatterns(), design.materials(), design.lengths(),
                sizes, design.ownRows());
    }

    /** The same design with another toe and cuff. */
    public static Design with(Design design, Toe toe, Leg leg, Cuff cuff) {
        return new Design(design.title(), design.direction(), design.stitchGauge(), design.roundGauge(), toe,
                design.heel(), leg, cuff, design.stitchPatterns(), design.materials(), design.lengths(),
                design.sizes(), design.ownRows());
    }

    /** The same size with more inputs and overrides. */
    public static Size with(Size size, Map<String, String> moreInputs, Map<String, String> overrides) {
        Map<Key, Quantity> inputs = new LinkedHashMap<>(size.inputs());
        inputs.putAll(inputs(moreInputs));
        Map<Key, Quantity> all = new LinkedHashMap<>(size.overrides());
        all.putAll(inputs(overrides));
        return new Size(size.id(), size.label(), inputs, all);
    }

    public static Size size(String label, String footLength, String footCircumference, String heelCircumference) {
        return new Size("id of " + label, label, inputs(Map.of(FOOT_LENGTH, footLength, FOOT_CIRCUMFERENCE,
                footCircumference, HEEL_CIRCUMFERENCE, heelCircumference)), Map.of());
    }

    public static Gauge gauge(String text) {
        return (Gauge) Quantity.parse(text);
    }

    private static Map<Key, Quantity> inputs(Map<String, String> texts) {
        Map<Key, Quantity> inputs = new LinkedHashMap<>();
        texts.forEach((key, text) -> inputs.put(new Key(key), Quantity.parse(text)));
        return inputs;
    }

    private static ShortRowHeel heel() {
        return new ShortRowHeel(TurnMethod.WRAPPED);
    }

    private static StraightLeg crew() {
        return new StraightLeg(SockLength.CREW);
    }
}
