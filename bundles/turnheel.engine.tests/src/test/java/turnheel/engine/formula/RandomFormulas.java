package turnheel.engine.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.RandomGenerator;
import net.jqwik.api.Tuple;
import net.jqwik.api.sessions.JqwikSession;
import turnheel.engine.term.Key;

/**
 * Texts of formulas that a spreadsheet program reads as {@link OwnFormula} does, in every function and spelling, over
 * keys with the values of {@link #VALUES}. A zero is among them, so that some of the formulas are errors.
 *
 * <p>What is rounded or compared is exact in binary, or one quotient of two such numbers: then it is a tie in every
 * program or in none, and no other program's way with the last bits is needed to agree.
 */
public final class RandomFormulas {

    /** The keys and their values; each is a multiple of a quarter. */
    public static final Map<Key, Double> VALUES = Collections.unmodifiableMap(new TreeMap<>(Map.of(
            new Key("foot.stitches"), 64.0, new Key("gauge.stitches"), 28.5, new Key("body.footLength"), 240.25,
            new Key("toe.castOn"), 7.0, new Key("fit.easeAround"), -10.0, new Key("heel.centre"), -2.5,
            new Key("heel.flapRows"), 0.0)));

    private static final int DEPTH = 3;

    private RandomFormulas() {
    }

    /** Formulas with semicolons between arguments. */
    public static Arbitrary<String> texts() {
        return real(DEPTH);
    }

    /** Some of them, outside of a property; the same ones for the same seed. */
    public static List<String> some(int count, long seed) {
        List<String> some = new ArrayList<>();
        JqwikSession.run(() -> {
            RandomGenerator<String> generator = texts().generator(count);
            Random random = new Random(seed);
            Stream.generate(() -> generator.next(random).value()).distinct().limit(count).forEach(some::add);
        });
        return some;
    }

    /** Sums, products and choices of anything. */
    private static Arbitrary<String> real(int depth) {
        if (depth == 0) {
            return quotient(0);
        }
        Arbitrary<String> inner = Arbitraries.lazy(() -> real(depth - 1));
        Arbitrary<String> exact = Arbitraries.lazy(() -> exact(depth - 1));
        Arbitrary<String> quotient = Arbitraries.lazy(() -> quotient(depth - 1));
        return Arbitraries.frequencyOf(
                Tuple.of(3, Arbitraries.lazy(() -> quotient(depth))),
                Tuple.of(3, joined(inner, "+ - *", inner)),
                Tuple.of(2, joined(inner, "/", exact.map(RandomFormulas::grouped))),
                Tuple.of(2, Combinators.combine(exact.map(RandomFormulas::grouped), spaced("^"),
                        Arbitraries.of("1", "2", "3", "-1", "-2", "+2")).as(RandomFormulas::glue)),
                Tuple.of(1, call("ABS", quotient).map(base -> base + "^0.5")),
                Tuple.of(1, call("SQRT", quotient)),
                Tuple.of(1, inner.map(RandomFormulas::grouped).map(operand -> "-" + operand)),
                Tuple.of(1, inner.map(RandomFormulas::grouped).map(operand -> operand + "%")),
                Tuple.of(2, several("MIN MAX SUM AVERAGE", inner)),
                Tuple.of(1, call("ABS", inner)),
                Tuple.of(2, choice(depth - 1, inner)));
    }

    /** One division of exact numbers at most. */
    private static Arbitrary<String> quotient(int depth) {
        if (depth == 0) {
            return exact(0);
        }
        Arbitrary<String> exact = Arbitraries.lazy(() -> exact(depth - 1)).map(RandomFormulas::grouped);
        return Arbitraries.oneOf(Arbitraries.lazy(() -> exact(depth)),
                joined(exact, "/", exact), exact.map(operand -> operand + "%"));
    }

    /** Sums and products of quarters, and what is rounded to whole numbers. */
    private static Arbitrary<String> exact(int depth) {
        Arbitrary<String> leaf = Arbitraries.oneOf(Arbitraries.of(VALUES.keySet()).map(Key::name), numbers());
        if (depth == 0) {
            return leaf;
        }
        Arbitrary<String> inner = Arbitraries.lazy(() -> exact(depth - 1));
        Arbitrary<String> quotient = Arbitraries.lazy(() -> quotient(depth - 1));
        // programs differ in what a multiple below zero is, and in what to do with a step of zero or below
        Arbitrary<String> notBelowZero = call("ABS", quotient);
        Arbitrary<String> step = Arbitraries.of("1", "2.5", "4", "toe.castOn", "gauge.stitches", "foot.stitches/8");
        return Arbitraries.oneOf(leaf,
                joined(inner, "+ -", inner), joined(leaf, "*", leaf),
                inner.map(RandomFormulas::grouped).map(operand -> "-" + operand),
                inner.map(RandomFormulas::grouped).map(operand -> "+ " + operand),
                several("MIN MAX SUM", inner), call("ABS", inner),
                Combinators.combine(name("ROUND ROUNDUP ROUNDDOWN TRUNC"), quotient, Arbitraries.of("0", "-1"))
                        .as((name, operand, places) -> name + "(" + operand + "; " + places + ")"),
                call("INT EVEN ODD", quotient),
                Combinators.combine(name("CEILING FLOOR"), notBelowZero, step)
                        .as((name, operand, by) -> name + "(" + operand + ";" + by + ")"),
                Combinators.combine(name("MOD QUOTIENT"), inner, inner)
                        .as((name, operand, by) -> name + "(" + operand + " ;" + by + ")"),
                choice(depth - 1, inner));
    }

    private static Arbitrary<String> choice(int depth, Arbitrary<String> branch) {
        // with the sum, a zero is never the negative one, which one evaluator finds smaller than zero
        Arbitrary<String> exact = Arbitraries.lazy(() -> exact(depth)).map(operand -> operand + "+0");
        Arbitrary<String> comparison = joined(exact, "= <> < <= >= >", exact);
        Arbitrary<String> condition = Arbitraries.oneOf(exact, comparison, comparison.map(RandomFormulas::grouped));
        return Combinators.combine(name("IF"), condition, branch, branch)
                .as((name, asked, then, otherwise) -> name + "(" + asked + ";" + then + "; " + otherwise + ")");
    }

    private static Arbitrary<String> numbers() {
        return Arbitraries.integers().between(0, 60).flatMap(quarters -> {
            String plain = Double.toString(quarters / 4.0);
            List<String> spellings = quarters % 4 == 0 ? List.of(plain, quarters / 4 + "", quarters / 4 + "E0")
                    : List.of(plain, plain + "0", quarters * 25 + "E-2", plain.replaceFirst("^0", ""));
            return Arbitraries.of(spellings);
        });
    }

    private static Arbitrary<String> joined(Arbitrary<String> left, String operators, Arbitrary<String> right) {
        return Combinators.combine(left, spaced(operators), right).as(RandomFormulas::glue);
    }

    private static Arbitrary<String> spaced(String operators) {
        return Arbitraries.of(operators.split(" "))
                .flatMap(operator -> Arbitraries.of(operator, " " + operator + " ", operator + " "));
    }

    private static Arbitrary<String> call(String names, Arbitrary<String> operand) {
        return Combinators.combine(name(names), operand).as((name, argument) -> name + "(" + argument + ")");
    }

    private static Arbitrary<String> several(String names, Arbitrary<String> operand) {
        return Combinators.combine(name(names), operand.list().ofMinSize(1).ofMaxSize(3))
                .as((name, arguments) -> arguments.stream().collect(Collectors.joining("; ", name + "(", ")")));
    }

    private static Arbitrary<String> name(String names) {
        return Arbitraries.of(names.split(" "))
                .flatMap(name -> Arbitraries.of(name, name, name.toLowerCase(Locale.ROOT)));
    }

    private static String glue(String left, String operator, String right) {
        return left + operator + right;
    }

    private static String grouped(String operand) {
        return "(" + operand + ")";
    }
}
