package turnheel.exchange.imprint;

import java.util.OptionalInt;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Heel;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.design.Leg;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.PickUp;
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
            case RoundToe(var lines, var increase, var castOn, var lean) ->
                leaning(lean, grown(Words.text("toe.round", Integer.toString(lines)), increase, castOn, direction));
            case WedgeToe(var increase, var castOn) -> grown(Words.text("toe.wedge"), increase, castOn, direction);
            case StarToe(var increase, var castOn, var lean) ->
                leaning(lean, grown(Words.text("toe.star"), increase, castOn, direction));
            case AsymmetricToe(var increase, var castOn) ->
                grown(Words.text("toe.asymmetric"), increase, castOn, direction);
            case ShortRowToe(var turn) -> Words.text("toe.shortRow", word("turn", turn));
        };
    }

    private static String grown(String kind, Increase increase, CastOn castOn, Direction direction) {
        return switch (direction) {
            case TOE_UP -> with("castOn", castOn, Words.text("toe.increased", kind, word("increase", increase)));
            case CUFF_DOWN -> kind;
        };
    }

    private static String leaning(Lean lean, String part) {
        return with("lean", lean, part);
    }

    /** A part with what was chosen for it; the usual choice adds nothing. */
    private static String with(String of, Enum<?> value, String part) {
        return Words.text(of + "." + value.name(), part);
    }

    private static String word(String of, Enum<?> value) {
        return Words.text(of + "." + value.name());
    }

    /** The heel; a flap is named by what comes first; turn, edge and pick-up are said cuff-down only. */
    public static String heel(Heel heel, Direction direction) {
        return switch (heel) {
            case ShortRowHeel(var turn) -> Words.text("heel.shortRow", word("turn", turn));
            case FlapHeel(var turn, var length, var fabric, var edge, var pickUp) -> {
                String flap = with("fabric", fabric, flap(length));
                yield switch (direction) {
                    case TOE_UP -> Words.text("heel.flap.TOE_UP", flap);
                    case CUFF_DOWN -> pickedUp(pickUp,
                            Words.text("heel.flap.CUFF_DOWN", word("heelTurn", turn), with("edge", edge, flap)));
                };
            }
            case AfterthoughtHeel(var cap, var lean) -> {
                String capped = Words.text("heel.afterthought", word("cap", cap));
                yield switch (cap) {
                    case WEDGE -> capped;
                    case ROUND -> leaning(lean, capped);
                };
            }
        };
    }

    private static String flap(FlapLength length) {
        return switch (length) {
            case FlapLength.FromBody fromBody -> Words.text("flap.fromBody");
            case FlapLength.RowsPerStitch ratio -> Words.text("flap.ratio", ratio.toString());
            case FlapLength.Height(var height) -> Words.text("flap.height", height.toString());
        };
    }

    private static String pickedUp(PickUp pickUp, String heel) {
        return switch (pickUp) {
            case PickUp.HalfTheRows half -> heel;
            case PickUp.StitchesPerRow ratio -> Words.text("pickUp.ratio", heel, ratio.toString());
        };
    }

    public static String leg(Leg leg) {
        return switch (leg) {
            case StraightLeg(var length, var count) ->
                Words.text("leg.straight", word("length", length), word("legCount", count));
            case CalfLeg(var length, var count) -> Words.text("leg.calf", word("length", length), word("legCount", count));
        };
    }

    public static String cuff(Cuff cuff) {
        return switch (cuff) {
            case RibCuff(var knit, var purl, var mayAdjust) ->
                Words.text("cuff.rib", Integer.toString(knit), Integer.toString(purl));
            case HemCuff hem -> Words.text("cuff.hem");
            case RolledCuff rolled -> Words.text("cuff.rolled");
        };
    }

    /** How far stretches without shaping are worked, and where a stitch pattern ends whole. */
    public static String lengths(Lengths lengths) {
        String said = Words.text("lengths", word("lengthMode", lengths.foot()), word("lengthMode", lengths.leg()),
                word("lengthMode", lengths.cuff()));
        return switch (lengths.snap()) {
            case NONE -> said;
            case FOOT, LEG, FOOT_AND_LEG -> Words.text("lengths.snapped", said, word("snap", lengths.snap()));
        };
    }

    /** A stitch pattern by its size and place. */
    public static String stitchPattern(StitchPattern pattern) {
        String size = pattern.edge() == 0 ? Integer.toString(pattern.repeat())
                : pattern.repeat() + " + " + pattern.edge();
        String shape = Words.text("stitchPattern." + pattern.fit().name(), word("zone", pattern.zone()), size,
                Integer.toString(pattern.rows()));
        if (pattern.stranding().isEmpty()) {
            return shape;
        }
        OptionalInt longest = pattern.stranding().get().longestFloat();
        return longest.isEmpty() ? Words.text("stitchPattern.stranded", shape)
                : Words.text("stitchPattern.floats", shape, Integer.toString(longest.getAsInt()));
    }
}
