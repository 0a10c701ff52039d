package turnheel.engine.drawing;

import static turnheel.engine.design.Catalogue.CUFF_ROUNDS;
import static turnheel.engine.design.Catalogue.FINISHED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.FINISHED_LENGTH;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_CUFF;
import static turnheel.engine.design.Catalogue.GAUGE_LEG;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_DEPTH;
import static turnheel.engine.design.Catalogue.HEEL_HEIGHT;
import static turnheel.engine.design.Catalogue.HEEL_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_CALF;
import static turnheel.engine.design.Catalogue.LEG_DECREASES;
import static turnheel.engine.design.Catalogue.LEG_DECREASE_OVER;
import static turnheel.engine.design.Catalogue.LEG_INCREASE_OVER;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_TOP;
import static turnheel.engine.design.Catalogue.TOE_DEPTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Leg;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

/**
 * A finished sock that lies flat on its side, in millimetres: a circumference shows as half of it. All follow from
 * counts and gauges, so they are the sock's and not the foot's.
 *
 * @param footLength back of heel to tip of toe
 * @param footWidth half of the foot's circumference
 * @param heelDepth how far the heel reaches along the sole
 * @param heelHeight how far it reaches up the back
 * @param heelWidth half of the stitches that the heel is worked on
 * @param legWidth half of the circumference above the heel
 * @param calfWidth the same where the leg is widest
 * @param legTopWidth the same where the cuff joins
 * @param widenOver height above the heel at which the leg is widest; 0 where it is straight
 * @param narrowOver height below the cuff from which it narrows again; 0 where it does not
 * @param legOnly heel to cuff
 * @param cuffHeight as it is worn; a hem is knitted twice as high
 */
record SockMeasures(double footLength, double footWidth, double toeDepth, double heelDepth, double heelHeight,
        double heelWidth, double legWidth, double calfWidth, double legTopWidth, double widenOver, double narrowOver, double legOnly, double cuffHeight) {

    /** The measures of a size, or the names of the numbers that a drawing would have to make up. */
    sealed interface Taken {
        record Complete(SockMeasures measures) implements Taken {
        }

        /** @param labels of the numbers, as tables show them */
        record Missing(List<String> labels) implements Taken {
            public Missing {
                labels = List.copyOf(labels);
            }
        }
    }

    static Taken of(Graded graded, GradedSize size) {
        Leg leg = graded.design().leg();
        List<Parameter> needed = new ArrayList<>(List.of(FINISHED_LENGTH, FINISHED_CIRCUMFERENCE, FOOT_STITCHES,
                FOOT_ROUNDS, TOE_DEPTH, HEEL_STITCHES, HEEL_DEPTH, HEEL_HEIGHT, LEG_STITCHES, LEG_ROUNDS, CUFF_ROUNDS));
        if (leg instanceof CalfLeg) {
            needed.addAll(List.of(LEG_CALF, LEG_INCREASE_OVER, LEG_TOP, LEG_DECREASES, LEG_DECREASE_OVER));
        }
        // a number below zero is a query of its own; there is no such sock to draw
        List<String> missing = needed.stream()
                .filter(parameter -> size.cell(parameter).filter(cell -> cell.value() >= 0).isEmpty())
                .map(Parameter::label).toList();
        return missing.isEmpty() ? new Taken.Complete(taken(leg, size)) : new Taken.Missing(missing);
    }

    private static SockMeasures taken(Leg leg, GradedSize size) {
        double perRound = 100 / size.value(GAUGE_ROUNDS);
        double footWidth = size.value(FINISHED_CIRCUMFERENCE) / 2;
        double perLegStitch = 100 / gauge(size, GAUGE_LEG, GAUGE_STITCHES) / 2;
        double ankle = size.value(LEG_STITCHES) * perLegStitch;
        double calf = ankle;
        double top = ankle;
        double widenOver = 0;
        double narrowOver = 0;
        switch (leg) {
            case StraightLeg straight -> { }
            case CalfLeg widening -> {
                calf = size.value(LEG_CALF) * perLegStitch;
                top = size.value(LEG_TOP) * perLegStitch;
                widenOver = size.value(LEG_INCREASE_OVER) * perRound;
                narrowOver = size.value(LEG_DECREASES) > 0 ? size.value(LEG_DECREASE_OVER) * perRound : 0;
            }
        }
        return new SockMeasures(size.value(FINISHED_LENGTH), footWidth, size.value(TOE_DEPTH), size.value(HEEL_DEPTH),
                size.value(HEEL_HEIGHT), footWidth * size.value(HEEL_STITCHES) / size.value(FOOT_STITCHES), ankle, calf,
                top, widenOver, narrowOver, size.value(LEG_ROUNDS) * perRound,
                size.value(CUFF_ROUNDS) * 100 / gauge(size, GAUGE_CUFF, GAUGE_ROUNDS));
    }

    private static double gauge(GradedSize size, Parameter ofTheZone, Parameter main) {
        return size.cell(ofTheZone).map(cell -> cell.value()).orElseGet(() -> size.value(main));
    }

    /** Floor to top of cuff. */
    double legHeight() {
        return heelHeight + legOnly + cuffHeight;
    }

    /** Where along the sole the toe begins. */
    double toeStart() {
        return footLength - toeDepth;
    }

    /** The figure of a measure; absent where the sock has no such thing of its own. */
    Optional<Double> of(Measure measure) {
        return switch (measure) {
            case FOOT_LENGTH -> Optional.of(footLength);
            case FOOT_WIDTH -> Optional.of(footWidth);
            case HEEL_HEIGHT -> Optional.of(heelHeight);
            case LEG_WIDTH -> Optional.of(legWidth);
            case CALF_WIDTH -> Optional.of(calfWidth).filter(calf -> calf > legTopWidth);
            case LEG_TOP_WIDTH -> Optional.of(legTopWidth).filter(top -> widenOver > 0);
            case LEG_HEIGHT -> Optional.of(legHeight());
            case CUFF_HEIGHT -> Optional.of(cuffHeight);
        };
    }
}
