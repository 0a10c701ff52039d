package turnheel.engine.formula;

import java.util.List;

import org.antlr.v4.runtime.Token;
import turnheel.engine.formula.Reading.Unread;

/** Carries a problem out of the depth of a formula; {@link OwnFormula#read} turns it into its answer. */
final class NotReadable extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient FormulaProblem problem;
    private final transient Token token;
    private final transient List<String> allowed;

    NotReadable(FormulaProblem problem, Token token, List<String> allowed) {
        super(problem.name(), null, false, false);
        this.problem = problem;
        this.token = token;
        this.allowed = List.copyOf(allowed);
    }

    Token token() {
        return token;
    }

    /** Whether more text could have helped. */
    boolean isAtTheEnd() {
        return switch (problem) {
            case EMPTY, ENDS_EARLY, NOT_CLOSED -> true;
            default -> false;
        };
    }

    Unread unread(String text) {
        if (token.getType() == Token.EOF) {
            return new Unread(problem, text.length(), "", allowed);
        }
        // the lexer counts a character beyond the basic plane once, a text counts it twice
        int position = text.offsetByCodePoints(0, token.getStartIndex());
        return new Unread(problem, position, token.getText(), allowed);
    }
}
