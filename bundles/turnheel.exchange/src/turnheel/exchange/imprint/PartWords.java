package turnheel.exchange.imprint;

import turnheel.engine.design.Cuff;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Leg;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Toe;
import turnheel.engine.design.WedgeToe;

/** What a designer chose, in words. */
public final class PartWords {

    private PartWords() {
    }

    public static String direction(Direction direction) {
        return Words.text("direction." + direction.name());
    }

    /** A stitch gauge as it was measured. */
    public static String stitchGauge(Gauge gauge) {
        return Words.text("gauge.stitches", count(gauge), gauge.over().toString());
    }

    /** A round gauge as it was measured. */
    public static String roundGauge(Gauge gauge) {
        return Words.text("gauge.rounds", count(gauge), gauge.over().toString());
    }

    /** The count as written, which is what stands before the stroke. */
    private static String count(Gauge gauge) {
        String text = gauge.toString();
        return text.substring(0, text.indexOf('/'));
    }

    /** The toe; how it grows matters only where it is knitted first. */
    public static String toe(Toe toe, Direction direction) {
        return switch (toe) {
            case RoundToe(var lines, var increase) -> switch (direction) {
                case TOE_UP -> Words.text("toe.round.TOE_UP", Integer.toString(lines),
                        Words.text("increase." + increase.name()));
                case CUFF_DOWN -> Words.text("toe.round.CUFF_DOWN", Integer.toString(lines));
            };
            case WedgeToe(var increase) -> switch (direction) {
                case TOE_UP -> Words.text("toe.wedge.TOE_UP", Words.text("increase." + increase.name()));
                case CUFF_DOWN -> Words.text("toe.wedge.CUFF_DOWN");
            };
        };
    }

    public static String heel(Heel heel) {
        return switch (heel) {
            case ShortRowHeel(var turn) -> Words.text("heel.shortRow", Words.text("turn." + turn.name()));
        };
    }

    public static String leg(Leg leg) {
        return switch (leg) {
            case StraightLeg(var length) -> Words.text("leg.straight", Words.text("length." + length.name()));
        };
    }

    public static String cuff(Cuff cuff) {
        return switch (cuff) {
            case RibCuff(var knit, var purl) -> Words.text("cuff.rib", Integer.toString(knit), Integer.toString(purl));
        };
    }
}
