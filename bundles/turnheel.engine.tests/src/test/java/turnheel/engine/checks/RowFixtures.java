package turnheel.engine.checks;

import java.util.List;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** Fixtures of stitch patterns whose rows are known: 32 stitches on the instep, 64 around the leg. */
final class RowFixtures {

    private static final String SOUND = "*K2, p2; rep from * to end";

    private RowFixtures() {
    }

    static List<CheckFixture> all() {
        return List.of(
                fixture(Check.ROW_UNREAD, Zone.INSTEP, Fit.WHOLE_REPEATS, "Weave in", Catalogue.FOOT_PANEL, "", "2"),
                fixture(Check.ROW_UNREAD, Zone.LEG, Fit.WHOLE_REPEATS, "K4, turn", Catalogue.LEG_STITCHES, "", "1"),
                // ten repeats of three in 32
                fixture(Check.ROW_MISFIT, Zone.INSTEP, Fit.WHOLE_REPEATS, "*K2, p1; rep from * to end",
                        Catalogue.FOOT_PANEL, "32", "2: 30"),
                fixture(Check.ROW_MISFIT, Zone.LEG, Fit.WHOLE_REPEATS, "K60", Catalogue.LEG_STITCHES, "64", "1: 60"),
                // seven repeats of four leave room for a plain stitch on each side
                fixture(Check.ROW_MISFIT, Zone.INSTEP, Fit.CENTRED_PANEL, "K32", Catalogue.FOOT_PANEL, "28", "2: 32"),
                // one repeat stands for those of a panel on the leg
                fixture(Check.ROW_MISFIT, Zone.LEG, Fit.CENTRED_PANEL, "K3", Catalogue.LEG_STITCHES, "4", "1: 3"),
                // eight repeats grow by one stitch each
                fixture(Check.ROWS_DO_NOT_RETURN, Zone.INSTEP, Fit.WHOLE_REPEATS, "*K4, yo; rep from * to end",
                        Catalogue.FOOT_PANEL, "32", "40"),
                fixture(Check.ROWS_DO_NOT_RETURN, Zone.LEG, Fit.WHOLE_REPEATS, "*K2tog, k2; rep from * to end",
                        Catalogue.LEG_STITCHES, "64", "48"));
    }

    private static CheckFixture fixture(Check check, Zone zone, Fit fit, String row, Parameter parameter,
            String expected, String found) {
        return new CheckFixture(check, sock(zone, fit, row), sock(zone, fit, SOUND),
                new Query(check, parameter.key(), List.of(Designs.M), expected, found), List.of());
    }

    /** One row on the leg, whose rounds are cut within two; the slip is the last row. */
    private static Draft sock(Zone zone, Fit fit, String last) {
        List<String> rows = zone == Zone.LEG ? List.of(last) : List.of(SOUND, last);
        return Designs.toeUp64().with(new StitchPattern(zone, 4, 0, rows.size(), fit, 1).withInstructions(rows));
    }
}
