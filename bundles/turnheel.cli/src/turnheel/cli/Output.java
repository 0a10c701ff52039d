package turnheel.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/** Where one run writes: results to standard output, at most one line to standard error. */
final class Output {

    private static final String LINE_END = "\n";
    /** Wipes a terminal's line from the cursor on (ECMA-48, EL). */
    private static final String WIPE = "\u001B[K";

    private final PrintStream out;
    private final PrintStream err;
    private final BooleanSupplier watched;

    Output(PrintStream out, PrintStream err) {
        this(out, err, () -> false);
    }

    /** @param watched whether standard error goes to a terminal; asked only when there is progress to show */
    Output(PrintStream out, PrintStream err, BooleanSupplier watched) {
        this.out = out;
        this.err = err;
        this.watched = watched;
    }

    /** One line of the result. */
    void line(String text) {
        out.print(visible(text) + LINE_END);
    }

    void lines(List<String> texts) {
        texts.forEach(this::line);
    }

    /** Lines that may hold colours of our own; what they quote has been made visible by {@link #quotable}. */
    void painted(List<String> texts) {
        texts.forEach(text -> out.print(text + LINE_END));
    }

    /** Other people's text for {@link #painted}. */
    static String quotable(String text) {
        return text.lines().map(Output::visible).collect(Collectors.joining(LINE_END));
    }

    /** A document that ends its own lines. */
    void document(String text) {
        out.print(text);
    }

    /** What a person should know beside the result. */
    void note(String sentence) {
        err.print(Words.LINE.with(visible(sentence)) + LINE_END);
    }

    /**
     * How far a long command is, in place of what it said of that before; an empty text wipes it. Only where a person
     * looks on.
     */
    void progress(String sentence) {
        if (watched.getAsBoolean()) {
            err.print("\r" + WIPE + visible(sentence));
            err.flush();
        }
    }

    /** Says why nothing was done; returns the exit code for it. */
    int refuse(String sentence) {
        note(sentence);
        return Main.REFUSED;
    }

    /** For help texts. */
    PrintWriter writer() {
        return new PrintWriter(out, false, StandardCharsets.UTF_8);
    }

    /** Hands everything on; a result that could not be written is an error, whatever the command said. */
    int finish(int exitCode) {
        boolean lost = out.checkError();
        int finalCode = lost ? refuse(Words.OUTPUT_LOST.text()) : exitCode;
        err.flush();
        return finalCode;
    }

    /**
     * The text in one line that a terminal only shows: titles, labels and arguments are other people's text, and a
     * control character in them must not command the terminal or break a line.
     */
    private static String visible(String text) {
        return text.codePoints().map(character -> isCommand(character) ? ' ' : character)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    }

    private static boolean isCommand(int character) {
        return Character.isISOControl(character) || character >= 0x2028 && character <= 0x202E
                || character >= 0x2066 && character <= 0x2069;
    }
}
