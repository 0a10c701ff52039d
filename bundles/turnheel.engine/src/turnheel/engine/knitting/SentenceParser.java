package turnheel.engine.knitting;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.misc.ParseCancellationException;
import org.eclipse.jdt.annotation.NonNullByDefault;
import turnheel.engine.knitting.grammar.Instructions;
import turnheel.engine.knitting.grammar.Instructions.AdditionContext;
import turnheel.engine.knitting.grammar.Instructions.LabelContext;
import turnheel.engine.knitting.grammar.Instructions.SentenceContext;

/** Finds the shape of a sentence, or that it has none. */
@NonNullByDefault({}) // the parser's runtime does not say what it hands over
final class SentenceParser {

    /** Tokens of a sentence; what is longer is no instruction. */
    private static final int LONGEST_SENTENCE = 1000;

    /** Brackets within each other. */
    private static final int DEEPEST_NESTING = 6;

    private final Instructions parser;

    SentenceParser() {
        parser = new Instructions(null);
        parser.removeErrorListeners();
        parser.setErrorHandler(new BailErrorStrategy());
        // one sentence needs no more context than its tokens, and the full search is not linear
        parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
    }

    Optional<SentenceContext> sentence(List<ReadToken> tokens) {
        return parse(tokens) ? read(parser::sentence) : Optional.empty();
    }

    Optional<LabelContext> label(List<ReadToken> tokens) {
        return parse(tokens) ? read(parser::label) : Optional.empty();
    }

    Optional<AdditionContext> addition(List<ReadToken> tokens) {
        return parse(tokens) ? read(parser::addition) : Optional.empty();
    }

    private boolean parse(List<ReadToken> tokens) {
        if (tokens.isEmpty() || tokens.size() > LONGEST_SENTENCE || !isBalanced(tokens)) {
            return false;
        }
        parser.setTokenStream(new CommonTokenStream(new ListTokenSource(List.<Token>copyOf(tokens))));
        return true;
    }

    private static <T> Optional<T> read(Supplier<T> rule) {
        try {
            return Optional.of(rule.get());
        } catch (ParseCancellationException noSuchShape) {
            return Optional.empty();
        }
    }

    private static boolean isBalanced(List<ReadToken> tokens) {
        int depth = 0;
        int stars = 0;
        for (ReadToken token : tokens) {
            switch (token.getType()) {
                case Instructions.OPEN -> depth++;
                case Instructions.CLOSE -> depth--;
                case Instructions.STAR -> stars++;
                default -> { }
            }
            if (depth < 0 || depth > DEEPEST_NESTING || stars > 2 * DEEPEST_NESTING) {
                return false;
            }
        }
        return depth == 0;
    }
}
