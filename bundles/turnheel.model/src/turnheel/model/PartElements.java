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
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Toe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.design.YarnLine;
import turnheel.model.pattern.AfterthoughtHeelElement;
import turnheel.model.pattern.AsymmetricToeElement;
import turnheel.model.pattern.CalfLegElement;
import turnheel.model.pattern.ColourElement;
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
        pattern.stranding().ifPresent(stranding -> {
            element.setStranded(true);
            stranding.longestFloat().ifPresent(element::setLongestFloat);
        });
        element.getInstructions().addAll(pattern.instructions());
        return element;
    }

    /** A new element that describes the materials. */
    public static MaterialsElement materials(Materials materials) {
        MaterialsElement element = FACTORY.createMaterialsElement();
        element.setMarginPercent(materials.margin().percent());
        materials.needle().ifPresent(element::setNeedle);
        if (!materials.notions().isEmpty()) {
            element.setNotions(String.join("\n", materials.notions()));
        }
        materials.yarns().forEach(yarn -> element.getYarns().add(yarn(yarn)));
        materials.colours().forEach((place, yarn) -> {
            ColourElement colour = FACTORY.createColourElement();
            colour.setPlace(place);
            colour.setYarn(yarn);
            element.getColours().add(colour);
        });
        materials.swatch().ifPresent(swatch -> element.setSwatch(swatch(swatch)));
        return element;
    }

    private static YarnElement yarn(YarnLine line) {
        YarnElement element = FACTORY.createYarnElement();
        element.setName(line.yarn().name());
        element.setMetresPerBall(line.yarn().metresPerBall());
        element.setGramsPerBall(line.yarn().gramsPerBall());
        line.yarn().category().ifPresent(element::setCategory);
        if (!line.colour().isEmpty()) {
            element.setColour(line.colour());
        }
        line.balls().ifPresent(element::setBalls);
        return element;
    }

    private static SwatchElement swatch(Swatch swatch) {
        SwatchElement element = FACTORY.createSwatchElement();
        element.setStitches(swatch.stitches());
        element.setRounds(swatch.rounds());
        swatch.grams().ifPresent(element::setGrams);
        swatch.measured().ifPresent(size -> {
            element.setWidth(size.width());
            element.setHeight(size.height());
        });
        element.setWorked(swatch.worked());
        element.setWashed(swatch.washed());
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
