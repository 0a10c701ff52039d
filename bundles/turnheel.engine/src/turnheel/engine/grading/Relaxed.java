package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.TOE_CAST_ON;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.Design;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.Leg;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.Size;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Toe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.Relaxation.Change;
import turnheel.engine.grading.Relaxation.OwnCount;
import turnheel.engine.term.Key;

/** Designs with something given up. */
final class Relaxed {

    private Relaxed() {
    }

    /** The design with a change; the same one where the change does not concern it. */
    static Design with(Design design, Change change) {
        return switch (change) {
            case Change.CuffAdjusts() -> with(design, design.toe(), design.leg(), adjusting(design.cuff()));
            case Change.Edge(var zone, var was, var becomes) -> withPattern(design, zone, pattern -> new StitchPattern(
                    pattern.zone(), pattern.repeat(), becomes, pattern.rows(), pattern.fit(), pattern.fewestFiller(),
                    pattern.stranding(), pattern.instructions()));
            case Change.Panel(var zone) -> withPattern(design, zone, pattern -> new StitchPattern(pattern.zone(),
                    pattern.repeat(), pattern.edge(), pattern.rows(), StitchPattern.Fit.CENTRED_PANEL,
                    pattern.fewestFiller(), pattern.stranding(), pattern.instructions()));
            case Change.LegFromAnkle() -> with(design, design.toe(), fromAnkle(design.leg()), design.cuff());
            case Change.ToeLines(var was, var becomes) ->
                withSizes(with(design, onLines(design.toe(), becomes), design.leg(), design.cuff()),
                        size -> without(size, TOE_CAST_ON.key()));
            case Change.OwnNumber(var parameter, var sizes) -> withSizes(design,
                    size -> sizes.contains(size.label()) ? without(size, parameter.key()) : size);
            case Change.Window(var percent, var counts) -> withSizes(design, size -> withOwn(size, counts));
        };
    }

    private static Design with(Design design, Toe toe, Leg leg, Cuff cuff) {
        return with(design, toe, leg, cuff, design.stitchPatterns(), design.sizes());
    }

    private static Design withPattern(Design design, Zone zone, UnaryOperator<StitchPattern> change) {
        return with(design, design.toe(), design.leg(), design.cuff(), design.stitchPatterns().stream()
                .map(pattern -> pattern.zone() == zone ? change.apply(pattern) : pattern).toList(), design.sizes());
    }

    private static Design withSizes(Design design, UnaryOperator<Size> change) {
        return with(design, design.toe(), design.leg(), design.cuff(), design.stitchPatterns(),
                design.sizes().stream().map(change).toList());
    }

    private static Design with(Design design, Toe toe, Leg leg, Cuff cuff, List<StitchPattern> stitchPatterns,
            List<Size> sizes) {
        return new Design(design.title(), design.direction(), design.stitchGauge(), design.roundGauge(), toe,
                design.heel(), leg, cuff, stitchPatterns, design.materials(), design.lengths(), sizes,
                design.ownRows());
    }

    private static Cuff adjusting(Cuff cuff) {
        return switch (cuff) {
            case RibCuff rib -> new RibCuff(rib.knit(), rib.purl(), true);
            case HemCuff hem -> hem;
            case RolledCuff rolled -> rolled;
        };
    }

    private static Leg fromAnkle(Leg leg) {
        return switch (leg) {
            case StraightLeg straight -> new StraightLeg(straight.length(), LegCount.FROM_ANKLE);
            case CalfLeg calf -> new CalfLeg(calf.length(), LegCount.FROM_ANKLE);
        };
    }

    private static Toe onLines(Toe toe, int lines) {
        return switch (toe) {
            case RoundToe round -> new RoundToe(lines, round.increase(), round.castOn(), round.lean());
            case WedgeToe wedge -> wedge;
            case StarToe star -> star;
            case ShortRowToe cup -> cup;
            case AsymmetricToe wedge -> wedge;
        };
    }

    private static Size without(Size size, Key key) {
        Map<Key, Quantity> overrides = new LinkedHashMap<>(size.overrides());
        overrides.remove(key);
        return new Size(size.id(), size.label(), size.inputs(), overrides);
    }

    private static Size withOwn(Size size, List<OwnCount> counts) {
        Map<Key, Quantity> overrides = new LinkedHashMap<>(size.overrides());
        counts.stream().filter(own -> own.size().equals(size.label()))
                .forEach(own -> overrides.put(FOOT_STITCHES.key(), own.count()));
        return new Size(size.id(), size.label(), size.inputs(), overrides);
    }
}
