package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.YARN_BALLS;
import static turnheel.engine.design.Catalogue.YARN_FLOATS;
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

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Yarn;
import turnheel.engine.design.YarnRows;
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
        YarnPlan plan = YarnPlan.of(design);
        book.chosen(YARN_LOOPS);
        book.chosen(YARN_PLAIN_LOOPS);
        if (plan.needsParts()) {
            YarnPlan.loopsOfParts().forEach(book::chosen);
        }
        plan.floats().ifPresent(floats -> book.rule(YARN_FLOATS, floats));
        book.rule(YARN_LOOP_LENGTH, loopLength(materials));
        Term loops = plan.floats().isPresent() ? plus(YARN_PLAIN_LOOPS.term(), YARN_FLOATS.term())
                : YARN_PLAIN_LOOPS.term();
        book.rule(YARN_SOCK_METRES, metres(loops, IntStream.rangeClosed(1, plan.yarns()).map(plan::ends).sum()));
        book.rule(YARN_METRES, ofPair(YARN_SOCK_METRES.term(), materials));
        if (materials.yarn().isPresent() || weighed(materials).isPresent()) {
            book.rule(YARN_TEX, tex(materials));
        }
        if (plan.yarns() > 1) {
            colours(book, materials, plan);
        } else if (book.contains(YARN_TEX.key())) {
            book.rule(YARN_SOCK_GRAMS, grams(YARN_SOCK_METRES.term(), YARN_TEX.term()));
            book.rule(YARN_GRAMS, ofPair(YARN_SOCK_GRAMS.term(), materials));
            materials.yarn().ifPresent(yarn -> book.rule(YARN_BALLS, balls(YARN_METRES.term(), yarn)));
        }
    }

    /** The rows of each yarn, and the sums of what cannot be told from the metres of all. */
    private static void colours(RuleBook book, Materials materials, YarnPlan plan) {
        List<YarnRows> ofYarns = Catalogue.YARN_COLOURS.subList(0, plan.yarns());
        for (int number = 1; number <= plan.yarns(); number++) {
            Yarn yarn = materials.yarns().get(number - 1).yarn();
            YarnRows rows = ofYarns.get(number - 1);
            book.rule(rows.plainLoops(), plan.loops(number));
            book.rule(rows.sockMetres(), metres(rows.plainLoops().term(), plan.ends(number)));
            book.rule(rows.metres(), ofPair(rows.sockMetres().term(), materials));
            book.rule(rows.sockGrams(), grams(rows.sockMetres().term(), number == 1 ? YARN_TEX.term() : tex(yarn)));
            book.rule(rows.grams(), ofPair(rows.sockGrams().term(), materials));
            book.rule(rows.balls(), balls(rows.metres().term(), yarn));
        }
        book.rule(YARN_SOCK_GRAMS, sum(ofYarns, YarnRows::sockGrams));
        book.rule(YARN_GRAMS, sum(ofYarns, YarnRows::grams));
        book.rule(YARN_BALLS, sum(ofYarns, YarnRows::balls));
    }

    private static Term sum(List<YarnRows> yarns, Function<YarnRows, Parameter> row) {
        return yarns.stream().map(rows -> row.apply(rows).term()).reduce((one, other) -> plus(one, other)).orElseThrow();
    }

    private static Term metres(Term loops, int ends) {
        return dividedBy(plus(times(loops, YARN_LOOP_LENGTH.term()), number(ends * Materials.YARN_END_MM)), number(1000));
    }

    static Term metresOfLoops(Term loops) {
        return dividedBy(times(loops, YARN_LOOP_LENGTH.term()), number(1000));
    }

    static Term metresOfEnds(int ends) {
        return number(ends * Materials.YARN_END_MM / 1000);
    }

    private static Term grams(Term metres, Term tex) {
        return dividedBy(times(metres, tex), number(1000));
    }

    private static Term balls(Term metres, Yarn yarn) {
        return ceiling(dividedBy(metres, number(yarn.metresPerBall())));
    }

    /** A swatch that was only measured tells nothing of the yarn. */
    private static Optional<Swatch> weighed(Materials materials) {
        return materials.swatch().filter(swatch -> swatch.grams().isPresent());
    }

    private static Term loopLength(Materials materials) {
        Optional<Swatch> weighed = weighed(materials);
        if (weighed.isPresent() && materials.yarn().isPresent()) {
            Swatch swatch = weighed.get();
            Yarn yarn = materials.yarn().get();
            Term millimetresPerGram = dividedBy(times(number(yarn.metresPerBall()), number(1000)),
                    number(yarn.gramsPerBall()));
            return dividedBy(times(number(swatch.grams().orElseThrow()), millimetresPerGram), number(swatch.loops()));
        }
        Term loopsPerSquareMillimetre = dividedBy(times(GAUGE_STITCHES.term(), GAUGE_ROUNDS.term()), number(10_000));
        return root(dividedBy(number(WET_RELAXED_PLAIN), loopsPerSquareMillimetre));
    }

    /** By the label, else by what the swatch's loops weigh. Tex is the weight of 1000 m in grams: ISO 1144. */
    private static Term tex(Materials materials) {
        if (materials.yarn().isPresent()) {
            return tex(materials.yarn().get());
        }
        Swatch swatch = weighed(materials).orElseThrow();
        return dividedBy(number(swatch.grams().orElseThrow() * 1_000_000),
                times(number(swatch.loops()), YARN_LOOP_LENGTH.term()));
    }

    private static Term tex(Yarn yarn) {
        return dividedBy(times(number(1000), number(yarn.gramsPerBall())), number(yarn.metresPerBall()));
    }

    /** The pair is two like socks, be the second a mirror of the first. */
    private static Term ofPair(Term sock, Materials materials) {
        Term margin = dividedBy(number(materials.margin().percent()), number(100));
        return times(times(number(2), sock), plus(number(1), margin));
    }
}
