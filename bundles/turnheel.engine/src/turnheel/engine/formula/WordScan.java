package turnheel.engine.formula;

import java.util.List;
import java.util.Optional;

import org.antlr.v4.runtime.Token;
import turnheel.engine.formula.grammar.FormulaLexer;
import turnheel.engine.term.Key;

/** What can be said of a formula word by word, before its shape is known. Made for one formula. */
final class WordScan {

    private int depth;
    private Optional<Token> separator = Optional.empty();

    private WordScan() {
    }

    /** The first word, from the left, that no formula can hold in its place. */
    static Optional<NotReadable> firstProblem(List<Token> tokens) {
        WordScan scan = new WordScan();
        for (int i = 0; i < tokens.size(); i++) {
            boolean called = i + 1 < tokens.size() && tokens.get(i + 1).getType() == FormulaLexer.OPEN;
            Optional<NotReadable> problem = scan.problem(tokens.get(i), called);
            if (problem.isPresent()) {
                return problem;
            }
        }
        return Optional.empty();
    }

    private Optional<NotReadable> problem(Token token, boolean called) {
        return switch (token.getType()) {
            case FormulaLexer.OPEN -> {
                depth++;
                yield when(depth > OwnFormula.DEEPEST_NESTING, FormulaProblem.TOO_DEEP, token,
                        List.of(Integer.toString(OwnFormula.DEEPEST_NESTING)));
            }
            case FormulaLexer.CLOSE -> {
                depth--;
                yield Optional.empty();
            }
            case FormulaLexer.COMMA, FormulaLexer.SEMICOLON -> {
                Token first = separator.orElse(token);
                separator = Optional.of(first);
                yield when(token.getType() != first.getType(), FormulaProblem.SEPARATORS_MIXED, token,
                        List.of(first.getText()));
            }
            case FormulaLexer.NUMBER -> when(Double.isInfinite(Double.parseDouble(token.getText())),
                    FormulaProblem.NUMBER_TOO_LARGE, token, List.of());
            case FormulaLexer.NAME -> called
                    ? when(FormulaFunction.named(token.getText()).isEmpty(), FormulaProblem.FUNCTION_UNKNOWN, token,
                            OwnFormula.functions().stream().map(FormulaFunction::name).toList())
                    : when(!Key.isKey(token.getText()), FormulaProblem.NOT_A_KEY, token, List.of());
            default -> Optional.empty();
        };
    }

    private static Optional<NotReadable> when(boolean there, FormulaProblem problem, Token token,
            List<String> allowed) {
        return there ? Optional.of(new NotReadable(problem, token, allowed)) : Optional.empty();
    }
}
