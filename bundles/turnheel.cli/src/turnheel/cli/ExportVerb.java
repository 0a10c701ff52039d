package turnheel.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.exchange.ExportException;
import turnheel.exchange.ExportFormat;
import turnheel.exchange.Exports;
import turnheel.exchange.drawing.Drawn;

/** {@code export}: the graded pattern as a file for other programs. */
@Command(name = "export")
final class ExportVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--to", order = 1, paramLabel = "OUT", required = true)
    private String target;

    @Option(names = "--part", order = 2, paramLabel = "PART")
    private String part;

    @Option(names = "--size", order = 3, paramLabel = "SIZE")
    private String size;

    @Option(names = "--force", order = 4)
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
            Drawn drawn = drawn(format);
            requireFree(file);
            graded = graded(drawn);
            Exports.write(graded, drawn, file, force);
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

    /** What a drawing shows. Other files hold the whole pattern: there the options would promise what is not done. */
    private Drawn drawn(ExportFormat format) throws Refusal {
        if (!format.isDrawn() && (part != null || size != null)) {
            throw new Refusal(Words.EXPORT_WHOLE.with(part != null ? "--part" : "--size", target));
        }
        Drawn.What what = part == null ? Drawn.What.OUTLINE : Choice.of("--part", part, Drawn.What.class);
        return new Drawn(what, Optional.ofNullable(size));
    }

    /** The pattern, measured as far as it is drawn. */
    private Graded graded(Drawn drawn) throws Refusal {
        if (drawn.size().isEmpty()) {
            return pattern.complete();
        }
        Graded graded = pattern.complete(List.of(size));
        CellName.knownSize(graded.design(), size, pattern.name());
        return graded;
    }

    /** The exporter would refuse it too, but does not know what the option is called here. */
    private void requireFree(Path file) throws Refusal {
        if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(file)) {
            throw new Refusal(Words.EXISTS.with(target));
        }
    }
}
