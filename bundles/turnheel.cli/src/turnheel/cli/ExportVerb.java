package turnheel.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.exchange.ExportException;
import turnheel.exchange.ExportFormat;
import turnheel.exchange.Exports;

/** {@code export}: the graded pattern as a file for other programs. */
@Command(name = "export")
final class ExportVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--to", order = 1, paramLabel = "OUT", required = true)
    private String target;

    @Option(names = "--force", order = 2)
    private boolean force;

    ExportVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        Path file = PatternArgument.path(target);
        ExportFormat format;
        Graded graded;
        try {
            format = ExportFormat.of(file);
            requireFree(file);
            graded = pattern.complete();
            Exports.write(graded, file, force);
        } catch (ExportException failed) {
            throw new Refusal(failed.getMessage());
        }
        if (isJson()) {
            output().document(Json.document("turnheel-export/1", json -> {
                json.writeStringField("file", target);
                json.writeStringField("format", format.ending().substring(1));
            }));
        } else {
            output().line(Words.EXPORT_WRITTEN.with(target));
        }
        return Verdict.noted(Checks.of(graded), output(), pattern.name());
    }

    /** The exporter would refuse it too, but does not know what the option is called here. */
    private void requireFree(Path file) throws Refusal {
        if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(file)) {
            throw new Refusal(Words.EXISTS.with(target));
        }
    }
}
