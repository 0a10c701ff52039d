package turnheel.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The program {@code turnheel}. */
public final class Main {

    /** Done, and clean. */
    public static final int DONE = 0;
    /** Done, with queries of error level in the pattern. */
    public static final int QUERIES = 1;
    /** Wrong usage, or input that cannot be read; nothing was written. */
    public static final int REFUSED = 2;

    private static final int HELP_WIDTH = 100;

    private Main() {
    }

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        // pictures are painted in memory; the window system is not asked for, be it there or not
        System.setProperty("java.awt.headless", "true");
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        int exitCode = run(new Output(out, err, Terminal::takesErrors), arguments);
        // The platform logs every exit, and to look for a logger costs a tenth of a short run.
        if (exitCode != DONE) {
            System.exit(exitCode);
        }
    }

    /**
     * Runs one command.
     *
     * @param out takes the result
     * @param err takes one line when the command was refused or left queries of error level
     * @return {@link #DONE}, {@link #QUERIES} or {@link #REFUSED}
     */
    public static int run(PrintStream out, PrintStream err, String... arguments) {
        return run(new Output(out, err), arguments);
    }

    private static int run(Output output, String... arguments) {
        int exitCode = commandLine(output).execute(arguments);
        return output.finish(exitCode);
    }

    static CommandLine commandLine(Output output) {
        CommandLine line = new CommandLine(new Turnheel());
        for (Verb verb : Verb.all(output)) {
            CommandLine of = new CommandLine(verb);
            of.getCommandSpec().usageMessage().sortOptions(false);
            line.addSubcommand(of);
        }
        line.setOut(output.writer());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpWidth(HELP_WIDTH);
        // An argument that starts with an at sign is a name, not a file of arguments.
        line.setExpandAtFiles(false);
        line.setParameterExceptionHandler(
                (refused, arguments) -> output.refuse(UsageErrors.sentence(refused, arguments)));
        line.setExecutionExceptionHandler((failure, command, parsed) -> output.refuse(sentence(failure)));
        return line;
    }

    private static String sentence(Exception failure) {
        if (failure instanceof Refusal) {
            return failure.getMessage();
        }
        // A fault of the program. One line all the same, with the place that a report of it needs.
        StackTraceElement[] trace = failure.getStackTrace();
        return Words.FAULT.with(failure, trace.length == 0 ? "" : trace[0]);
    }

    /** The encoding of the platform may lack the characters of a pattern. */
    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new BufferedOutputStream(new FileOutputStream(descriptor)), false,
                StandardCharsets.UTF_8);
    }
}
