package turnheel.engine.formula;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

import org.antlr.v4.runtime.DefaultErrorStrategy;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.eclipse.jdt.annotation.NonNullByDefault;
import turnheel.engine.formula.grammar.FormulaLexer;

/** Ends the parsing at the first error: a guess at what was meant would be a number that nobody asked for. */
@NonNullByDefault({}) // the parser's runtime does not say what it hands over
final class FirstError extends DefaultErrorStrategy {

    private static final List<String> OPERATORS = List.of("+", "-", "*", "/", "^", "%");

    private final List<Token> tokens;

    FirstError(List<Token> tokens) {
        this.tokens = List.copyOf(tokens);
    }

    @Override
    public void reportError(Parser recognizer, RecognitionException error) {
        // it is thrown by recover, which always follows
    }

    @Override
    public void recover(Parser recognizer, RecognitionException error) {
        throw at(error.getOffendingToken());
    }

    @Override
    public Token recoverInline(Parser recognizer) {
        throw at(recognizer.getCurrentToken());
    }

    @Override
    public void sync(Parser recognizer) {
        // to look for a way past an error is not wanted
    }

    private NotReadable at(Token token) {
        List<Token> before = tokens.subList(0, token.getTokenIndex());
        boolean end = token.getType() == Token.EOF;
        boolean nothingYet = before.isEmpty()
                || before.size() == 1 && before.getFirst().getType() == FormulaLexer.EQUAL;
        if (nothingYet || !endsOperand(before.getLast())) {
            FormulaProblem problem = !end ? FormulaProblem.OPERAND_WANTED
                    : nothingYet ? FormulaProblem.EMPTY : FormulaProblem.ENDS_EARLY;
            return new NotReadable(problem, token, List.of());
        }
        Deque<Token> open = open(before);
        if (end) {
            return new NotReadable(FormulaProblem.NOT_CLOSED, open.getLast(), List.of(")"));
        }
        List<String> allowed = new ArrayList<>(OPERATORS);
        if (!open.isEmpty()) {
            allowed.add(")");
        }
        return new NotReadable(FormulaProblem.OPERATOR_WANTED, token, allowed);
    }

    private static boolean endsOperand(Token token) {
        return switch (token.getType()) {
            case FormulaLexer.NUMBER, FormulaLexer.NAME, FormulaLexer.CLOSE, FormulaLexer.PERCENT -> true;
            default -> false;
        };
    }

    /** The parentheses that are still open, the innermost last. */
    private static Deque<Token> open(List<Token> before) {
        Deque<Token> open = new ArrayDeque<>();
        for (Token token : before) {
            if (token.getType() == FormulaLexer.OPEN) {
                open.addLast(token);
            } else if (token.getType() == FormulaLexer.CLOSE) {
                open.removeLast();
            }
        }
        return open;
    }
}
