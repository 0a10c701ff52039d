package turnheel.engine.query;

import static turnheel.engine.query.Severity.ERROR;
import static turnheel.engine.query.Severity.WARNING;

/** The checks of a graded pattern. Ids are stable: scripts and sign-offs name them. */
public enum Check {
    /** A measurement that a rule needs is not there. */
    MEASUREMENT_MISSING("size.measurement-missing", ERROR),
    /** A measurement is smaller than that of the size before. */
    MEASUREMENT_ORDER("size.measurement-order", WARNING),
    /** What the parts need of the count excludes each other, in any size. */
    NEEDS_EXCLUDE("counts.needs-exclude", ERROR),
    /** No count that keeps every part whole lies near enough to the ideal. */
    COUNTS_OUT_OF_REACH("counts.out-of-reach", ERROR),
    /** Neighbouring sizes have no counts that keep every part whole and grow with the foot. */
    COUNTS_CLASH("counts.none-fits", ERROR),
    /** A larger size has fewer stitches than a smaller one. */
    COUNTS_FALL("counts.fall", ERROR),
    /** Two sizes of different circumference share one count. */
    COUNTS_EQUAL("counts.equal", WARNING),
    /** An override breaks what the parts need of the count. */
    OVERRIDE_BREAKS("counts.override-breaks", ERROR),
    /** A number of stitches, rounds or times is not whole. */
    NOT_WHOLE("counts.not-whole", ERROR),
    /** A number of stitches, rounds or times is below zero. */
    NEGATIVE("counts.negative", ERROR),
    /** One round would have to bring a count to more than twice or less than half. */
    CHANGE_OVER("counts.change-too-great", ERROR),
    /** A rule divides by zero for these numbers. */
    UNDEFINED("counts.undefined", ERROR),
    /** The toe is outside the usual share of the finished length. */
    TOE_DEPTH("toe.depth-unusual", WARNING),
    /** Fewer stitches at the turning point than at the tip, or more than the foot has. */
    TOE_ORDER("toe.order", ERROR),
    /** The unturned centre of the heel is too narrow. */
    HEEL_CENTRE("heel.centre-narrow", ERROR),
    /** The unturned centre of the heel leaves no stitch to turn. */
    HEEL_CENTRE_WIDE("heel.centre-wide", ERROR),
    /** The heel has more stitches than the foot. */
    HEEL_TOO_WIDE("heel.too-wide", ERROR),
    /** The heel is outside the usual share of the foot's stitches. */
    HEEL_SHARE("heel.share-unusual", WARNING),
    /** A flap, or its turn, has an odd number of rows. */
    FLAP_ROWS("heel.flap-rows-odd", ERROR),
    /** The flap does not take in just the stitches of the gusset. */
    GUSSET_LEFT("heel.gusset-left", ERROR),
    /** A flap worked toe-up has no gusset to take in. */
    GUSSET_NONE("heel.gusset-none", ERROR),
    /** A number of the heel leaves too few stitches to work it on. */
    TURN_NARROW("heel.turn-narrow", ERROR),
    /** The gusset is too narrow to be worn comfortably over the heel. */
    GUSSET_TIGHT("heel.gusset-tight", WARNING),
    /** The leg is wider at the knee than at the calf. */
    KNEE_WIDE("leg.knee-wide", WARNING),
    /** More increases or decreases at the calf than rounds to work them in, or more such rounds than the leg has. */
    CALF_STEEP("leg.calf-too-steep", ERROR),
    /** Fewer rounds than a foot needs between toe and heel. */
    FOOT_SHORT("foot.rounds-too-few", ERROR),
    /** Instep and sole differ by more than the usual two stitches. */
    FOOT_SPLIT("foot.split-uneven", WARNING),
    /** What is measured and what is counted are not the same length. */
    MEASURE_DIFFERS("lengths.measure-differs", WARNING),
    /** A stitch pattern ends before the last row of its repeat. */
    PATTERN_CUT("stitchPattern.cut-in-repeat", WARNING),
    /** Heel and cuff together are higher than the leg. */
    LEG_SHORT("leg.shorter-than-cuff", ERROR),
    /** The cuff's stitches are not whole repeats of its rib. */
    CUFF_REPEAT("cuff.repeat-cut", ERROR),
    /** The ease around that the count gives is outside the usual range. */
    EASE("fit.ease-unusual", WARNING),
    /** A sock this tight can harm some feet. */
    TIGHT("fit.tight", WARNING),
    /** The sock may not pass over the heel. */
    STRETCH("fit.stretch-too-far", WARNING),
    /** The gauge is not that of the swatch. */
    SWATCH_DIFFERS("gauge.swatch-differs", WARNING),
    /** The floats of a stranded pattern are too long. */
    FLOAT_LONG("stitchPattern.float-long", WARNING),
    /** A row of a stitch pattern cannot be read, or is no row of stitches. */
    ROW_UNREAD("stitchPattern.row-unread", ERROR),
    /** A row of a stitch pattern does not use its stitches up, or wants more than there are. */
    ROW_MISFIT("stitchPattern.row-misfit", ERROR),
    /** The rows of a stitch pattern end with another count than they begin with. */
    ROWS_DO_NOT_RETURN("stitchPattern.rows-do-not-return", ERROR),
    /** The gauge is not one that yarns of this category are worked at. */
    YARN_GAUGE("yarn.gauge-unusual", WARNING),
    /** A pair takes more yarn than the pattern states. */
    YARN_BALLS("yarn.beyond-balls", WARNING),
    /** The last ball is used up to its end. */
    YARN_END("yarn.ball-end", WARNING),
    /** Nothing is worked in a yarn. */
    YARN_UNUSED("yarn.unused", WARNING),
    /** The formula of an own row cannot be read. */
    OWN_UNREAD("own.unread", ERROR),
    /** An own row reads a row that the pattern does not have. */
    OWN_UNKNOWN_KEY("own.unknown-key", ERROR),
    /** An own row reads itself, perhaps by way of others. */
    OWN_CIRCULAR("own.circular", ERROR),
    /** The formula of an own row gives no number, such as a division by zero. */
    OWN_NO_NUMBER("own.no-number", ERROR),
    /** A text states another count than its instructions give. */
    TEXT_COUNT("text.count-differs", ERROR),
    /** A round or row asks for more stitches than there are, or leaves some. */
    TEXT_ROUND("text.round-not-used-up", ERROR),
    /** A repeat does not come out even over the stitches that it is worked on. */
    TEXT_REPEAT("text.repeat-misfit", ERROR),
    /** A list of values has not one for each size. */
    TEXT_SIZES("text.sizes-number", ERROR),
    /** A yarn-over is worked open in a text that closes them. */
    TEXT_YARN_OVER("text.yarn-over-open", WARNING),
    /** A stitch that closes a yarn-over meets none. */
    TEXT_CLOSING("text.closing-meets-none", ERROR),
    /** A gap, a wrap, a twin or a double stitch is passed over and leaves a hole. */
    TEXT_GAP("text.gap-open", WARNING),
    /** A text names a gap or a marked stitch that is not there. */
    TEXT_GAP_MISSING("text.gap-missing", ERROR),
    /** A text names a marker that is not there. */
    TEXT_MARKER("text.marker-missing", ERROR),
    /** A flat row neither turns nor comes to its end. */
    TEXT_ROW("text.row-not-turned", ERROR),
    /** A row or round begins on another side than the text tells. */
    TEXT_SIDE("text.side-differs", WARNING),
    /** Rounds are repeated that the section does not have. */
    TEXT_ROUNDS_MISSING("text.rounds-missing", ERROR),
    /** A repeat ends with a round that it does not have. */
    TEXT_ENDING("text.ending-differs", ERROR),
    /** More stitches are taken off hold than lie there. */
    TEXT_HELD("text.held-missing", ERROR),
    /** A number is greater than any sock needs. */
    TEXT_TOO_LARGE("text.number-too-large", ERROR),
    /** A chart, a stitch pattern or a section is referred to that is not there. */
    TEXT_REFERENCE("text.reference-missing", ERROR),
    /** A length is shorter than what is knitted already. */
    TEXT_LENGTH_IMPOSSIBLE("text.length-impossible", ERROR),
    /** A stated length is not its rounds at the stated gauge. */
    TEXT_LENGTH("text.length-differs", WARNING),
    /** A stated circumference is not the stitches at the stated gauge. */
    TEXT_CIRCUMFERENCE("text.circumference-differs", WARNING),
    /** A measurement and the same in another unit disagree. */
    TEXT_UNITS("text.units-disagree", WARNING),
    /** A measurement falls as sizes grow. */
    TEXT_SIZES_ORDER("text.sizes-order", WARNING),
    /** An amount of yarn falls as sizes grow. */
    TEXT_YARN("text.yarn-order", WARNING),
    /** An abbreviation is used that the list does not explain. */
    TEXT_UNLISTED("text.abbreviation-unlisted", WARNING),
    /** An abbreviation is explained that the text does not use. */
    TEXT_UNUSED("text.abbreviation-unused", WARNING),
    /** One thing is spelled two ways. */
    TEXT_SPELLING("text.spelling-mixed", WARNING),
    /** A sentence is no instruction that can be read. */
    TEXT_UNREAD("text.unread", WARNING);

    private final String id;
    private final Severity severity;

    Check(String id, Severity severity) {
        this.id = id;
        this.severity = severity;
    }

    public String id() {
        return id;
    }

    public Severity severity() {
        return severity;
    }
}
