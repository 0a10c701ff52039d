package turnheel.engine.checks;

import static turnheel.engine.fixture.Designs.M;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/**
 * A slip that raises a check, and its neighbour that just does not.
 *
 * @param query what the slip is asked about, worked by hand
 * @param others checks that the same slip raises as well
 */
record CheckFixture(Check check, Draft slip, Draft sound, Query query, List<Check> others) {

    CheckFixture {
        others = List.copyOf(others);
    }

    @Override
    public String toString() {
        return check.id();
    }

    /** At least one of every check but those of the materials, which have theirs beside the yarn. */
    static List<CheckFixture> all() {
        List<CheckFixture> all = new ArrayList<>();
        measurements(all);
        counts(all);
        toes(all);
        heels(all);
        lengths(all);
        fit(all);
        all.addAll(PartFixtures.all());
        all.addAll(StrandedFixtures.all());
        all.addAll(RowFixtures.all());
        return all;
    }

    private static Draft sock(String numbers) {
        return Designs.toeUp64().with(numbers);
    }

    private static CheckFixture one(Check check, String slip, String sound, Parameter row, String expected,
            String found, Check... others) {
        return of(check, sock(slip), sock(sound), row, List.of(M), expected, found, others);
    }

    private static CheckFixture of(Check check, Draft slip, Draft sound, Parameter row, List<String> sizes,
            String expected, String found, Check... others) {
        return new CheckFixture(check, slip, sound, new Query(check, row.key(), sizes, expected, found),
                List.of(others));
    }

    /** The sock with a second size. */
    private static Draft two(String numbers, String numbersOfSecond) {
        return sock(numbers).withSize("L", numbersOfSecond);
    }

    private static void measurements(List<CheckFixture> all) {
        all.add(of(Check.MEASUREMENT_MISSING, sock("").without(Catalogue.FOOT_LENGTH.key()), sock(""),
                Catalogue.FOOT_LENGTH, List.of(M), "", ""));
        all.add(of(Check.MEASUREMENT_ORDER, two("", "body.footLength = 239 mm; body.footCircumference = 222 mm"),
                two("", "body.footLength = 240 mm; body.footCircumference = 222 mm"), Catalogue.FOOT_LENGTH,
                List.of("L"), "240", "239"));
        all.add(of(Check.MEASUREMENT_ORDER, two("", "body.footLength = 240 mm; body.footCircumference = 221 mm"),
                two("", "body.footLength = 240 mm; body.footCircumference = 222 mm"), Catalogue.FOOT_CIRCUMFERENCE,
                List.of("L"), "222", "221"));
    }

    private static void counts(List<CheckFixture> all) {
        // 64.7 and 69.1 differ by more than a step; the window of 69.1 ends at 74.7, so nothing lies above 72
        String tight = "body.footCircumference = 238 mm; fit.easeAround = -15 %; ";
        String larger = "body.footLength = 260 mm; body.footCircumference = 240 mm";
        all.add(of(Check.COUNTS_CLASH, two(tight + "foot.stitches = 72", larger), two(tight + "foot.stitches = 68", larger),
                Catalogue.FOOT_STITCHES, List.of(M, "L"), "", ""));
        // 55.9, so 56; with repeats of 12 and an edge of 3 it is 4, 6 or 8 more than a multiple of 24
        Draft fighting = sock("body.footCircumference = 194 mm; body.heelCircumference = 270 mm");
        StitchPattern instep = new StitchPattern(Zone.INSTEP, 12, 3, 1, Fit.WHOLE_REPEATS, 1);
        all.add(of(Check.NEEDS_EXCLUDE, fighting.with(instep, new StitchPattern(Zone.LEG, 12, 0, 1, Fit.WHOLE_REPEATS, 1)),
                fighting.with(instep, new StitchPattern(Zone.LEG, 14, 0, 1, Fit.WHOLE_REPEATS, 1)),
                Catalogue.FOOT_STITCHES, List.of(M), """
                        the instep, whole pattern repeats and the edge: a multiple of 24 plus 4, 6 or 8; \
                        the leg, whole pattern repeats: a multiple of 12""", ""));
        // 8 % around 63.936; the toe has no shaping rounds left
        all.add(one(Check.COUNTS_OUT_OF_REACH, "toe.castOn = 72", "toe.castOn = 68", Catalogue.FOOT_STITCHES, "58.8–69.1",
                "72", Check.EASE, Check.TOE_DEPTH));
        String alike = "body.footLength = 260 mm; body.footCircumference = 230 mm; body.heelCircumference = 300 mm; "
                + "foot.stitches = ";
        all.add(of(Check.COUNTS_FALL, two("foot.stitches = 68", alike + 64), two("foot.stitches = 64", alike + 64),
                Catalogue.FOOT_STITCHES, List.of("L"), "68", "64"));
        // 60.5 and 67.4
        String other = "body.footLength = 260 mm; body.footCircumference = 234 mm; body.heelCircumference = 300 mm; "
                + "foot.stitches = ";
        String small = "body.footCircumference = 210 mm; foot.stitches = 64";
        all.add(of(Check.COUNTS_EQUAL, two(small, other + 64), two(small, other + 68), Catalogue.FOOT_STITCHES,
                List.of("L"), "64", "64"));
        all.add(one(Check.OVERRIDE_BREAKS, "foot.stitches = 66; toe.alternateFrom = 22; toe.castOn = 10",
                "foot.stitches = 68", Catalogue.FOOT_STITCHES, "a multiple of 4, at least 10", "66"));
        all.add(one(Check.OVERRIDE_BREAKS, "foot.stitches = 66", "foot.stitches = 68", Catalogue.FOOT_STITCHES,
                "a multiple of 4, at least 8", "66"));
        // three lines of three stitches: a closed cast-on has two equal sides
        Draft threeLines = sock("body.footLength = 260 mm; body.footCircumference = 210 mm; "
                + "body.heelCircumference = 290 mm")
                .with(new RoundToe(3, Increase.YARN_OVER));
        all.add(of(Check.OVERRIDE_BREAKS, threeLines.with("toe.castOn = 9"), threeLines.with("toe.castOn = 12"),
                Catalogue.TOE_CAST_ON, List.of(M), "a multiple of 6", "9"));
        // (20 - 10) / 4
        all.add(one(Check.NOT_WHOLE, "toe.castOn = 10", "toe.castOn = 12", Catalogue.TOE_EVERY_ROUND, "", "2.5"));
        // (22 - 8) / 4, and (64 - 22) / 4 is not whole either
        all.add(one(Check.NOT_WHOLE, "toe.alternateFrom = 22", "toe.alternateFrom = 24", Catalogue.TOE_EVERY_ROUND, "",
                "3.5"));
        // half of 63 for the heel, the instep and the toe
        all.add(one(Check.OVERRIDE_BREAKS, "foot.stitches = 63", "foot.stitches = 64", Catalogue.FOOT_STITCHES,
                "a multiple of 4, at least 8", "63"));
        // 64 - 65
        all.add(one(Check.NEGATIVE, "foot.instep = 65", "foot.instep = 33", Catalogue.FOOT_SOLE, "", "−1"));
        // twice 64 is 128
        all.add(one(Check.CHANGE_OVER, "leg.stitches = 132", "leg.stitches = 128", Catalogue.LEG_STITCHES, "32–128",
                "132"));
        all.add(one(Check.CHANGE_OVER, "cuff.stitches = 28; body.heelCircumference = 150 mm", "cuff.stitches = 32",
                Catalogue.CUFF_STITCHES, "32–128", "28"));
        // of 12 + 12, the whole repeats nearest to 12 are none: a tie
        Draft wideRib = sock("body.footLength = 100 mm; body.footCircumference = 80 mm; body.heelCircumference = 110 mm")
                .with(new RibCuff(12, 12, false));
        all.add(of(Check.UNDEFINED, wideRib.with("leg.stitches = 12"), wideRib.with("leg.stitches = 13"), Catalogue.STRETCH,
                List.of(M), "", "", Check.CUFF_REPEAT));
    }

    private static void toes(List<CheckFixture> all) {
        // 64 stitches on 8 lines turn at 24: 2 increase rounds, a plain one, 5 × (increase, plain); 1 set-up round
        Draft eightLines = Designs.toeUp64().with(new RoundToe(8, Increase.MAKE_ONE)).with("foot.stitches = 64");
        // (2 + 1 + 5 × 2 + 1) / 0.44 = 31.8 of 229.2 mm; with 3 plain rounds (2 + 1 + 5 × 4 + 1) / 0.44 = 54.5
        all.add(of(Check.TOE_DEPTH, eightLines.with("toe.plainBetween = 1"), eightLines.with("toe.plainBetween = 3"),
                Catalogue.TOE_DEPTH, List.of(M), "18–30", "13.9"));
        // (2 + 1 + 5 × 6 + 1) / 0.44 = 77.3; with 4 plain rounds (2 + 1 + 5 × 5 + 1) / 0.44 = 65.9
        all.add(of(Check.TOE_DEPTH, eightLines.with("toe.plainBetween = 5"), eightLines.with("toe.plainBetween = 4"),
                Catalogue.TOE_DEPTH, List.of(M), "18–30", "33.7"));
        all.add(one(Check.TOE_ORDER, "toe.alternateFrom = 68; foot.stitches = 64", "toe.alternateFrom = 20",
                Catalogue.TOE_ALTERNATE_FROM, "8–64", "68", Check.TOE_DEPTH));
        all.add(one(Check.TOE_ORDER, "toe.alternateFrom = 4", "toe.alternateFrom = 8", Catalogue.TOE_ALTERNATE_FROM,
                "8–64", "4"));
        Draft wedge = Designs.cuffDown64();
        all.add(of(Check.TOE_ORDER, wedge.with("toe.tip = 68"), wedge.with("toe.tip = 16"), Catalogue.TOE_TIP,
                List.of(M), "8–64", "68", Check.TOE_DEPTH));
    }

    private static void heels(List<CheckFixture> all) {
        all.add(one(Check.HEEL_CENTRE, "heel.centre = 1; heel.stitches = 33", "heel.centre = 3; heel.stitches = 33",
                Catalogue.HEEL_CENTRE, "2", "1"));
        all.add(one(Check.HEEL_CENTRE_WIDE, "heel.centre = 32", "heel.centre = 30", Catalogue.HEEL_CENTRE, "30", "32"));
        all.add(one(Check.HEEL_CENTRE_WIDE, "heel.centre = 40", "heel.centre = 30", Catalogue.HEEL_CENTRE, "30", "40"));
        all.add(one(Check.HEEL_TOO_WIDE, "heel.stitches = 65; heel.centre = 41", "heel.stitches = 38",
                Catalogue.HEEL_STITCHES, "64", "65"));
        // 31 / 64 and 39 / 64; 50 and 60 % are 32 and 38.4
        all.add(one(Check.HEEL_SHARE, "heel.stitches = 31", "heel.stitches = 32", Catalogue.HEEL_STITCHES, "50–60",
                "48.4"));
        all.add(one(Check.HEEL_SHARE, "heel.stitches = 39", "heel.stitches = 38", Catalogue.HEEL_STITCHES, "50–60",
                "60.9"));
    }

    private static void lengths(List<CheckFixture> all) {
        all.add(one(Check.FOOT_SHORT, "foot.rounds = 3", "foot.rounds = 4", Catalogue.FOOT_ROUNDS, "4", "3"));
        all.add(one(Check.FOOT_SPLIT, "foot.instep = 34", "foot.instep = 33", Catalogue.FOOT_INSTEP, "2", "4"));
        // (85 - 50 - 38.964) × 0.44 = -1.7; at 88 mm -0.4 is nearest to none
        all.add(one(Check.LEG_SHORT, "body.legHeight = 85 mm", "body.legHeight = 88 mm", Catalogue.LEG_ROUNDS, "0",
                "−2"));
        // 60 / 0.44 = 136.36 mm; half a round is 1.14 mm
        all.add(one(Check.MEASURE_DIFFERS, "foot.rounds = 60; foot.measure = 138 mm",
                "foot.rounds = 60; foot.measure = 137 mm", Catalogue.FOOT_MEASURE, "136.4", "138"));
        all.add(one(Check.MEASURE_DIFFERS, "leg.rounds = 44; leg.measure = 98.8 mm",
                "leg.rounds = 44; leg.measure = 98.9 mm", Catalogue.LEG_MEASURE, "100", "98.8"));
        // 38.964 mm are 17.1 rounds
        all.add(one(Check.MEASURE_DIFFERS, "cuff.rounds = 18", "cuff.rounds = 17", Catalogue.CUFF_HEIGHT, "40.9", "39"));
        Draft patterned = sock("").with(new StitchPattern(Zone.INSTEP, 4, 0, 8, Fit.WHOLE_REPEATS, 1));
        all.add(of(Check.PATTERN_CUT, patterned.with("foot.rounds = 60"), patterned.with("foot.rounds = 56"),
                Catalogue.FOOT_PATTERN_LAST_ROW, List.of(M), "8", "4"));
        Draft allOver = sock("").with(new StitchPattern(Zone.ALL, 4, 0, 8, Fit.WHOLE_REPEATS, 1));
        all.add(of(Check.PATTERN_CUT, allOver.with("foot.rounds = 60; leg.rounds = 56"),
                allOver.with("foot.rounds = 60; leg.rounds = 60"), Catalogue.LEG_PATTERN_LAST_ROW, List.of(M), "8", "4"));
        all.add(one(Check.CUFF_REPEAT, "cuff.stitches = 62", "cuff.stitches = 60", Catalogue.CUFF_STITCHES,
                "a multiple of 4", "62"));
    }

    private static void fit(List<CheckFixture> all) {
        // 64 stitches are 200 mm: 200 / 199 is 0.5 % more, 200 / 236 is 15.3 % and 200 / 251 is 20.3 % less
        String foot = "foot.stitches = 64; body.footCircumference = ";
        all.add(one(Check.EASE, foot + "199 mm", foot + "200 mm", Catalogue.EASE_REACHED, "−15 … 0", "0.5"));
        all.add(one(Check.EASE, foot + "236 mm", foot + "235 mm", Catalogue.EASE_REACHED, "−15 … 0", "−15.3"));
        all.add(one(Check.TIGHT, foot + "251 mm", foot + "235 mm", Catalogue.EASE_REACHED, "−20", "20.3"));
        // 322 × 0.32 / 64 = 1.61 in plain knitting; 340 × 0.32 / 60 = 1.813 in the rib alone, on a leg of 72
        String heel = "body.heelCircumference = ";
        all.add(one(Check.STRETCH, heel + "322 mm", heel + "320 mm", Catalogue.STRETCH, "1.6", "1.61"));
        // 320.1 × 0.32 / 64: a limit is not said to be beyond itself
        all.add(one(Check.STRETCH, heel + "320.1 mm", heel + "320 mm", Catalogue.STRETCH, "1.6", "1.6005"));
        Draft narrowCuff = sock("foot.stitches = 72; body.footCircumference = 250 mm; cuff.stitches = 60");
        all.add(of(Check.STRETCH, narrowCuff.with("body.heelCircumference = 340 mm"),
                narrowCuff.with("body.heelCircumference = 337 mm"), Catalogue.STRETCH, List.of(M), "1.8", "1.81"));
    }
}
