package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.YARN_BALLS;
import static turnheel.engine.design.Catalogue.YARN_GRAMS;
import static turnheel.engine.design.Catalogue.YARN_LOOPS;
import static turnheel.engine.design.Catalogue.YARN_LOOP_LENGTH;
import static turnheel.engine.design.Catalogue.YARN_METRES;
import static turnheel.engine.design.Catalogue.YARN_PLAIN_LOOPS;
import static turnheel.engine.design.Catalogue.YARN_SOCK_GRAMS;
import static turnheel.engine.design.Catalogue.YARN_SOCK_METRES;
import static turnheel.engine.design.Catalogue.YARN_TEX;
import static turnheel.engine.term.Terms.ceiling;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.root;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Design;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Materials;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Yarn;
import turnheel.engine.term.Term;

/** Yarn: domain § 9. The rows need the counted loops, which {@link LoopGrader} brings. */
final class YarnRules {

    /**
     * Stitch density times squared loop length of plain knitting in wool, wet relaxed: averages of Munden, J. Textile
     * Inst. 50 (1959), as quoted in the reference table of knit geometry. Wet relaxed, because the gauge of a sock is
     * measured on fabric that was washed and dried without stretching; 19.0 (dry) would be fabric straight from the
     * needles, 23.1 (fully relaxed) fabric that was tumbled. Worked: 9 stitches and 11.7 rounds an inch give 11.5 mm,
     * and 18 stitches of a sock swatch were measured to take 11.3 mm each.
     */
    private static final double WET_RELAXED_PLAIN = 21.6;

    private YarnRules() {
    }

    static void contribute(RuleBook book, Design design) {
        Materials materials = design.materials();
        book.chosen(YARN_LOOPS);
        book.chosen(YARN_PLAIN_LOOPS);
        book.rule(YARN_LOOP_LENGTH, loopLength(materials));
        book.rule(YARN_SOCK_METRES, dividedBy(plus(times(YARN_PLAIN_LOOPS.term(), YARN_LOOP_LENGTH.term()),
                number(yarnEnds(design.heel()) * Materials.YARN_END_MM)), number(1000)));
        book.rule(YARN_METRES, ofPair(YARN_SOCK_METRES.term(), materials));
        if (materials.yarn().isPresent() || materials.swatch().isPresent()) {
            book.rule(YARN_TEX, tex(materials));
            book.rule(YARN_SOCK_GRAMS, dividedBy(times(YARN_SOCK_METRES.term(), YARN_TEX.term()), number(1000)));
            book.rule(YARN_GRAMS, ofPair(YARN_SOCK_GRAMS.term(), materials));
        }
        materials.yarn().ifPresent(yarn -> book.rule(YARN_BALLS,
                ceiling(dividedBy(YARN_METRES.term(), number(yarn.metresPerBall())))));
    }

    private static Term loopLength(Materials materials) {
        if (materials.swatch().isPresent() && materials.yarn().isPresent()) {
            Swatch swatch = materials.swatch().get();
            Yarn yarn = materials.yarn().get();
            Term millimetresPerGram = dividedBy(times(number(yarn.metresPerBall()), number(1000)),
                    number(yarn.gramsPerBall()));
            return dividedBy(times(number(swatch.grams()), millimetresPerGram), number(swatch.loops()));
        }
        Term loopsPerSquareMillimetre = dividedBy(times(GAUGE_STITCHES.term(), GAUGE_ROUNDS.term()), number(10_000));
        return root(dividedBy(number(WET_RELAXED_PLAIN), loopsPerSquareMillimetre));
    }

    /** By the label, else by what the swatch's loops weigh. Tex is the weight of 1000 m in grams: ISO 1144. */
    private static Term tex(Materials materials) {
        if (materials.yarn().isPresent()) {
            Yarn yarn = materials.yarn().get();
            return dividedBy(times(number(1000), number(yarn.gramsPerBall())), number(yarn.metresPerBall()));
        }
        Swatch swatch = materials.swatch().orElseThrow();
        return dividedBy(number(swatch.grams() * 1_000_000), times(number(swatch.loops()), YARN_LOOP_LENGTH.term()));
    }

    /** The pair is two like socks, be the second a mirror of the first. */
    private static Term ofPair(Term sock, Materials materials) {
        Term margin = dividedBy(number(materials.margin().percent()), number(100));
        return times(times(number(2), sock), plus(number(1), margin));
    }

    /** Beginning and end of the sock; a heel that is worked last begins and ends once more. */
    private static int yarnEnds(Heel heel) {
        return switch (heel) {
            case ShortRowHeel worked -> 2;
            case FlapHeel worked -> 2;
            case AfterthoughtHeel worked -> 4;
        };
    }
}
