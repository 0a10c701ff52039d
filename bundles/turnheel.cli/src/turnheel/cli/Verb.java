package turnheel.cli;

import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine.Option;

/** What can be done; one object for each run. */
abstract class Verb implements Callable<Integer> {

    @Option(names = {"-h", "--help"}, order = 101, usageHelp = true)
    private boolean help;

    @Option(names = "--json", order = 100)
    private boolean json;

    private final Output output;

    Verb(Output output) {
        this.output = output;
    }

    /** All verbs, in the order of the help. */
    static List<Verb> all(Output output) {
        return List.of(new NewVerb(output), new SetVerb(output), new SizesVerb(output), new GradeVerb(output),
                new RoundsVerb(output), new WriteVerb(output), new FindRoundVerb(output), new ExportVerb(output),
                new BatchVerb(output), new HandoutVerb(output), new TestKnitVerb(output), new CheckVerb(output),
                new ErrataVerb(output));
    }

    /**
     * Does it.
     *
     * @return the exit code, {@link Main#DONE} or {@link Main#QUERIES}
     * @throws Refusal when it cannot be done; then nothing was written
     */
    @Override
    public abstract Integer call() throws Refusal;

    final Output output() {
        return output;
    }

    /** Whether a script reads the result. */
    final boolean isJson() {
        return json;
    }
}
