package turnheel.engine.formula;

import java.util.List;
import java.util.Optional;

import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Token;
import turnheel.engine.formula.Reading.Read;
import turnheel.engine.formula.Reading.Unread;
import turnheel.engine.formula.grammar.FormulaLexer;
import turnheel.engine.formula.grammar.FormulaParser;
import turnheel.engine.formula.grammar.FormulaParser.FormulaContext;

/**
 * Reads a designer's own formula: numbers with a decimal point, keys of the same size, {@code + - * / ^ %},
 * parentheses, {@link #functions()}, and comparisons as the first argument of IF. An equals sign may lead, arguments
 * are separated by commas or by semicolons. Every text is answered, in a time that grows with its length only.
 */
public final class OwnFormula {

    /** Characters; spreadsheet programs read no longer formula either. */
    public static final int LONGEST_TEXT = 8192;

    /** Parentheses within each other; what a function is composed of then stays within a spreadsheet's 64 levels. */
    public static final int DEEPEST_NESTING = 20;

    /**
     * Numbers, keys and operations of the term, one that is needed twice counted twice; the written formula then stays
     * within a spreadsheet's 8192 characters when a cell's name has about 25.
     */
    public static final int MOST_STEPS = 400;

    private OwnFormula() {
    }

    /** The functions that a formula may use, in the order in which to explain them. */
    public static List<FormulaFunction> functions() {
        return List.of(FormulaFunction.values());
    }

    /** What the text says. The term gives NaN where a spreadsheet gives an error, such as a division by zero. */
    public static Reading read(String text) {
        if (text.length() > LONGEST_TEXT) {
            return new Unread(FormulaProblem.TOO_LONG, LONGEST_TEXT, "",
                    List.of(Integer.toString(LONGEST_TEXT)));
        }
        List<Token> tokens = tokens(text);
        Optional<NotReadable> wrongWord = WordScan.firstProblem(tokens);
        // the parser sees nothing past a wrong word, above all no deeper parenthesis
        List<Token> sound = wrongWord.map(problem -> tokens.subList(0, problem.token().getTokenIndex())).orElse(tokens);
        try {
            FormulaContext tree = parse(sound);
            return wrongWord.<Reading>map(problem -> problem.unread(text))
                    .orElseGet(() -> new Read(new TermReader().read(tree)));
        } catch (NotReadable problem) {
            // what ends only because it was cut off before the wrong word is not itself wrong
            return wrongWord.filter(word -> problem.isAtTheEnd()).orElse(problem).unread(text);
        }
    }

    private static List<Token> tokens(String text) {
        FormulaLexer lexer = new FormulaLexer(CharStreams.fromString(text));
        CommonTokenStream tokens = new CommonTokenStream(lexer);
        tokens.fill();
        return tokens.getTokens();
    }

    private static FormulaContext parse(List<Token> tokens) {
        FormulaParser parser = new FormulaParser(new CommonTokenStream(new ListTokenSource(tokens)));
        parser.setErrorHandler(new FirstError(tokens));
        return parser.formula();
    }
}
