package turnheel.engine.checks;

import static turnheel.engine.fixture.Designs.M;

import java.util.List;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AfterthoughtHeel.Cap;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** Slips in flaps, gussets, caps, calves and the toes beside round and wedge; counts worked by hand for 64 stitches. */
final class PartFixtures {

    /** Flap of 32 rows: turn of 14 rows, 18 left, 17 picked up a side, 84 around, 10 decreases. */
    private static final Draft FLAP = Designs.cuffDown64().with(Designs.FLAP_HEEL)
            .with("foot.stitches = 64; body.heelCircumference = 310 mm; heel.flapRows = 32");
    /** Ten increases a side, turn of 20 rows. */
    private static final Draft FLAP_TOE_UP = Designs.toeUp64().with(Designs.FLAP_HEEL)
            .with("foot.stitches = 64; body.heelCircumference = 310 mm; heel.gussetIncreases = 10");
    private static final Draft CUFF_DOWN = Designs.cuffDown64().with("foot.stitches = 64");

    private PartFixtures() {
    }

    static List<CheckFixture> all() {
        return List.of(
                one(Check.FLAP_ROWS, FLAP.with("heel.pickUp = 17"), "heel.flapRows = 31", "heel.flapRows = 32",
                        Catalogue.HEEL_FLAP_ROWS, "a multiple of 2", "31"),
                // 32 − 11 rows leave the hands on the wrong side, and 11 + 2 × 17 + 32 is odd
                one(Check.FLAP_ROWS, FLAP.with(new FlapHeel(HeelTurn.SQUARE, new FlapLength.FromBody())),
                        "heel.centre = 11", "heel.centre = 10", Catalogue.HEEL_TURN_ROWS, "a multiple of 2", "21",
                        Check.NOT_WHOLE, Check.GUSSET_TIGHT),
                // half of 32, less ssk and a stitch
                one(Check.TURN_NARROW, FLAP, "heel.turnOffset = 14", "heel.turnOffset = 13", Catalogue.HEEL_TURN_OFFSET,
                        "0–13", "14"),
                // the leg hands on 80 − 19 for the instep, which leaves 3 of 64 for the sole
                one(Check.TURN_NARROW, FLAP.with("leg.stitches = 80"), "heel.stitches = 19", "heel.stitches = 20",
                        Catalogue.HEEL_STITCHES, "20–80", "19", Check.HEEL_SHARE),
                one(Check.TURN_NARROW, CUFF_DOWN.with("heel.stitches = 22"), "heel.corner = 12", "heel.corner = 11",
                        Catalogue.HEEL_CORNER, "0–11", "12", Check.HEEL_SHARE),
                // two decreases and an edge stitch on each side of the tip
                one(Check.TURN_NARROW, capped(Cap.WEDGE), "heel.tip = 4", "heel.tip = 8", Catalogue.HEEL_TIP, "8–68", "4"),
                // 32 held stitches have 64 loops
                one(Check.TURN_NARROW, capped(Cap.WEDGE), "heel.pickUp = 60", "heel.pickUp = 64", Catalogue.HEEL_PICK_UP,
                        "64–128", "60"),
                one(Check.OVERRIDE_BREAKS, capped(Cap.WEDGE), "heel.pickUp = 67", "heel.pickUp = 68",
                        Catalogue.HEEL_PICK_UP, "a multiple of 2", "67"),
                // (22 − 10) / 4 and (66 − 22) / 4 are whole, and yet two lines have 2 stitches and two have 3
                one(Check.OVERRIDE_BREAKS, capped(Cap.ROUND), "heel.pickUp = 66; heel.alternateFrom = 22; heel.tip = 10",
                        "heel.pickUp = 68; heel.tip = 12", Catalogue.HEEL_TIP, "a multiple of 4", "10"),
                // a leg of 60 has no 62 for the flap
                one(Check.HEEL_TOO_WIDE, FLAP.with("leg.stitches = 60; body.heelCircumference = 240 mm"),
                        "heel.stitches = 62", "heel.stitches = 32", Catalogue.HEEL_STITCHES, "60", "62"),
                one(Check.GUSSET_NONE, FLAP_TOE_UP, "heel.gussetIncreases = 0", "heel.gussetIncreases = 1",
                        Catalogue.HEEL_GUSSET_INCREASES, "1", "0"),
                one(Check.GUSSET_LEFT, FLAP_TOE_UP, "heel.flapRows = 22", "heel.flapRows = 20", Catalogue.HEEL_FLAP_ROWS,
                        "20", "22"),
                one(Check.GUSSET_LEFT, FLAP_TOE_UP, "heel.flapRows = 18", "heel.flapRows = 20", Catalogue.HEEL_FLAP_ROWS,
                        "20", "18"),
                // 18 + 2 × 11 + 32 = 72: 284 × 0.32 / 72 = 1.262, and 281 gives 1.249
                one(Check.GUSSET_TIGHT, FLAP.with("heel.flapRows = 20"), "body.heelCircumference = 284 mm",
                        "body.heelCircumference = 281 mm", Catalogue.HEEL_AFTER_PICK_UP, "1.25", "1.26"),
                // (360 − 50 − 38.964) × 0.44 = 119.3; from 64 to 80 are 8 pairs
                one(Check.CALF_STEEP, calf(), "leg.increaseOver = 7", "leg.increaseOver = 8", Catalogue.LEG_INCREASE_OVER,
                        "8–119", "7"),
                one(Check.CALF_STEEP, calf(), "leg.increaseOver = 120", "leg.increaseOver = 119",
                        Catalogue.LEG_INCREASE_OVER, "8–119", "120"),
                // the calf is 300 mm up, the heel 50 mm high, so 110 of 119 rounds are below it; from 80 to 72 are 4 pairs
                one(Check.CALF_STEEP, calf().with("leg.topStitches = 72"), "leg.decreaseOver = 3", "leg.decreaseOver = 4",
                        Catalogue.LEG_DECREASE_OVER, "4–9", "3"),
                one(Check.CALF_STEEP, calf().with("leg.topStitches = 72"), "leg.decreaseOver = 10", "leg.decreaseOver = 9",
                        Catalogue.LEG_DECREASE_OVER, "4–9", "10"),
                one(Check.KNEE_WIDE, calf().with("body.calfCircumference = 360 mm"), "body.kneeCircumference = 361 mm",
                        "body.kneeCircumference = 360 mm", Catalogue.KNEE_CIRCUMFERENCE, "360", "361"),
                // 20 stitches in sections of at least two
                one(Check.TOE_ORDER, child().with(new StarToe(Increase.MAKE_ONE)), "toe.points = 12", "toe.points = 10",
                        Catalogue.TOE_POINTS, "2–10", "12", Check.TOE_DEPTH),
                // the same toe-up: yarn-overs are closed in a plain round, which sections of two do not have
                one(Check.TOE_ORDER, child().with(new StarToe(Increase.YARN_OVER)), "toe.points = 9", "toe.points = 6",
                        Catalogue.TOE_POINTS, "2–6", "9", Check.TOE_DEPTH),
                // a cast-on of which half is worked has halves
                one(Check.OVERRIDE_BREAKS, Designs.toeUp64().with(
                        new StarToe(Increase.MAKE_ONE, CastOn.HALF_WORKED, Lean.RIGHT)).with("foot.stitches = 64"),
                        "toe.points = 7", "toe.points = 8", Catalogue.TOE_POINTS, "a multiple of 2", "7"),
                // (64 − 16 + 2 × 40) / 4 shaping rounds
                one(Check.TOE_ORDER, CUFF_DOWN.with(new AsymmetricToe(Increase.MAKE_ONE)), "toe.secondLineAfter = 40",
                        "toe.secondLineAfter = 4", Catalogue.TOE_SECOND_LINE_AFTER, "0–32", "40", Check.TOE_DEPTH),
                // grafted stitch to stitch; toe-up a corner gives or takes one
                one(Check.TOE_ORDER, CUFF_DOWN.with(new ShortRowToe(TurnMethod.TWIN)), "toe.stitches = 31",
                        "toe.stitches = 32", Catalogue.TOE_STITCHES, "32–32", "31"),
                one(Check.TOE_ORDER, Designs.toeUp64().with(new ShortRowToe(TurnMethod.TWIN)).with("foot.stitches = 64"),
                        "toe.stitches = 34", "toe.stitches = 33", Catalogue.TOE_STITCHES, "31–33", "34"),
                one(Check.HEEL_CENTRE, CUFF_DOWN.with(new ShortRowToe(TurnMethod.GERMAN)), "toe.centre = 1",
                        "toe.centre = 2", Catalogue.TOE_CENTRE, "2", "1", Check.NOT_WHOLE, Check.TOE_DEPTH));
    }

    private static Draft capped(Cap cap) {
        return CUFF_DOWN.with(new AfterthoughtHeel(cap));
    }

    private static Draft calf() {
        return CUFF_DOWN.with(new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT)).with("leg.calfStitches = 80");
    }

    private static Draft child() {
        return Designs.toeUp64().with("body.footLength = 100 mm; body.footCircumference = 65 mm; foot.stitches = 20");
    }

    private static CheckFixture one(Check check, Draft base, String slip, String sound, Parameter row, String expected,
            String found, Check... others) {
        return new CheckFixture(check, base.with(slip), base.with(sound), new Query(check, row.key(), List.of(M), expected,
                found), List.of(others));
    }
}
