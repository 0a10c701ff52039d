package turnheel.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The command that only holds the verbs. */
@Command(name = "turnheel", resourceBundle = "turnheel.cli.usage", synopsisSubcommandLabel = "VERB")
final class Turnheel {

    @Option(names = {"-h", "--help"}, usageHelp = true)
    private boolean help;
}
