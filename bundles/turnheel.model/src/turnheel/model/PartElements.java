package turnheel.model;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Heel;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.Leg;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Materials;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Toe;
import turnheel.engine.design.WedgeToe;
import turnheel.model.pattern.AfterthoughtHeelElement;
import turnheel.model.pattern.AsymmetricToeElement;
import turnheel.model.pattern.CalfLegElement;
import turnheel.model.pattern.CuffElement;
import turnheel.model.pattern.FlapHeelElement;
import turnheel.model.pattern.HeelElement;
import turnheel.model.pattern.LegElement;
import turnheel.model.pattern.LengthsElement;
import turnheel.model.pattern.MaterialsElement;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.RibCuffElement;
import turnheel.model.pattern.RoundToeElement;
import turnheel.model.pattern.ShortRowHeelElement;
import turnheel.model.pattern.ShortRowToeElement;
import turnheel.model.pattern.StarToeElement;
import turnheel.model.pattern.StitchPatternElement;
import turnheel.model.pattern.StraightLegElement;
import turnheel.model.pattern.SwatchElement;
import turnheel.model.pattern.ToeElement;
import turnheel.model.pattern.WedgeToeElement;
import turnheel.model.pattern.YarnElement;

/** From parts of a design to elements of a document: what {@link Door} does, backwards. */
public final class PartElements {

    private static final PatternFactory FACTORY = PatternFactory.eINSTANCE;

    private PartElements() {
    }

    /** A new element that describes the toe. */
    public static ToeElement toe(Toe toe) {
        return switch (toe) {
            case RoundToe round -> {
                RoundToeElement element = FACTORY.createRoundToeElement();
                element.setLines(round.lines());
                element.setIncrease(round.increase());
                element.setCastOn(round.castOn());
                element.setLean(round.lean());
                yield element;
            }
            case WedgeToe wedge -> {
                WedgeToeElement element = FACTORY.createWedgeToeElement();
                element.setIncrease(wedge.increase());
                element.setCastOn(wedge.castOn());
                yield element;
            }
            case StarToe star -> {
                StarToeElement element = FACTORY.createStarToeElement();
                element.setIncrease(star.increase());
                element.setCastOn(star.castOn());
                element.setLean(star.lean());
                yield element;
            }
            case ShortRowToe shortRow -> {
                ShortRowToeElement element = FACTORY.createShortRowToeElement();
                element.setTurn(shortRow.turn());
                yield element;
            }
            case AsymmetricToe asymmetric -> {
                AsymmetricToeElement element = FACTORY.createAsymmetricToeElement();
                element.setIncrease(asymmetric.increase());
                element.setCastOn(asymmetric.castOn());
                yield element;
            }
        };
    }

    /** A new element that describes the heel. */
    public static HeelElement heel(Heel heel) {
        return switch (heel) {
            case ShortRowHeel shortRow -> {
                ShortRowHeelElement element = FACTORY.createShortRowHeelElement();
                element.setTurn(shortRow.turn());
                yield element;
            }
            case FlapHeel flap -> {
                FlapHeelElement element = FACTORY.createFlapHeelElement();
                element.setTurn(flap.turn());
                element.setFlapLength(flap.length());
                element.setFabric(flap.fabric());
                element.setEdge(flap.edge());
                element.setPickUp(flap.pickUp());
                yield element;
            }
            case AfterthoughtHeel afterthought -> {
                AfterthoughtHeelElement element = FACTORY.createAfterthoughtHeelElement();
                element.setCap(afterthought.cap());
                element.setLean(afterthought.lean());
                yield element;
            }
        };
    }

    /** A new element that describes the leg. */
    public static LegElement leg(Leg leg) {
        return switch (leg) {
            case StraightLeg straight -> {
                StraightLegElement element = FACTORY.createStraightLegElement();
                element.setLength(straight.length());
                element.setCount(straight.count());
                yield element;
            }
            case CalfLeg calf -> {
                CalfLegElement element = FACTORY.createCalfLegElement();
                element.setLength(calf.length());
                element.setCount(calf.count());
                yield element;
            }
        };
    }

    /** A new element that describes the cuff. */
    public static CuffElement cuff(Cuff cuff) {
        return switch (cuff) {
            case RibCuff rib -> {
                RibCuffElement element = FACTORY.createRibCuffElement();
                element.setKnit(rib.knit());
                element.setPurl(rib.purl());
                element.setMayAdjust(rib.mayAdjust());
                yield element;
            }
            case HemCuff hem -> FACTORY.createHemCuffElement();
            case RolledCuff rolled -> FACTORY.createRolledCuffElement();
        };
    }

    /** A new element that describes the stitch pattern. */
    public static StitchPatternElement stitchPattern(StitchPattern pattern) {
        StitchPatternElement element = FACTORY.createStitchPatternElement();
        element.setZone(pattern.zone());
        element.setRepeat(pattern.repeat());
        element.setEdge(pattern.edge());
        element.setRows(pattern.rows());
        element.setFit(pattern.fit());
        element.setFewestFiller(pattern.fewestFiller());
        return element;
    }

    /** A new element that describes the materials. */
    public static MaterialsElement materials(Materials materials) {
        MaterialsElement element = FACTORY.createMaterialsElement();
        element.setMarginPercent(materials.margin().percent());
        materials.balls().ifPresent(element::setBalls);
        materials.yarn().ifPresent(yarn -> {
            YarnElement label = FACTORY.createYarnElement();
            label.setName(yarn.name());
            label.setMetresPerBall(yarn.metresPerBall());
            label.setGramsPerBall(yarn.gramsPerBall());
            yarn.category().ifPresent(label::setCategory);
            element.setYarn(label);
        });
        materials.swatch().ifPresent(swatch -> {
            SwatchElement piece = FACTORY.createSwatchElement();
            piece.setStitches(swatch.stitches());
            piece.setRounds(swatch.rounds());
            piece.setGrams(swatch.grams());
            element.setSwatch(piece);
        });
        return element;
    }

    /** A new element that describes how lengths are said. */
    public static LengthsElement lengths(Lengths lengths) {
        LengthsElement element = FACTORY.createLengthsElement();
        element.setFoot(lengths.foot());
        element.setLeg(lengths.leg());
        element.setCuff(lengths.cuff());
        element.setSnap(lengths.snap());
        return element;
    }
}
