package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.YARN_BALLS;
import static turnheel.engine.design.Catalogue.YARN_METRES;

import java.util.List;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.YarnLine;
import turnheel.engine.design.YarnRows;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;
import turnheel.engine.yarn.Categories;

/** Whether the yarn suits the gauge and is enough. */
final class YarnChecks {

    /**
     * Socks are worked firmer than the stockinette of the standard table: <em>common practice</em>, a fifth at most.
     */
    private static final double FIRMER = 1.2;
    /** Share of the last ball that must be left over. */
    private static final double LEFT_PERCENT = 5;

    private final Materials materials;
    private final GradedSize size;
    private final Findings findings;

    YarnChecks(Materials materials, GradedSize size) {
        this.materials = materials;
        this.size = size;
        this.findings = new Findings(size.label());
    }

    List<Query> check() {
        List<YarnLine> yarns = materials.yarns();
        materials.yarn().flatMap(yarn -> yarn.category().stream().boxed().findFirst()).ifPresent(this::gauge);
        if (yarns.size() == 1) {
            balls(yarns.getFirst(), YARN_METRES, YARN_BALLS);
        } else {
            for (int i = 0; i < yarns.size(); i++) {
                colour(yarns.get(i), Catalogue.YARN_COLOURS.get(i));
            }
        }
        return findings.queries();
    }

    private void colour(YarnLine yarn, YarnRows rows) {
        if (size.cell(rows.plainLoops()).filter(loops -> loops.value() == 0).isPresent()) {
            findings.add(Check.YARN_UNUSED, rows.plainLoops(), "", 0);
        } else {
            balls(yarn, rows.metres(), rows.balls());
        }
    }

    private void gauge(int category) {
        Categories.Band band = Categories.band(category);
        double most = band.most() * FIRMER;
        size.cell(GAUGE_STITCHES).filter(cell -> cell.value() < band.fewest() || cell.value() > most)
                .ifPresent(cell -> findings.add(Check.YARN_GAUGE, GAUGE_STITCHES,
                        Findings.range(Findings.oneDecimal(band.fewest()), Findings.oneDecimal(most)),
                        Findings.oneDecimal(cell.value())));
    }

    private void balls(YarnLine yarn, Parameter metres, Parameter row) {
        if (size.cell(row).isEmpty()) {
            return;
        }
        double balls = size.value(row);
        if (yarn.balls().isPresent() && balls > yarn.balls().getAsInt()) {
            findings.add(Check.YARN_BALLS, row, Notation.number(yarn.balls().getAsInt()), balls);
            return;
        }
        double leftPercent = 100 * (balls - size.value(metres) / yarn.yarn().metresPerBall());
        boolean statedMore = yarn.balls().isPresent() && balls < yarn.balls().getAsInt();
        if (leftPercent < LEFT_PERCENT && !statedMore) {
            findings.add(Check.YARN_END, row, Notation.number(LEFT_PERCENT),
                    Findings.oneDecimal(Math.max(0, leftPercent)));
        }
    }
}
