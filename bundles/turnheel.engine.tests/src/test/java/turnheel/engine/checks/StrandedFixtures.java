package turnheel.engine.checks;

import java.util.List;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.Stranding;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** Slips of stitch patterns in two colours. */
final class StrandedFixtures {

    private StrandedFixtures() {
    }

    static List<CheckFixture> all() {
        // 255 × 0.32 / 64 = 1.275: the leg goes over the heel
        Draft sock = Designs.toeUp64().with("body.heelCircumference = 255 mm");
        // 25 mm are 8 stitches at 32 over 10 cm, so five stitches come first
        CheckFixture byStitches = floats(sock.with(stranded(Zone.LEG, 6)), sock.with(stranded(Zone.LEG, 5)),
                Catalogue.LEG_STITCHES, 5, 6);
        CheckFixture allOver = floats(sock.with(stranded(Zone.ALL, 6)), sock.with(stranded(Zone.ALL, 5)),
                Catalogue.FOOT_PANEL, 5, 6);
        // 25 mm are 4.5 stitches at 18 over 10 cm, where a toe is deep
        Draft thick = sock.withGauge("18/10 cm", "24/10 cm").with("body.footCircumference = 230 mm");
        CheckFixture byLength = floats(thick.with(stranded(Zone.INSTEP, 5)), thick.with(stranded(Zone.INSTEP, 4)),
                Catalogue.FOOT_PANEL, 4, 5, Check.TOE_DEPTH);
        // at 22 over 10 cm 20 mm are 4.4 stitches and 25 mm 5.5
        Draft child = sock.withGauge("22/10 cm", "30/10 cm").with(stranded(Zone.INSTEP, 5))
                .with("body.footCircumference = 195 mm");
        CheckFixture ofAChild = floats(child.with("body.footLength = 200 mm"), child.with("body.footLength = 201 mm"),
                Catalogue.FOOT_PANEL, 4, 5);
        // 262 × 0.32 / 64 = 1.31, and 260 mm are 1.3
        CheckFixture forced = new CheckFixture(Check.STRETCH,
                sock.with(stranded(Zone.LEG, 4)).with("body.heelCircumference = 262 mm"),
                sock.with(stranded(Zone.LEG, 4)).with("body.heelCircumference = 260 mm"),
                new Query(Check.STRETCH, Catalogue.STRETCH.key(), List.of(Designs.M), "1.3", "1.31"), List.of());
        // beside the heel's way the plain limit of 1.6 holds: 318 × 0.32 / 64 = 1.59
        CheckFixture besideTheWay = new CheckFixture(Check.STRETCH,
                sock.with(stranded(Zone.INSTEP, 4)).with("body.heelCircumference = 322 mm"),
                sock.with(stranded(Zone.INSTEP, 4)).with("body.heelCircumference = 318 mm"),
                new Query(Check.STRETCH, Catalogue.STRETCH.key(), List.of(Designs.M), "1.6", "1.61"), List.of());
        return List.of(byStitches, allOver, byLength, ofAChild, forced, besideTheWay);
    }

    private static CheckFixture floats(Draft slip, Draft sound, Parameter row, int expected, int found,
            Check... others) {
        return new CheckFixture(Check.FLOAT_LONG, slip, sound, new Query(Check.FLOAT_LONG, row.key(), List.of(Designs.M),
                Integer.toString(expected), Integer.toString(found)), List.of(others));
    }

    private static StitchPattern stranded(Zone zone, int longestFloat) {
        return new StitchPattern(zone, 4, 0, 1, Fit.WHOLE_REPEATS, 1).with(Stranding.withFloatsTo(longestFloat));
    }
}
