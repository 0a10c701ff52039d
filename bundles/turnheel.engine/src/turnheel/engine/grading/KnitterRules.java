package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.EASE_AROUND;
import static turnheel.engine.design.Catalogue.FINISHED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.rounded;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.term.Key;
import turnheel.engine.term.Rounding;
import turnheel.engine.term.Term;

/**
 * What becomes of the printed counts of a size in the hands of a knitter with a gauge and a foot of their own. The
 * keys of the knitter are no rows of a pattern: who evaluates these rules brings their values.
 */
public final class KnitterRules {

    /** Stitches of the main fabric over 100 mm, as the knitter knits it. */
    public static final Key GAUGE = new Key("knitter.gauge");

    /** Circumference of the knitter's foot in mm. */
    public static final Key FOOT = new Key("knitter.foot");

    private static final Term HUNDRED = number(100);

    /**
     * Finished circumference of the foot in mm. All fabrics of the sock are taken to change as the main one does, for
     * want of a swatch of each; in plain knitting it is stitches over gauge. Worked: 64 stitches, printed at 32 over
     * 100 mm, are 200 mm round there, and 64 · 100 / 30 = 213.3 mm at 30.
     */
    public static final Term CIRCUMFERENCE = dividedBy(
            times(FINISHED_CIRCUMFERENCE.term(), GAUGE_STITCHES.term()), new Term.Reference(GAUGE));

    /**
     * Circumference in mm of the foot that this sock fits with the ease that the size asks for. Worked: 213.3 mm with
     * ten per cent less than the foot fit one of 237 mm.
     */
    public static final Term FITS = dividedBy(CIRCUMFERENCE,
            plus(number(1), dividedBy(EASE_AROUND.term(), HUNDRED)));

    /** Per cent of the knitter's foot by which the sock is larger; negative is smaller. */
    public static final Term EASE = times(
            minus(dividedBy(CIRCUMFERENCE, new Term.Reference(FOOT)), number(1)), HUNDRED);

    /**
     * How far in mm the foot that it fits is from the knitter's; the size with the least comes closest. To a
     * hundredth of a millimetre, so that a foot in the middle of two sizes is there in every program.
     */
    public static final Term OFF = rounded(Rounding.NEAREST, greatest(minus(FITS, new Term.Reference(FOOT)),
            minus(new Term.Reference(FOOT), FITS)), 2);

    private KnitterRules() {
    }
}
