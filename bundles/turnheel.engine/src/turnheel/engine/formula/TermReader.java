package turnheel.engine.formula;

import java.util.ArrayList;
import java.util.List;

import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;
import turnheel.engine.formula.FormulaFunction.Signature;
import turnheel.engine.formula.grammar.FormulaLexer;
import turnheel.engine.formula.grammar.FormulaParser.AtomContext;
import turnheel.engine.formula.grammar.FormulaParser.CallContext;
import turnheel.engine.formula.grammar.FormulaParser.ComparisonContext;
import turnheel.engine.formula.grammar.FormulaParser.FormulaContext;
import turnheel.engine.formula.grammar.FormulaParser.PercentContext;
import turnheel.engine.formula.grammar.FormulaParser.PowerContext;
import turnheel.engine.formula.grammar.FormulaParser.ProductContext;
import turnheel.engine.formula.grammar.FormulaParser.SignedContext;
import turnheel.engine.formula.grammar.FormulaParser.SumContext;
import turnheel.engine.term.Key;
import turnheel.engine.term.Operation;
import turnheel.engine.term.Term;
import turnheel.engine.term.Terms;

/** From the shape of a formula to its term; all names in it are keys or functions. */
final class TermReader {

    private static final int MOST_PLACES = 6;

    /** @throws NotReadable for what has the shape of a formula and still no meaning */
    Term read(FormulaContext formula) {
        return bounded(value(formula.comparison()), formula.comparison().getStart());
    }

    private Term value(ComparisonContext comparison) {
        if (comparison.comparator() != null) {
            throw new NotReadable(FormulaProblem.COMPARISON_OUTSIDE_IF, comparison.comparator().getStart(), List.of());
        }
        return sum(comparison.sum(0));
    }

    private Term sum(SumContext sum) {
        return leftToRight(sum.product().stream().map(this::product).toList(), operators(sum));
    }

    private Term product(ProductContext product) {
        return leftToRight(product.power().stream().map(this::power).toList(), operators(product));
    }

    private Term power(PowerContext power) {
        return leftToRight(power.signed().stream().map(this::signed).toList(), operators(power));
    }

    private static List<Operation> operators(ParseTree tree) {
        List<Operation> operators = new ArrayList<>();
        for (int i = 1; i < tree.getChildCount(); i += 2) {
            operators.add(switch (((TerminalNode) tree.getChild(i)).getSymbol().getType()) {
                case FormulaLexer.PLUS -> Operation.PLUS;
                case FormulaLexer.MINUS -> Operation.MINUS;
                case FormulaLexer.TIMES -> Operation.TIMES;
                case FormulaLexer.DIVIDED_BY -> Operation.DIVIDED_BY;
                default -> Operation.POWER;
            });
        }
        return operators;
    }

    private static Term leftToRight(List<Term> operands, List<Operation> operators) {
        Term term = operands.getFirst();
        for (int i = 0; i < operators.size(); i++) {
            term = new Term.Arithmetic(operators.get(i), term, operands.get(i + 1));
        }
        return term;
    }

    private Term signed(SignedContext signed) {
        Term operand = percent(signed.percent());
        if (signed.MINUS().size() % 2 == 0) {
            return operand;
        }
        return operand instanceof Term.Number(double value) ? Terms.number(0 - value)
                : Terms.minus(Terms.number(0), operand);
    }

    private Term percent(PercentContext percent) {
        Term term = atom(percent.atom());
        for (int i = 0; i < percent.PERCENT().size(); i++) {
            term = Terms.dividedBy(term, Terms.number(100));
        }
        return term;
    }

    private Term atom(AtomContext atom) {
        if (atom.call() != null) {
            return call(atom.call());
        }
        if (atom.comparison() != null) {
            return value(atom.comparison());
        }
        return atom.NUMBER() != null ? Terms.number(Double.parseDouble(atom.NUMBER().getText()))
                : new Term.Reference(new Key(atom.NAME().getText()));
    }

    private Term call(CallContext call) {
        Token name = call.NAME().getSymbol();
        FormulaFunction function = FormulaFunction.named(name.getText()).orElseThrow();
        Signature signature = function.signature();
        List<ComparisonContext> arguments = call.comparison();
        if (arguments.size() < signature.atLeast() || arguments.size() > signature.atMost()) {
            throw new NotReadable(FormulaProblem.ARGUMENT_COUNT, name, List.of(counts(signature)));
        }
        if (signature == Signature.CHOICE) {
            return bounded(choice(arguments), name);
        }
        List<Term> terms = arguments.stream().map(argument -> bounded(value(argument), name)).toList();
        if (terms.size() > 1 && signature == Signature.PLACES && !arePlaces(terms.get(1))) {
            throw new NotReadable(FormulaProblem.PLACES_NOT_FIXED, arguments.get(1).getStart(), List.of("-6…6"));
        }
        if (terms.size() > 1 && signature == Signature.STEP && Compositions.fixed(terms.get(1)).orElse(1) <= 0) {
            throw new NotReadable(FormulaProblem.STEP_NOT_POSITIVE, arguments.get(1).getStart(), List.of());
        }
        return bounded(function.of(terms), name);
    }

    private static String counts(Signature signature) {
        return signature.atLeast() == signature.atMost() ? Integer.toString(signature.atLeast())
                : signature.atLeast() + "…" + signature.atMost();
    }

    private static boolean arePlaces(Term term) {
        double places = Compositions.fixed(term).orElse(Double.NaN);
        return places == Math.rint(places) && Math.abs(places) <= MOST_PLACES;
    }

    private Term choice(List<ComparisonContext> arguments) {
        ComparisonContext condition = withoutParentheses(arguments.get(0));
        Term then = value(arguments.get(1));
        Term otherwise = value(arguments.get(2));
        if (condition.comparator() == null) {
            return FormulaFunction.IF.of(List.of(value(condition), then, otherwise));
        }
        int type = condition.comparator().getStart().getType();
        Comparator comparator = Comparator.valueOf(FormulaLexer.VOCABULARY.getSymbolicName(type));
        return Compositions.choice(sum(condition.sum(0)), comparator, sum(condition.sum(1)), then, otherwise);
    }

    /** What stands in parentheses that hold all of an argument. */
    private static ComparisonContext withoutParentheses(ComparisonContext argument) {
        ParseTree inner = argument;
        while (inner.getChildCount() == 1) {
            inner = inner.getChild(0);
        }
        return inner instanceof AtomContext atom && atom.comparison() != null ? withoutParentheses(atom.comparison())
                : argument;
    }

    private static Term bounded(Term term, Token place) {
        if (stepsLeft(term, OwnFormula.MOST_STEPS) < 0) {
            throw new NotReadable(FormulaProblem.TOO_MANY_STEPS, place,
                    List.of(Integer.toString(OwnFormula.MOST_STEPS)));
        }
        return term;
    }

    /** How many of {@code steps} are left after this term; counting ends below zero. */
    private static int stepsLeft(Term term, int steps) {
        int left = steps - 1;
        for (Term operand : term.operands()) {
            if (left < 0) {
                return left;
            }
            left = stepsLeft(operand, left);
        }
        return left;
    }
}
