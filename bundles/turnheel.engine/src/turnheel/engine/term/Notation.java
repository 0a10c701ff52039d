package turnheel.engine.term;

import java.math.BigDecimal;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

import turnheel.engine.term.Condition.Comparison;

/**
 * How a term is written down. {@link #formula} is the open spreadsheet notation (ECMA-376 and OpenFormula agree on what
 * is used here: {@code INT MIN MAX MOD SQRT IF}); {@link #plain} and {@link #withValues} are for reading.
 */
public abstract sealed class Notation {

    /** Binding strength of what a term writes: operands that bind less need parentheses. */
    private static final int SUM = 1;
    private static final int PRODUCT = 2;
    private static final int POWER = 3;
    private static final int ATOM = 4;

    /** The spreadsheet formula of a term, without the leading equals sign; {@code nameOf} names the cell of a key. */
    public static String formula(Term term, Function<Key, String> nameOf) {
        return new Formula(nameOf).write(term, SUM);
    }

    /** The term as a person writes it, with {@code nameOf} the keys. */
    public static String plain(Term term, Function<Key, String> nameOf) {
        return new Plain(nameOf).write(term, SUM);
    }

    /** The same with the values filled in, at most four decimals each. */
    public static String withValues(Term term, ToDoubleFunction<Key> valueOf) {
        return new Plain(key -> number(valueOf.applyAsDouble(key))).write(term, SUM);
    }

    /** A number for reading: at most four decimals, no trailing zeros, a true minus sign. */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(4, java.math.RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString().replace('-', '−');
    }

    abstract String constant(double value);

    abstract String name(Key key);

    abstract String symbol(Operation operation);

    abstract String symbol(Comparison comparison);

    abstract String floor(Term operand);

    abstract String nearest(Term.Nearest nearest);

    abstract String rounded(Term.Rounded rounded);

    abstract String choice(Term.If choice);

    abstract String function(Term term);

    abstract String separator();

    final String write(Term term, int atLeast) {
        return switch (term) {
            case Term.Number(double value) -> value < 0 ? bracketed(constant(value), PRODUCT, atLeast) : constant(value);
            case Term.Reference(Key key) -> name(key);
            case Term.Arithmetic arithmetic -> arithmetic(arithmetic, atLeast);
            case Term.Least least -> call(least, least.operands());
            case Term.Greatest greatest -> call(greatest, greatest.operands());
            case Term.Remainder remainder -> call(remainder, remainder.operands());
            case Term.Root root -> call(root, root.operands());
            case Term.Floor(Term operand) -> floor(operand);
            case Term.Nearest nearest -> nearest(nearest);
            case Term.Rounded rounded -> rounded(rounded);
            case Term.If choice -> choice(choice);
        };
    }

    final String bracketed(String text, int strength, int atLeast) {
        return strength < atLeast ? "(" + text + ")" : text;
    }

    final String compare(Condition condition) {
        return write(condition.left(), SUM) + symbol(condition.comparison()) + write(condition.right(), SUM);
    }

    private String call(Term function, java.util.List<Term> operands) {
        return operands.stream().map(operand -> write(operand, SUM))
                .collect(Collectors.joining(separator(), function(function) + "(", ")"));
    }

    private String arithmetic(Term.Arithmetic term, int atLeast) {
        int strength = switch (term.operation()) {
            case PLUS, MINUS -> SUM;
            case TIMES, DIVIDED_BY -> PRODUCT;
            case POWER -> POWER;
        };
        // The right operand keeps its parentheses even where arithmetic would not need them (a + (b + c)): a
        // spreadsheet must add in the same order as the engine, to the last bit.
        String text = write(term.left(), strength) + symbol(term.operation()) + write(term.right(), strength + 1);
        return bracketed(text, strength, atLeast);
    }

    /** Open spreadsheet notation. */
    private static final class Formula extends Notation {
        private final Function<Key, String> nameOf;

        Formula(Function<Key, String> nameOf) {
            this.nameOf = nameOf;
        }

        @Override
        String constant(double value) {
            return value == Math.rint(value) && Math.abs(value) < 1e15 ? Long.toString((long) value)
                    : new BigDecimal(Double.toString(value)).toString();
        }

        @Override
        String name(Key key) {
            return nameOf.apply(key);
        }

        @Override
        String symbol(Operation operation) {
            return switch (operation) {
                case PLUS -> "+";
                case MINUS -> "-";
                case TIMES -> "*";
                case DIVIDED_BY -> "/";
                case POWER -> "^";
            };
        }

        @Override
        String symbol(Comparison comparison) {
            return switch (comparison) {
                case LESS -> "<";
                case AT_MOST -> "<=";
                case EQUAL -> "=";
                case AT_LEAST -> ">=";
                case MORE -> ">";
            };
        }

        @Override
        String floor(Term operand) {
            return "INT(" + write(operand, SUM) + "+1E-9)";
        }

        @Override
        String nearest(Term.Nearest nearest) {
            String residue = write(nearest.residue(), PRODUCT);
            return "(" + residue + "-" + write(nearest.step(), PRODUCT) + "*INT(0.5-(" + write(nearest.ideal(), SUM)
                    + "-" + residue + ")/" + write(nearest.step(), ATOM) + "+1E-9))";
        }

        @Override
        String rounded(Term.Rounded rounded) {
            String name = switch (rounded.way()) {
                case NEAREST -> "ROUND";
                case UP -> "ROUNDUP";
                case DOWN -> "ROUNDDOWN";
            };
            // a tie must be one in every program before it is decided
            String sound = "ROUND(" + write(rounded.operand(), SUM) + "," + Term.MARGIN_PLACES + ")";
            return rounded.places() == Term.MARGIN_PLACES ? sound : name + "(" + sound + "," + rounded.places() + ")";
        }

        @Override
        String choice(Term.If choice) {
            return "IF(" + compare(choice.condition()) + "," + write(choice.then(), SUM) + ","
                    + write(choice.otherwise(), SUM) + ")";
        }

        @Override
        String function(Term term) {
            return switch (term) {
                case Term.Least least -> "MIN";
                case Term.Greatest greatest -> "MAX";
                case Term.Remainder remainder -> "MOD";
                case Term.Root root -> "SQRT";
                default -> throw new IllegalArgumentException("%s is not a function call".formatted(term));
            };
        }

        @Override
        String separator() {
            return ",";
        }
    }

    /** For reading. */
    private static final class Plain extends Notation {
        private final Function<Key, String> nameOf;

        Plain(Function<Key, String> nameOf) {
            this.nameOf = nameOf;
        }

        @Override
        String constant(double value) {
            return number(value);
        }

        @Override
        String name(Key key) {
            return nameOf.apply(key);
        }

        @Override
        String symbol(Operation operation) {
            return switch (operation) {
                case PLUS -> " + ";
                case MINUS -> " − ";
                case TIMES -> " × ";
                case DIVIDED_BY -> " ÷ ";
                case POWER -> "^";
            };
        }

        @Override
        String symbol(Comparison comparison) {
            return switch (comparison) {
                case LESS -> " < ";
                case AT_MOST -> " ≤ ";
                case EQUAL -> " = ";
                case AT_LEAST -> " ≥ ";
                case MORE -> " > ";
            };
        }

        @Override
        String floor(Term operand) {
            return "floor(" + write(operand, SUM) + ")";
        }

        @Override
        String nearest(Term.Nearest nearest) {
            boolean everyWhole = nearest.residue().equals(Terms.number(0)) && nearest.step().equals(Terms.number(1));
            String lattice = everyWhole ? "" : "; " + write(nearest.residue(), SUM) + " mod " + write(nearest.step(), SUM);
            return "nearest(" + write(nearest.ideal(), SUM) + lattice + ")";
        }

        @Override
        String rounded(Term.Rounded rounded) {
            String name = switch (rounded.way()) {
                case NEAREST -> "round(";
                case UP -> "roundUp(";
                case DOWN -> "roundDown(";
            };
            String places = rounded.places() == 0 ? "" : separator() + number(rounded.places());
            return name + write(rounded.operand(), SUM) + places + ")";
        }

        @Override
        String choice(Term.If choice) {
            return "if(" + compare(choice.condition()) + "; " + write(choice.then(), SUM) + "; "
                    + write(choice.otherwise(), SUM) + ")";
        }

        @Override
        String function(Term term) {
            return switch (term) {
                case Term.Least least -> "least";
                case Term.Greatest greatest -> "greatest";
                case Term.Remainder remainder -> "remainder";
                case Term.Root root -> "root";
                default -> throw new IllegalArgumentException("%s is not a function call".formatted(term));
            };
        }

        @Override
        String separator() {
            return "; ";
        }
    }
}
