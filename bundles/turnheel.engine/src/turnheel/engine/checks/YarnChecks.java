package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.YARN_BALLS;
import static turnheel.engine.design.Catalogue.YARN_METRES;

import java.util.List;

import turnheel.engine.design.Materials;
import turnheel.engine.design.Yarn;
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
        materials.yarn().ifPresent(yarn -> {
            yarn.category().ifPresent(this::gauge);
            size.cell(YARN_BALLS).ifPresent(cell -> balls(yarn, cell.value()));
        });
        return findings.queries();
    }

    private void gauge(int category) {
        Categories.Band band = Categories.band(category);
        double most = band.most() * FIRMER;
        size.cell(GAUGE_STITCHES).filter(cell -> cell.value() < band.fewest() || cell.value() > most)
                .ifPresent(cell -> findings.add(Check.YARN_GAUGE, GAUGE_STITCHES,
                        Findings.range(Findings.oneDecimal(band.fewest()), Findings.oneDecimal(most)),
                        Findings.oneDecimal(cell.value())));
    }

    private void balls(Yarn yarn, double balls) {
        if (materials.balls().isPresent() && balls > materials.balls().getAsInt()) {
            findings.add(Check.YARN_BALLS, YARN_BALLS, Notation.number(materials.balls().getAsInt()), balls);
            return;
        }
        double leftPercent = 100 * (balls - size.value(YARN_METRES) / yarn.metresPerBall());
        boolean statedMore = materials.balls().isPresent() && balls < materials.balls().getAsInt();
        if (leftPercent < LEFT_PERCENT && !statedMore) {
            findings.add(Check.YARN_END, YARN_BALLS, Notation.number(LEFT_PERCENT),
                    Findings.oneDecimal(Math.max(0, leftPercent)));
        }
    }
}
