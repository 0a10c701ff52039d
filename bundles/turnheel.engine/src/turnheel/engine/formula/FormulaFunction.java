package turnheel.engine.formula;

import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.floor;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.rounded;
import static turnheel.engine.term.Terms.times;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import turnheel.engine.term.Rounding;
import turnheel.engine.term.Term;
import turnheel.engine.term.Terms;

/**
 * The functions that an own formula may use, each with what it means in terms. They give what ECMA-376 and OpenFormula
 * say, for negative numbers and ties too; where programs differ, the comment says which are followed.
 */
public enum FormulaFunction {
    /** To decimal places; a tie goes away from zero. */
    ROUND(Signature.PLACES) {
        @Override
        Term of(List<Term> arguments) {
            return rounded(Rounding.NEAREST, arguments.getFirst(), places(arguments));
        }
    },
    /** To decimal places, away from zero. */
    ROUNDUP(Signature.PLACES) {
        @Override
        Term of(List<Term> arguments) {
            return rounded(Rounding.UP, arguments.getFirst(), places(arguments));
        }
    },
    /** To decimal places, towards zero. */
    ROUNDDOWN(Signature.PLACES) {
        @Override
        Term of(List<Term> arguments) {
            return rounded(Rounding.DOWN, arguments.getFirst(), places(arguments));
        }
    },
    /** The same as {@link #ROUNDDOWN}. */
    TRUNC(Signature.PLACES) {
        @Override
        Term of(List<Term> arguments) {
            return ROUNDDOWN.of(arguments);
        }
    },
    /** To the whole number below. */
    INT(Signature.ONE) {
        @Override
        Term of(List<Term> arguments) {
            return floor(arguments.getFirst());
        }
    },
    /** To the multiple of the step above, as today's programs do it: -2.5 in steps of 2 is -2. Some old ones refuse. */
    CEILING(Signature.STEP) {
        @Override
        Term of(List<Term> arguments) {
            return Compositions.inSteps(arguments, Terms::ceiling);
        }
    },
    /** To the multiple of the step below: -2.5 in steps of 2 is -4. */
    FLOOR(Signature.STEP) {
        @Override
        Term of(List<Term> arguments) {
            return Compositions.inSteps(arguments, Terms::floor);
        }
    },
    /** To the even number away from zero. */
    EVEN(Signature.ONE) {
        @Override
        Term of(List<Term> arguments) {
            return times(rounded(Rounding.UP, dividedBy(arguments.getFirst(), number(2)), 0), number(2));
        }
    },
    /** To the odd number away from zero; zero itself goes to 1. */
    ODD(Signature.ONE) {
        @Override
        Term of(List<Term> arguments) {
            return Compositions.odd(arguments.getFirst());
        }
    },
    /** Without its sign. */
    ABS(Signature.ONE) {
        @Override
        Term of(List<Term> arguments) {
            return Terms.greatest(arguments.getFirst(), Terms.minus(number(0), arguments.getFirst()));
        }
    },
    /** Of a number below zero there is none. */
    SQRT(Signature.ONE) {
        @Override
        Term of(List<Term> arguments) {
            return Terms.root(arguments.getFirst());
        }
    },
    MIN(Signature.ANY) {
        @Override
        Term of(List<Term> arguments) {
            return new Term.Least(arguments);
        }
    },
    MAX(Signature.ANY) {
        @Override
        Term of(List<Term> arguments) {
            return new Term.Greatest(arguments);
        }
    },
    SUM(Signature.ANY) {
        @Override
        Term of(List<Term> arguments) {
            return Compositions.sum(arguments);
        }
    },
    AVERAGE(Signature.ANY) {
        @Override
        Term of(List<Term> arguments) {
            return dividedBy(Compositions.sum(arguments), number(arguments.size()));
        }
    },
    /** What is left after whole divisors; the sign is that of the divisor. */
    MOD(Signature.DIVISION) {
        @Override
        Term of(List<Term> arguments) {
            return Compositions.remainder(arguments.get(0), arguments.get(1));
        }
    },
    /** How many whole divisors there are, counted towards zero. */
    QUOTIENT(Signature.DIVISION) {
        @Override
        Term of(List<Term> arguments) {
            return rounded(Rounding.DOWN, dividedBy(arguments.get(0), arguments.get(1)), 0);
        }
    },
    /** One of two values by a comparison; a number in its place asks whether it is other than zero. */
    IF(Signature.CHOICE) {
        @Override
        Term of(List<Term> arguments) {
            return Compositions.choice(arguments.get(0), Comparator.UNEQUAL, number(0), arguments.get(1),
                    arguments.get(2));
        }
    };

    private static final Map<String, FormulaFunction> BY_NAME =
            Stream.of(values()).collect(Collectors.toUnmodifiableMap(FormulaFunction::name, Function.identity()));

    private final Signature signature;

    FormulaFunction(Signature signature) {
        this.signature = signature;
    }

    /** The function of a name, in capitals or not, as everywhere in spreadsheets. */
    static Optional<FormulaFunction> named(String name) {
        return Optional.ofNullable(BY_NAME.get(name.toUpperCase(java.util.Locale.ROOT)));
    }

    public Signature signature() {
        return signature;
    }

    /** The call as a term; the arguments are as many and of the kind that the signature says. */
    abstract Term of(List<Term> arguments);

    private static int places(List<Term> arguments) {
        return arguments.size() == 1 ? 0 : (int) Compositions.fixed(arguments.get(1)).getAsDouble();
    }

    /** What a function takes. */
    public enum Signature {
        /** One number. */
        ONE(1, 1),
        /** A number and its decimal places, a fixed whole number; 0 when left out, below zero tens and hundreds. */
        PLACES(1, 2),
        /** A number and the step to whose multiples it goes, above zero; 1 when left out. */
        STEP(1, 2),
        /** A number and what divides it. */
        DIVISION(2, 2),
        /** A comparison, and what holds when it is true and when it is not. */
        CHOICE(3, 3),
        /** One or more numbers. */
        ANY(1, 255);

        private final int atLeast;
        private final int atMost;

        Signature(int atLeast, int atMost) {
            this.atLeast = atLeast;
            this.atMost = atMost;
        }

        /** The fewest arguments. */
        public int atLeast() {
            return atLeast;
        }

        /** The most arguments; a spreadsheet takes no more than 255. */
        public int atMost() {
            return atMost;
        }
    }
}
